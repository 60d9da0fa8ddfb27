#include "core/planning/keeping.h"

namespace flowkin {

KeepsUntil HowLongItKeeps(Day mixed, bool watered) {
  if (watered) {
    return {mixed + std::chrono::days(7), mixed + std::chrono::days(28)};
  }
  return {AddMonths(mixed, 6), AddMonths(mixed, 12)};
}

const char* JarStateName(JarState state) {
  switch (state) {
    case JarState::kGood:
      return "good";
    case JarState::kUseFirst:
      return "use first";
    case JarState::kOverdue:
      return "overdue";
  }
  return "";
}

JarState StateOfJar(const Jar& jar, Day today) {
  const KeepsUntil keeps = HowLongItKeeps(jar.mixed, jar.watered);
  if (today >= keeps.discard) return JarState::kOverdue;
  return today >= keeps.use_first ? JarState::kUseFirst : JarState::kGood;
}

bool GoesBefore(const Jar& a, const Jar& b) {
  const Day a_gone = HowLongItKeeps(a.mixed, a.watered).discard;
  const Day b_gone = HowLongItKeeps(b.mixed, b.watered).discard;
  if (a_gone != b_gone) return a_gone < b_gone;
  return a.volume_ml > b.volume_ml;
}

DryingDays HowLongItDries(const DryingRoom& room) {
  DryingDays days;
  const auto late = [&](std::string why) {
    days.touch_dry_from = 3;
    days.touch_dry_by = 7;
    days.varnish_not_before = 28;
    days.why.push_back(std::move(why));
  };
  if (room.temperature_c && *room.temperature_c < 18.0) {
    late("the room is colder than 18 °C");
  }
  if (room.temperature_c && *room.temperature_c < 10.0) {
    days.why.push_back(
        "below 10 °C the film may not form at all: bring it into the warm");
  }
  if (room.humidity_percent && *room.humidity_percent > 60.0) {
    late("the air is damper than 60 %");
  }
  if (room.dry_film_mm && *room.dry_film_mm > 0.4) {
    late("the film is thick");
  }
  return days;
}

}  // namespace flowkin
