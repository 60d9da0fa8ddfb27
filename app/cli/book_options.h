#pragma once

#include <string>

#include "app/cli/terminal.h"
#include "app/usecases/brand_book.h"

namespace CLI {
class App;
}

namespace flowkin {

void AddStoreOption(CLI::App& app, std::string& store);

/// `store`, or the default book where it is empty.
std::string StorePath(const std::string& store);

/// Opens it.
Result<CalibrationStore> OpenBook(const std::string& store, bool write);

Json CurveDocument(const CurveSummary& curve);
/// "1 mL of water in 100 mL makes it 5.8 % thinner (4.9 to 6.9 %)".
std::string CurveSentence(const CurveSummary& curve);

Json LiquidDocument(const LiquidReport& liquid);
/// "The medium is 0.31 times as thick as the base coat (0.24 to 0.40), learned
/// from 3 cup(s)."
std::string LiquidSentence(const LiquidReport& liquid);

}  // namespace flowkin
