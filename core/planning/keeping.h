#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/calendar.h"

namespace flowkin {

// How long things keep and dry. All of it is common practice, no source.

/// Until when a closed, full jar keeps: pouring medium and unthinned mixes six
/// to twelve months; what was thinned with tap water days to weeks, since water
/// weakens what keeps it from spoiling.
struct KeepsUntil {
  Day use_first;  ///< from here on before anything younger
  Day discard;    ///< no longer without smelling, straining, testing it
};
KeepsUntil HowLongItKeeps(Day mixed, bool watered);

/// A jar on the shelf.
struct Jar {
  std::string name;
  double volume_ml = 0.0;
  Day mixed;
  bool watered = false;
};

/// What to do about a jar on a day.
enum class JarState { kGood, kUseFirst, kOverdue };
/// "good", "use first", "overdue".
const char* JarStateName(JarState state);
JarState StateOfJar(const Jar& jar, Day today);

/// Whether `a` is to be used before `b`: by the day they should be gone, the
/// larger one first where that is the same.
bool GoesBefore(const Jar& a, const Jar& b);

/// What drying depends on; what is not known is left out.
struct DryingRoom {
  std::optional<double> temperature_c;
  std::optional<double> humidity_percent;
  std::optional<double> dry_film_mm;
};

/// Days after the pour. Touch dry is told as 24 to 72 hours; varnish or resin
/// as not before 7 days, mostly 14, up to 28. The late end where the room is
/// colder than 18 degrees C, damper than 60 % or the film thicker than 0.4 mm,
/// where a guideline for wall paint stops testing for cracks.
struct DryingDays {
  int touch_dry_from = 1;
  int touch_dry_by = 3;
  int varnish_not_before = 14;
  std::vector<std::string> why;  ///< reasons for the late end, and warnings
};
DryingDays HowLongItDries(const DryingRoom& room);

}  // namespace flowkin
