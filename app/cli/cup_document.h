#pragma once

#include <istream>
#include <string>

#include "app/cli/terminal.h"
#include "app/usecases/advise_dose.h"
#include "core/base/result.h"

namespace flowkin {

/// A cup as `dose` and `learn` read it.
struct CupDocument {
  DoseRequest request;
  PaintKey paint;  ///< brand empty: unknown paint
};

/// Reads one JSON document to its end. kUnreadable where it is no JSON, lacks
/// a needed field or holds one of another type; kInvalidArgument where a value
/// is out of range. Fields it does not know are left alone.
Result<CupDocument> ReadCupDocument(std::istream& in);

/// Opens `path`, or takes `fallback` where it is empty.
Result<CupDocument> ReadCupDocument(const std::string& path,
                                    std::istream& fallback);

}  // namespace flowkin
