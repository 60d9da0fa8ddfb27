#include "core/flow/measurement.h"

#include "core/base/check.h"

namespace flowkin {

const char* TestKindName(TestKind kind) {
  switch (kind) {
    case TestKind::kStream:
      return "stream";
    case TestKind::kLevel:
      return "level";
    case TestKind::kPuddle:
      return "puddle";
  }
  FLOWKIN_CHECK(false);
}

}  // namespace flowkin
