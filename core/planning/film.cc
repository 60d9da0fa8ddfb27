#include "core/planning/film.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/check.h"

namespace flowkin {
namespace {
constexpr double kGravityMmPerS2 = 9810.0;
}  // namespace

double DrainedFilmMm(double nu_mm2_per_s,
                     double distance_mm,
                     double tilt_deg,
                     double tilting_s) {
  FLOWKIN_CHECK(nu_mm2_per_s > 0.0 && distance_mm > 0.0);
  FLOWKIN_CHECK(tilt_deg > 0.0 && tilt_deg <= 90.0 && tilting_s > 0.0);
  const double pull =
      kGravityMmPerS2 * std::sin(tilt_deg * std::numbers::pi / 180.0);
  return std::sqrt(nu_mm2_per_s * distance_mm / (pull * tilting_s));
}

double MeanDrainedFilmMm(double nu_mm2_per_s,
                         double distance_mm,
                         double tilt_deg,
                         double tilting_s) {
  return 2.0 / 3.0 *
         DrainedFilmMm(nu_mm2_per_s, distance_mm, tilt_deg, tilting_s);
}

const char* FilmVerdictName(FilmVerdict verdict) {
  switch (verdict) {
    case FilmVerdict::kStays:
      return "stays";
    case FilmVerdict::kRunsOff:
      return "runs off";
    case FilmVerdict::kNotCredible:
      return "not credible";
  }
  return "";
}

FilmCheck CheckFilm(double poured_mm,
                    const Span& nu_mm2_per_s,
                    double distance_mm,
                    double tilt_deg,
                    double tilting_s) {
  FLOWKIN_CHECK(poured_mm > 0.0);
  FilmCheck check;
  check.poured_mm = poured_mm;
  const auto stays = [&](double nu) {
    return std::min(poured_mm,
                    MeanDrainedFilmMm(nu, distance_mm, tilt_deg, tilting_s));
  };
  check.stays_mm = {stays(nu_mm2_per_s.low),
                    stays(nu_mm2_per_s.start),
                    stays(nu_mm2_per_s.high)};
  check.runs_off = {1.0 - check.stays_mm.high / poured_mm,
                    1.0 - check.stays_mm.start / poured_mm,
                    1.0 - check.stays_mm.low / poured_mm};
  if (check.runs_off.low > 0.5) {
    check.verdict = FilmVerdict::kNotCredible;
  } else if (check.runs_off.high > 0.0) {
    check.verdict = FilmVerdict::kRunsOff;
  }
  return check;
}

}  // namespace flowkin
