#pragma once

#include <map>
#include <string>
#include <vector>

#include "calibration/store/workshop_store.h"
#include "core/base/result.h"
#include "core/planning/pour_plan.h"

namespace flowkin {

/// What her book knows that a plan can use.
struct BookPractice {
  std::vector<Technique> techniques = StartingTechniques();  ///< hers in it
  std::vector<ShelfJar> shelf;
  std::map<std::string, std::vector<PastPour>> past;  ///< by technique
};

/// A book that is not there yet knows nothing; neither does an empty path.
Result<BookPractice> ReadPractice(const std::string& store_path);

/// Brings in her earlier pours of the technique, where the request names none,
/// and the jars that may still be used, where it names none.
void UsePractice(const BookPractice& practice, Day today, PlanRequest& request);

}  // namespace flowkin
