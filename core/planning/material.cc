#include "core/planning/material.h"

#include <string>

#include "core/base/check.h"

namespace flowkin {

const char* SourceName(Source source) {
  switch (source) {
    case Source::kDerived:
      return "derived";
    case Source::kCommonPractice:
      return "common practice";
    case Source::kOwnGuess:
      return "own guess";
    case Source::kArtist:
      return "given";
    case Source::kLearned:
      return "own pours";
  }
  return "";
}

Result<void> Validate(const Span& span, double least, const char* what) {
  if (!(span.low >= least && span.low <= span.start &&
        span.start <= span.high && span.high <= 1e6)) {
    return Error{ErrorCode::kInvalidArgument,
                 std::string(what) +
                     " must be in range, its low end not above its start and "
                     "its start not above its high end."};
  }
  return {};
}

Material Blend(const std::vector<Portion>& portions) {
  FLOWKIN_CHECK(!portions.empty());
  double volume_ml = 0.0;
  double mass_g = 0.0;
  double solids_ml = 0.0;
  for (const Portion& portion : portions) {
    volume_ml += portion.volume_ml;
    mass_g += portion.mass_g();
    solids_ml += portion.volume_ml * portion.material.volume_solids;
  }
  if (!(volume_ml > 0.0)) return portions.front().material;
  return {mass_g / volume_ml, solids_ml / volume_ml};
}

}  // namespace flowkin
