#pragma once

#include <istream>
#include <optional>
#include <string>
#include <vector>

#include "app/cli/terminal.h"
#include "app/usecases/advise_dose.h"
#include "app/usecases/brand_book.h"
#include "core/base/result.h"

namespace flowkin {

/// A cup as `dose` and `learn` read it.
struct CupDocument {
  DoseRequest request;
  PaintKey paint;  ///< brand empty: unknown paint
  std::string batch;
};

/// A unit by its kind, of the usual size: "drop", "ml", "gram", "spray",
/// "teaspoon" or "teaspoon_us"; empty for anything else.
std::optional<DoseUnit> KnownUnit(const std::string& kind);

/// One sentence where a brand's, colour's or batch's name cannot be kept: not
/// UTF-8, longer than 200 bytes or with control characters. Empty names pass.
Result<void> CheckName(const std::string& what, const std::string& name);

/// The same for a text of several lines, of at most 20000 bytes.
Result<void> CheckText(const std::string& text);

/// The cup as the brand book keeps it.
StoredCup ToStoredCup(const CupDocument& cup, const std::string& now_utc);

/// A book as a document of its own, for other machines and programs:
/// {"format": "flowkin brand book", "version": 1, "cups": [...]}, each cup as
/// `dose` reads it, with learned_utc.
Json BookDocument(const std::vector<StoredCup>& cups);

/// Reads what BookDocument writes. Another format or a newer version is
/// kUnreadable.
Result<std::vector<StoredCup>> ReadBookDocument(std::istream& in);

/// Reads one JSON document to its end. kUnreadable where it is no JSON, lacks
/// a needed field or holds one of another type; kInvalidArgument where a value
/// is out of range. Fields it does not know are left alone.
Result<CupDocument> ReadCupDocument(std::istream& in);

/// Opens `path`, or takes `fallback` where it is empty.
Result<CupDocument> ReadCupDocument(const std::string& path,
                                    std::istream& fallback);

}  // namespace flowkin
