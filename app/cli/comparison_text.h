#pragma once

#include <iosfwd>
#include <string>

#include "app/cli/terminal.h"
#include "core/dosing/choose_dose.h"
#include "core/flow/compare.h"

namespace flowkin {

/// Adds outcome, reason, ratio, verdict and by_proxy to a document.
void AddComparison(Json& document, const Comparison& comparison);

/// "1.31 times as thick as the base coat, between 1.20 and 1.43", without a
/// full stop. `comparison` must be measured.
std::string RatioSentence(const Comparison& comparison);

/// The same facts as the document holds, for a person to read.
void PrintComparison(std::ostream& out,
                     const Comparison& comparison,
                     double band,
                     double target);

/// The contract's word for it: "add", "match", "measure", "rescue" or "limit".
const char* AdviceName(DoseAdvice advice);

/// "break_time" reads "break time" on screen.
std::string SpokenName(std::string name);

}  // namespace flowkin
