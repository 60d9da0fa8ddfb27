#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "calibration/store/database.h"
#include "core/base/estimate.h"
#include "core/base/result.h"
#include "core/session/cup.h"

namespace flowkin {

/// A cup as the brand book keeps it.
struct StoredCup {
  PaintKey paint;
  std::string batch;  ///< one mix; may be empty
  CupHistory history;
  double common_rel_sd = 0.0;
  std::string learned_utc;  ///< ISO 8601, "2026-03-01T12:00:00Z"
};

enum class AppendOutcome {
  kAdded,
  kKnown,      ///< this very cup, or a later state of it, is in the book
  kContinued,  ///< a longer history of a cup already there; it counts instead
};

/// One line of the list of brands.
struct BrandEntry {
  std::string brand;
  std::vector<std::string> colours;
  std::int64_t cups = 0;
  std::int64_t tests = 0;
};

/// What was worked out from a brand's log, kept so that a thousand brands need
/// not be worked out again. `engine` says by which version; others are stale.
struct BrandSummary {
  std::string brand;
  Estimate ln_slope;
};

/// The brand book: one SQLite file that holds every test and addition of every
/// learned cup as an append-only log. Nothing is ever taken out: forgetting
/// is an entry of its own and can be undone.
///
/// Safe against power cuts (rollback journal, full synchronisation) and shared
/// by several programs at once (a writer waits up to 10 s for another).
/// Messages of all errors are sentences for the person at the bench.
class CalibrationStore {
 public:
  using Access = Database::Access;

  /// kRead: the file must be there. kWrite: made if it is missing, with its
  /// folders; an older format is brought up to date in one transaction.
  /// A file of another program or of a newer format is kUnreadable.
  static Result<CalibrationStore> Open(const std::string& path, Access access);

  /// $XDG_DATA_HOME/flowkin/brands.db, or ~/.local/share/flowkin/brands.db
  /// (XDG Base Directory Specification 0.8); empty if neither is known.
  static std::string DefaultPath();

  /// Version of the file format written by this program.
  static constexpr int kFormatVersion = Database::kFormatVersion;

  CalibrationStore(CalibrationStore&&) noexcept;
  CalibrationStore& operator=(CalibrationStore&&) noexcept;
  ~CalibrationStore();

  /// Everything until Commit() happens at once or not at all.
  Result<void> Begin();
  Result<void> Commit();
  /// Undoes everything since Begin(); nothing if there is none.
  void Rollback();

  Result<AppendOutcome> Append(const StoredCup& cup);
  /// Cups that count for `brand`, newest first, at most `most`.
  Result<std::vector<StoredCup>> Cups(const std::string& brand,
                                      std::int64_t most) const;
  /// Cups of all brands that were thinned with `thinner` and count, newest
  /// first, at most `most`.
  Result<std::vector<StoredCup>> CupsWith(ThinnerKind thinner,
                                          std::int64_t most) const;
  /// All that count, of all brands, oldest first.
  Result<std::vector<StoredCup>> AllCups() const;
  /// All brands, or only `brand` if it is not empty.
  Result<std::vector<BrandEntry>> Brands(const std::string& brand = {}) const;

  /// The cups of a brand (of one colour, if given) count no more. Returns how
  /// many.
  Result<std::int64_t> Forget(const std::string& brand,
                              const std::optional<std::string>& colour,
                              const std::string& now_utc);
  /// Undoes every Forget of that brand. Returns how many cups count again.
  Result<std::int64_t> Restore(const std::string& brand,
                               const std::string& now_utc);

  Result<void> SaveSummary(const BrandSummary& summary, int engine);
  Result<void> DropSummary(const std::string& brand);
  Result<std::vector<BrandSummary>> Summaries(int engine) const;

  /// A copy of the whole book, complete at one moment even while others
  /// write. `path` must not exist yet.
  Result<void> BackUp(const std::string& path) const;

 private:
  struct Impl;
  explicit CalibrationStore(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace flowkin
