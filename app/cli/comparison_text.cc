#include "app/cli/comparison_text.h"

#include <cmath>
#include <ostream>
#include <utility>

namespace flowkin {

const char* AdviceName(DoseAdvice advice) {
  switch (advice) {
    case DoseAdvice::kAdd:
      return "add";
    case DoseAdvice::kMatch:
      return "match";
    case DoseAdvice::kMeasure:
    case DoseAdvice::kTooCoarse:
    case DoseAdvice::kCannot:
      return "measure";
    case DoseAdvice::kRescue:
      return "rescue";
    case DoseAdvice::kLimit:
      return "limit";
  }
  return "";
}

std::string SpokenName(std::string name) {
  for (char& c : name) {
    if (c == '_') c = ' ';
  }
  return name;
}

void AddComparison(Json& document, const Comparison& comparison) {
  const bool refused = comparison.outcome == Outcome::kRefused;
  document["outcome"] = refused ? "refused" : "measured";
  document["reason"] = refused ? Json(comparison.reason) : Json(nullptr);
  document["ratio"] = nullptr;
  document["common_rel_sd"] = nullptr;
  document["verdict"] = nullptr;
  document["by_proxy"] = Json::array();
  if (refused) return;
  document["ratio"] = {{"value", JsonNumber(comparison.ratio.Ratio())},
                       {"low", JsonNumber(comparison.interval.low)},
                       {"high", JsonNumber(comparison.interval.high)},
                       {"level", JsonNumber(comparison.interval.level)},
                       {"rel_sd", JsonNumber(comparison.ratio.ln_ratio.sd, 3)}};
  document["common_rel_sd"] = JsonNumber(comparison.common_rel_sd, 3);
  document["verdict"] = MatchVerdictName(comparison.verdict);
  for (const ProxyRatio& proxy : comparison.by_proxy) {
    document["by_proxy"].push_back(
        {{"name", proxy.name},
         {"value", JsonNumber(std::exp(proxy.ln_ratio.value))},
         {"rel_sd", JsonNumber(proxy.ln_ratio.sd, 3)},
         {"weight", JsonNumber(proxy.weight, 3)}});
  }
}

std::string RatioSentence(const Comparison& comparison) {
  return Fixed(comparison.ratio.Ratio(), 2) +
         " times as thick as the base coat, between " +
         Fixed(comparison.interval.low, 2) + " and " +
         Fixed(comparison.interval.high, 2);
}

void PrintComparison(std::ostream& out,
                     const Comparison& comparison,
                     double band,
                     double target) {
  const std::string aim = target == 1.0
                              ? "the base coat"
                              : Digits(target, 3) + " times the base coat";
  out << RatioSentence(comparison) << " (true in 95 of 100 cases).\n";
  switch (comparison.verdict) {
    case MatchVerdict::kThicker:
      out << "Thicker than " << aim << ": thin it in small steps.\n";
      break;
    case MatchVerdict::kMatch:
      out << "It matches " << aim << ": stop here.\n";
      break;
    case MatchVerdict::kThinner:
      out << "Thinner than " << aim << ": put unthinned mix back, no water.\n";
      break;
    case MatchVerdict::kUndecided:
      out << "Not sure enough to say whether it matches " << aim
          << ": film it again.\n";
      break;
  }
  out << "A match lies between " << Fixed(target / (1.0 + band), 2) << " and "
      << Fixed(target * (1.0 + band), 2)
      << ". Tests used: " << comparison.num_reference << " of the base coat, "
      << comparison.num_cup << " of the cup.\n";
  for (const ProxyRatio& proxy : comparison.by_proxy) {
    out << "  by " << SpokenName(proxy.name) << ": "
        << Fixed(std::exp(proxy.ln_ratio.value), 2) << ", good to "
        << Digits(100.0 * proxy.ln_ratio.sd, 2) << " %\n";
  }
}

}  // namespace flowkin
