#pragma once

#include "core/planning/material.h"

namespace flowkin {

// What stays on a tilted support.

/// Thickness of a film that has drained for `tilting_s`, `distance_mm` below
/// its upper edge, on a face tilted by `tilt_deg` from level:
///     h = sqrt(nu x / (g sin(tilt) t))
/// after H. Jeffreys, The draining of a vertical plate, 1930 (not read; see
/// core/flow/README.md), with gravity along the face. Newtonian, no inertia, no
/// surface tension, and the film must have been thicker to begin with. All > 0,
/// tilt at most 90 degrees.
double DrainedFilmMm(double nu_mm2_per_s,
                     double distance_mm,
                     double tilt_deg,
                     double tilting_s);

/// The same averaged from the upper edge to `distance_mm`: two thirds of it.
double MeanDrainedFilmMm(double nu_mm2_per_s,
                         double distance_mm,
                         double tilt_deg,
                         double tilting_s);

enum class FilmVerdict {
  kStays,        ///< even the thinnest paint considered keeps it
  kRunsOff,      ///< some of it runs off, how much depends on the paint
  kNotCredible,  ///< more than half runs off even the thickest considered
};

/// "stays", "runs off" or "not credible".
const char* FilmVerdictName(FilmVerdict verdict);

struct FilmCheck {
  double poured_mm = 0.0;
  Span stays_mm;  ///< for the thinnest, the middle, the thickest paint
  Span runs_off;  ///< share of what was poured, 0 to 1
  FilmVerdict verdict = FilmVerdict::kStays;
};

/// Whether a film poured `poured_mm` thick survives the tilting.
FilmCheck CheckFilm(double poured_mm,
                    const Span& nu_mm2_per_s,
                    double distance_mm,
                    double tilt_deg,
                    double tilting_s);

}  // namespace flowkin
