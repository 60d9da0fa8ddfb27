#include "app/usecases/compare_cup.h"

#include <utility>

#include "app/usecases/compare_measurements.h"
#include "app/usecases/measure_clips.h"

namespace flowkin {
namespace {

/// The measurements of the clips that hold a test; notes the others.
std::vector<FlowMeasurement> Usable(const std::vector<MeasuredClip>& clips,
                                    std::vector<std::string>& warnings) {
  std::vector<FlowMeasurement> usable;
  for (const MeasuredClip& clip : clips) {
    for (const std::string& text : clip.info.warnings) {
      warnings.push_back(clip.clip + ": " + text);
    }
    for (const std::string& text : clip.measurement.warnings) {
      warnings.push_back(clip.clip + ": " + text);
    }
    if (clip.measurement.outcome == Outcome::kMeasured) {
      usable.push_back(clip.measurement);
    } else {
      warnings.push_back(clip.clip +
                         " was left out: " + clip.measurement.reason);
    }
  }
  return usable;
}

/// A side of which no clip holds a test, in the words of its first clip.
ComparedCup RefusedSide(ComparedCup compared,
                        const std::vector<MeasuredClip>& side,
                        const char* name) {
  compared.comparison.outcome = Outcome::kRefused;
  compared.comparison.reason = std::string("No film of ") + name +
                               " could be used; " + side.front().clip + ": " +
                               side.front().measurement.reason;
  return compared;
}

}  // namespace

Result<void> CompareCupOptions::Validate() const {
  if (auto valid = clip.test.Validate(); !valid) return valid;
  return compare.Validate();
}

Result<ComparedCup> CompareCup::Run(
    const std::vector<std::string>& reference_clips,
    const std::vector<std::string>& cup_clips,
    const ProgressCallback& progress,
    std::stop_token stop) const {
  if (auto valid = options_.Validate(); !valid) return valid.error();
  std::vector<std::string> all = reference_clips;
  all.insert(all.end(), cup_clips.begin(), cup_clips.end());
  if (auto distinct = CheckDistinct(all); !distinct) return distinct.error();
  auto measured =
      MeasureClips(all, options_.clip, options_.workers, progress, stop);
  if (!measured) return measured.error();
  const auto split =
      measured->begin() + static_cast<std::ptrdiff_t>(reference_clips.size());
  return Compare(
      std::vector<MeasuredClip>(std::make_move_iterator(measured->begin()),
                                std::make_move_iterator(split)),
      std::vector<MeasuredClip>(std::make_move_iterator(split),
                                std::make_move_iterator(measured->end())));
}

Result<ComparedCup> CompareCup::Compare(std::vector<MeasuredClip> reference,
                                        std::vector<MeasuredClip> cup) const {
  if (auto valid = options_.Validate(); !valid) return valid.error();
  ComparedCup compared;
  compared.reference = std::move(reference);
  compared.cup = std::move(cup);
  const auto reference_tests = Usable(compared.reference, compared.warnings);
  const auto cup_tests = Usable(compared.cup, compared.warnings);
  if (reference_tests.empty()) {
    return RefusedSide(compared, compared.reference, "the base coat");
  }
  if (cup_tests.empty()) {
    return RefusedSide(compared, compared.cup, "the cup");
  }
  compared.comparison =
      CompareMeasurements(reference_tests, cup_tests, options_.compare);
  compared.warnings.insert(compared.warnings.end(),
                           compared.comparison.warnings.begin(),
                           compared.comparison.warnings.end());
  return compared;
}

Result<ComparedCup> CompareCup::RunTimes(
    const std::vector<double>& reference_times_s,
    const std::vector<double>& cup_times_s) const {
  if (auto valid = options_.Validate(); !valid) return valid.error();
  auto comparison = CompareTimes(options_.clip.test.kind,
                                 reference_times_s,
                                 cup_times_s,
                                 options_.compare);
  if (!comparison) return comparison.error();
  ComparedCup compared;
  compared.comparison = std::move(*comparison);
  compared.warnings = compared.comparison.warnings;
  return compared;
}

}  // namespace flowkin
