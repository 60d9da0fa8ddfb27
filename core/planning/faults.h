#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/readiness.h"

namespace flowkin {

/// What can be seen on a picture afterwards.
enum class Fault {
  kCrazing,    ///< torn skin, scars, while drying
  kCracks,     ///< later, in the dry film
  kChalky,     ///< weak, dull, rubs off
  kSlid,       ///< a colour slid off its ground
  kSunk,       ///< a colour sank or stayed as lumps
  kMuddy,      ///< colours blended
  kLostCells,  ///< cells or lacing gone or stretched
  kPits,       ///< pinholes, white specks
  kSag,        ///< ran over the edge, ridge at the rim
  kBare,       ///< the canvas shows
  kPeeling,    ///< between coats
};

/// "crazing", "lost cells", ...
const char* FaultName(Fault fault);
std::optional<Fault> FaultFromName(const std::string& name);
const std::vector<Fault>& AllFaults();

/// How a cause that is commonly named stands to what was measured that day.
enum class Standing {
  kFits,     ///< what was measured is as this cause wants it
  kAgainst,  ///< what was measured speaks against it
  kUnknown,  ///< nothing was measured that could tell
};
/// "fits", "against" or "not measured".
const char* StandingName(Standing standing);

struct Cause {
  std::string says;
  Standing standing = Standing::kUnknown;
  std::string evidence;  ///< empty where nothing was measured
};

/// The causes commonly named for a fault (common practice, no source), those
/// that fit the day first. No cause is proven by this, and none is invented.
std::vector<Cause> LikelyCauses(Fault fault, const DayFacts& facts);

}  // namespace flowkin
