#include "app/usecases/judge_palette.h"

#include <utility>

#include "app/usecases/measure_clips.h"

namespace flowkin {
namespace {

/// A ratio less certain than this is no ground for any addition; AdviseDose
/// takes it as a slip of the pen.
constexpr double kMostRelSd = 1.0;

}  // namespace

Result<std::vector<JudgedCup>> JudgePalette::Run(
    const PaletteSet& set,
    const ProgressCallback& progress,
    std::stop_token stop) const {
  std::vector<std::string> clips = set.base_clips;
  for (const PaletteCup& cup : set.cups) {
    clips.insert(clips.end(), cup.clips.begin(), cup.clips.end());
  }
  if (auto distinct = CheckDistinct(clips); !distinct) return distinct.error();
  auto measured =
      MeasureClips(clips, set.clip, options_.workers, progress, stop);
  if (!measured) return measured.error();

  auto next =
      measured->begin() + static_cast<std::ptrdiff_t>(set.base_clips.size());
  const std::vector<MeasuredClip> base(measured->begin(), next);
  std::vector<JudgedCup> judged;
  for (const PaletteCup& cup : set.cups) {
    const auto end = next + static_cast<std::ptrdiff_t>(cup.clips.size());
    CompareCupOptions compare;
    compare.clip = set.clip;
    compare.compare.band = options_.band;
    compare.compare.target = cup.target;
    auto compared =
        CompareCup(compare).Compare(base, std::vector<MeasuredClip>(next, end));
    next = end;
    if (!compared) return compared.error();

    JudgedCup result;
    result.name = cup.name;
    result.compared = std::move(*compared);
    const Comparison& comparison = result.compared.comparison;
    if (comparison.outcome == Outcome::kMeasured &&
        comparison.ratio.ln_ratio.sd <= kMostRelSd) {
      DoseRequest request;
      request.cup.volume_ml = cup.volume_ml;
      request.cup.tests = {
          {0.0, comparison.ratio.Ratio(), comparison.ratio.ln_ratio.sd}};
      request.band = options_.band;
      request.target_ratio = cup.target;
      request.smallest_step_ml = options_.smallest_step_ml;
      auto dose = AdviseDose(request, nullptr);
      if (!dose) return dose.error();
      result.dose = std::move(*dose);
    }
    judged.push_back(std::move(result));
  }
  return judged;
}

}  // namespace flowkin
