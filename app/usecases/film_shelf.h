#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "core/base/result.h"

namespace flowkin {

struct FilmShelfOptions {
  /// Folder of the films; FilmShelf::DefaultFolder() where empty.
  std::string folder;
  /// What they may take up together, bytes.
  std::int64_t most_bytes = std::int64_t{4} << 30U;
};

/// What Tidy() did.
struct ShelfReport {
  std::vector<std::string> dropped;  ///< paths of films that are gone
  std::int64_t bytes = 0;            ///< what is left
  /// More than allowed is left, because the bench still needs all of it.
  bool over_full = false;
};

/// Where the films of the bench's own camera are kept, with a bound on the room
/// they take. A list in the folder names what the shelf wrote; nothing else is
/// ever deleted, wherever it lies. Not for several threads at once; programs
/// take turns.
class FilmShelf {
 public:
  /// $XDG_DATA_HOME/flowkin/films, or ~/.local/share/flowkin/films; empty if
  /// neither is known.
  static std::string DefaultFolder();

  /// Makes the folder. kInvalidArgument where there is no place for it or
  /// most_bytes is below 1; kInternal where it cannot be written.
  static Result<FilmShelf> Open(const FilmShelfOptions& options);

  const std::string& folder() const { return options_.folder; }

  /// A name for a new film, "STEM-1.mp4" or the next that is free, already
  /// taken on the list: a film cut off by a crash is the shelf's as well.
  /// `stem`: letters, digits, '-' and '_'; anything else becomes '_'.
  /// `extension` without its dot.
  Result<std::string> Reserve(const std::string& stem,
                              const std::string& extension);

  /// True for a film the shelf wrote and still has.
  bool Holds(const std::string& path) const;

  /// Deletes films, oldest first, until the bound holds; those in `needed`
  /// (paths) stay. What ClipWriter left half written when the power was cut
  /// goes, too, once it is an hour old. Call when a film is done and when a
  /// session is closed.
  Result<ShelfReport> Tidy(const std::vector<std::string>& needed);

 private:
  explicit FilmShelf(FilmShelfOptions options) : options_(std::move(options)) {}
  std::string ListPath() const;
  Result<std::vector<std::string>> ReadList() const;
  void DropCutOff(const std::vector<std::string>& names) const;
  Result<void> WriteList(const std::vector<std::string>& names) const;

  FilmShelfOptions options_;
};

}  // namespace flowkin
