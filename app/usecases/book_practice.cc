#include "app/usecases/book_practice.h"

#include <cstdint>
#include <filesystem>
#include <system_error>
#include <utility>

#include "app/usecases/journal.h"

namespace flowkin {

Result<BookPractice> ReadPractice(const std::string& store_path) {
  BookPractice practice;
  // An empty file is a book whose first entry was cut short.
  std::error_code failed;
  const std::uintmax_t size = std::filesystem::file_size(store_path, failed);
  if (store_path.empty() || (!failed && size == 0) ||
      failed == std::errc::no_such_file_or_directory) {
    return practice;
  }
  const Result<WorkshopStore> workshop =
      WorkshopStore::Open(store_path, WorkshopStore::Access::kRead);
  if (!workshop) return workshop.error();
  const Result<std::vector<Technique>> own = workshop->Techniques();
  if (!own) return own.error();
  practice.techniques = WithOwn(*own);
  Result<std::vector<ShelfJar>> shelf = workshop->Shelf();
  if (!shelf) return shelf.error();
  practice.shelf = *std::move(shelf);
  const Result<Journal> journal = Journal::Open(store_path);
  if (!journal) return journal.error();
  Result<LearnedPractice> learned = journal->Learned();
  if (!learned) return learned.error();
  practice.past = std::move(learned->past);
  return practice;
}

void UsePractice(const BookPractice& practice,
                 Day today,
                 PlanRequest& request) {
  if (request.past.empty()) {
    const auto found = practice.past.find(request.technique.name);
    if (found != practice.past.end()) {
      request.past = found->second;
      request.past_of_journal = true;
    }
  }
  if (request.left_overs.empty()) {
    request.left_overs = UsableLeftOvers(practice.shelf, today);
  }
}

}  // namespace flowkin
