#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "app/cli/terminal.h"
#include "app/usecases/bench.h"

namespace flowkin {

/// The board and the tests behind it as one document.
Json BoardDocument(const Bench& bench, const Board& board);

/// The same for a person to read.
void PrintBoard(std::ostream& out, const Bench& bench, const Board& board);

/// One sentence on what to do next: "Add 12 x drop (0.6 mL) of water, stir for
/// a minute, film it again."
std::string StepSentence(const BoardCup& card);

/// A cup's history as `dose` and `learn` read it.
Json HistoryDocument(const BoardCup& card);

Json SessionsDocument(const std::vector<SessionLine>& lines);
void PrintSessions(std::ostream& out, const std::vector<SessionLine>& lines);

}  // namespace flowkin
