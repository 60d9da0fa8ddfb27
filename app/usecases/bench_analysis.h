#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/utc_time.h"
#include "core/flow/compare.h"
#include "core/session/palette_session.h"

namespace flowkin {

// What a session's log says about its cups, before any advice. Pure.

/// Tests of a cup in one stage (between two additions) of one kind or several,
/// taken at one sitting: the newest, as paint thickens while it stands.
struct CupStage {
  std::size_t additions = 0;  ///< of BenchCup::additions that came before
  std::vector<const BenchTest*> tests;  ///< that count, oldest first
};

/// The stages in which a cup was filmed, oldest first; the last one is the
/// cup's present stage only if `additions` is all of them.
std::vector<CupStage> StagesOf(const BenchCup& cup, double sitting_min);

/// The base coat's films a cup's films are held against: for each kind of test
/// those of one round. A round ends when something is added to the base coat,
/// after two hours, or when the room has moved by more than 2 degrees C. Of the
/// rounds since its last addition the newest counts that began before the
/// cup's last film, or else the first.
std::vector<const BenchTest*> ReferenceFor(const BenchCup& base,
                                           const CupStage& stage);

/// The newest round of one kind of test since the last addition to the base
/// coat.
std::vector<const BenchTest*> NewestRound(const BenchCup& base, TestKind kind);

/// A stage held against the base coat.
struct ComparedStage {
  std::size_t additions = 0;
  Comparison comparison;
  double common_rel_sd = 0.0;
};

ComparedStage CompareStage(const BenchCup& base,
                           const CupStage& stage,
                           const CompareOptions& options);

/// The history the next dose rests on, from the measured stages: additions of
/// the cup's own thinner to what was there before. Another thinner starts a
/// new history, with the cup as it then was as its paint. Unthinned mix that
/// was put back counts as if it had been there from the start; what was tested
/// at a higher dilution than now is left out. Empty `tests` where no stage
/// counts. The cup must have a volume.
CupHistory HistoryOf(const BenchCup& cup,
                     const std::vector<ComparedStage>& stages);

}  // namespace flowkin
