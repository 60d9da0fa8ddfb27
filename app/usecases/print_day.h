#pragma once

#include <string>
#include <vector>

#include "app/usecases/bench.h"
#include "app/usecases/journal.h"
#include "app/usecases/paper.h"

namespace flowkin {

/// One session as the journal and as the bench shows it, at its last entry.
struct DayAtBench {
  JournalPage page;
  Board board;
};
Result<DayAtBench> ReadDay(const std::string& store_path, SessionId session);

/// A label for every cup of it.
std::vector<BatchLabel> LabelsOf(const DayAtBench& day);

/// The photos of a day, small enough for a page.
struct DayPhotos {
  std::vector<Photo> photos;
  std::vector<std::string> lost;  ///< a sentence for each that cannot be read
};
DayPhotos PhotosOf(const JournalPage& page, const Words& words);

}  // namespace flowkin
