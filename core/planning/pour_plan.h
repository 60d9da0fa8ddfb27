#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/planning/film.h"
#include "core/planning/first_mix.h"
#include "core/planning/medium.h"
#include "core/planning/support.h"
#include "core/planning/technique.h"

namespace flowkin {

enum class PourRole { kBaseCoat, kColour, kActivator };

/// "base coat", "colour", "activator".
const char* PourRoleName(PourRole role);

/// What a container costs and holds; the currency is hers.
struct Price {
  double container_ml = 0.0;  ///< > 0
  double price = 0.0;         ///< >= 0
};

/// One paint of the palette. Of the base coat and the activator there is one.
struct PlannedPaint {
  std::string name;
  std::string brand;
  PaintBody body = PaintBody::kSoft;
  double share = 1.0;  ///< of the colours' volume, in parts; > 0
  /// Medium to one of paint by volume (powder: grams of it to one of medium);
  /// without it the rule of the body. The base coat takes none unless given.
  std::optional<double> medium_parts;
  /// Activator only: flow additive to one of paint by volume.
  double additive_parts = 1.0;
  Material material = kArtistPaint;
  double at_hand_ml = 0.0;  ///< unmixed paint on the shelf, >= 0
  std::optional<Price> price;
};

/// A mix of an earlier day. It is used where role and name are the same, the
/// oldest first.
struct LeftOver {
  std::string name;
  PourRole role = PourRole::kColour;
  bool medium = false;  ///< pouring medium; then name and role do not matter
  double volume_ml = 0.0;
  double age_days = 0.0;
};

struct PlanRequest {
  std::vector<Support> supports;
  Technique technique;
  PlannedPaint base_coat;
  std::vector<PlannedPaint> colours;
  std::optional<PlannedPaint> activator;
  MediumRecipe medium;
  std::optional<Price> medium_base_price;
  std::optional<Price> medium_varnish_price;
  std::optional<Price> additive_price;
  Material additive = kFlowAdditive;
  double medium_base_at_hand_ml = 0.0;
  double medium_varnish_at_hand_ml = 0.0;
  double additive_at_hand_ml = 0.0;
  std::vector<LeftOver> left_overs;

  double waste_share = 0.20;    ///< lost to cups and sticks; 15 to 25 % is told
  double reserve_share = 0.20;  ///< of each colour, unthinned; 20 to 25 % told
  int tests_per_cup = 4;
  double test_loss_ml = 3.0;  ///< left on the tile by one test; derived 2 to 4
  double medium_loss_share = 0.05;  ///< left in sieve and jug; own guess
  /// Added water over the finished mix, 0 to 0.5: thins the dry film, and the
  /// mix itself goes further. 0 counts the water as extra.
  double water_share = 0.0;

  /// What stays after tilting. No published flow of a finished pour was found;
  /// the span is what films left after tilting imply (derived).
  Span nu_mm2_per_s{420.0, 1250.0, 4200.0};
  double tilt_deg = 15.0;        ///< own guess
  double tilting_s = 60.0;       ///< own guess
  std::vector<PastPour> past;    ///< of the same technique
  bool past_of_journal = false;  ///< her journal told them; else the plan did
};

/// One cup, or the base coat's jug. All volumes before any water.
struct PlannedCup {
  std::string name;
  std::string brand;
  PourRole role = PourRole::kColour;
  PaintBody body = PaintBody::kSoft;
  double on_support_ml = 0.0;
  double waste_ml = 0.0;
  double tests_ml = 0.0;
  double reserve_ml = 0.0;
  double needed_ml = 0.0;     ///< the four together
  double left_over_ml = 0.0;  ///< of it taken from earlier mixes
  double mix_ml = 0.0;        ///< of it to be mixed now
  Portion paint;
  Portion medium;
  Portion additive;
  Material blend;
  double medium_parts = 0.0;
  Source medium_parts_source = Source::kCommonPractice;
  std::string remark;
};

/// Something to have on the shelf before she starts.
struct Supply {
  std::string name;
  double needed_ml = 0.0;
  double needed_g = 0.0;
  double at_hand_ml = 0.0;
  double buy_ml = 0.0;
  std::optional<int> containers;
  std::optional<double> used_cost;  ///< what goes into these pictures
  std::optional<double> buy_cost;   ///< what the shop takes
};

struct TakenLeftOver {
  LeftOver left_over;
  double taken_ml = 0.0;
};

struct PourPlan {
  int pictures = 0;
  double face_m2 = 0.0;  ///< of all
  double edge_m2 = 0.0;
  Span amount_ml_per_m2;         ///< all layers, the learned factor included
  std::vector<PlannedCup> cups;  ///< base coat, colours, activator
  double medium_needed_ml = 0.0;
  double medium_left_over_ml = 0.0;
  MediumBatch medium;  ///< to be made now
  std::vector<TakenLeftOver> left_overs;
  std::vector<Supply> supplies;
  double on_support_ml = 0.0;
  Span wet_mm;
  double volume_solids = 0.0;  ///< of the poured layers, water counted
  Span dry_mm;
  FilmCheck film;
  double wet_kg_per_m2 = 0.0;
  LearnedUse learned;
  /// Of what goes into the pictures; none where a price is missing.
  std::optional<double> cost_per_picture;
  std::vector<std::string> unpriced;  ///< supplies without a price
  std::vector<std::string> notes;
};

/// Works out what a pour takes. kInvalidArgument where a value is out of
/// range, with the name of it.
Result<PourPlan> MakePourPlan(const PlanRequest& request);

}  // namespace flowkin
