#pragma once

#include <string>
#include <vector>

namespace flowkin {

/// Where work at the bench can hurt someone.
enum class Hazard {
  kPaint,        ///< any wet paint, medium, additive
  kPowder,       ///< dry pigment, mica, sanding
  kFlame,        ///< torch or heat gun over a wet picture
  kAlcohol,      ///< isopropyl alcohol, solvent varnish, aerosol
  kResin,        ///< uncured resin
  kWaste,        ///< rinse water and left-overs
  kFood,         ///< containers, children, animals
  kBlowing,      ///< blowing by mouth or straw for long
  kWeight,       ///< large wet canvas
  kElectricity,  ///< lamp, camera, computer beside water
};

/// One or two sentences: the usual caution, deferring to label, data sheet,
/// local rules and trained people. Nothing is called safe.
const char* Caution(Hazard hazard);

/// The cautions in the order given, each once.
std::vector<std::string> Cautions(const std::vector<Hazard>& hazards);

}  // namespace flowkin
