#pragma once

#include <istream>
#include <optional>
#include <string>
#include <vector>

#include "app/usecases/json_fields.h"
#include "app/usecases/plan_pour.h"

namespace flowkin {

/// A canvas size as she writes it: "40x50", "40x50x1.8cm", "16x20x1.5in",
/// "30" or "30x2cm" for a round one. Units mm, cm, m, in, ft; without one cm.
Result<Support> ReadSupport(const std::string& text, SupportShape shape);

/// "4:1" or "4"; kInvalidArgument otherwise.
Result<std::pair<double, double>> ReadParts(const std::string& text);

/// `table` with what `path` holds in place of the entries of the same name; an
/// empty path leaves it as it is.
Result<std::vector<Technique>> ReadTechniques(const std::string& path,
                                              std::vector<Technique> table);

/// As `plan` reads it; its form stands in README.md. `technique` names an entry
/// of `techniques`.
Result<PlanRequest> ReadPlanRequest(const std::string& path,
                                    std::istream& fallback,
                                    const std::vector<Technique>& techniques);

Result<Technique> FindTechnique(const std::vector<Technique>& techniques,
                                const std::string& name);

/// The request itself, as ReadPlanRequest reads it; earlier pours and
/// left-overs are not in it, the book tells them.
Json PlanRequestDocument(const PlanRequest& request);

Json SpanDocument(const Span& span);
Json PortionDocument(const Portion& portion);
Json PlanDocument(const PlanReport& report, const PlanRequest& request);
Json TechniqueDocument(const Technique& technique);
/// As ReadTechniques reads it.
Json TechniquesDocument(const std::vector<Technique>& techniques);

/// Fields of a recipe ("base_parts", "varnish_parts", "by", ...) and of a
/// paint.
void ReadMaterial(const JsonFields& fields, Material& material);
MediumRecipe ReadMediumRecipe(const JsonFields& fields);

}  // namespace flowkin
