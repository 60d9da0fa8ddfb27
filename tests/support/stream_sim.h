#pragma once

#include <cstdint>
#include <random>
#include <vector>

namespace flowkin::testing {

/// A stick dipped into Newtonian paint, lifted, and left to drain.
///
/// The film on the stick drains after Jeffreys 1930 (The draining of a
/// vertical plate, Proc. Camb. Phil. Soc. 26; from memory, not checked) or, on
/// a round rod, by the annular-film flux at FilmFlowMlS. It feeds a thread that
/// obeys the slender momentum balance (Trouton's 3 mu, inertia, gravity, full
/// surface energy). Nothing about thinning or breaking is imposed; they come
/// out of the balance.
enum class StickShape { kFlat, kRod };

struct StreamSimOptions {
  double nu_mm2_s = 500.0;    ///< kinematic viscosity, 20 .. 20000
  double rho_kg_m3 = 1200.0;  ///< density
  double sigma_n_m = 0.0325;  ///< surface tension
  StickShape stick = StickShape::kFlat;
  double stick_width_mm = 12.0;     ///< flat: broad side; rod: diameter
  double stick_thickness_mm = 2.0;  ///< flat only
  double wetted_length_mm = 30.0;
  double fall_height_mm = 50.0;    ///< stick edge above the pool, at the end
  double lift_speed_mm_s = 150.0;  ///< until the edge nears its height
  /// Radius of the patch at the stick's lower edge that the thread hangs from.
  double edge_radius_mm = 2.0;
  double largest_coat_mm = 3.0;  ///< thicker first coats slump at once
  /// Relative scatter of what flows off the stick; seeds the breaking.
  double disturbance = 2e-4;
  std::uint32_t seed = 1;
};

/// Film left on the stick (mm), `below_top_mm` under the film's upper edge,
/// `age_s` after that edge left the paint; at most the largest coat.
double FilmThicknessMm(const StreamSimOptions& options,
                       double below_top_mm,
                       double age_s);

/// Flow down the stick (mL/s) where its film is `film_mm` thick: Jeffreys'
/// P g h^3 / (3 nu), or the annular film on a rod, integrated from
/// w'' + w'/r = -g/nu, w = 0 on the rod, w' = 0 at the surface.
double FilmFlowMlS(const StreamSimOptions& options, double film_mm);

/// Heights above the pool's surface, radii, speeds downwards; top down.
struct StreamPoint {
  double height_mm = 0.0;
  double radius_mm = 0.0;
  double speed_mm_s = 0.0;
};

/// One connected piece of liquid between stick and pool.
struct StreamPiece {
  bool on_stick = false;
  bool in_pool = false;
  std::vector<StreamPoint> points;
};

/// Thread and film, stepped forward in time. Time 0 is the moment the stick's
/// lower edge leaves the surface.
class StreamSim {
 public:
  explicit StreamSim(const StreamSimOptions& options);

  /// Steps on to `t_s`; earlier times are ignored.
  void AdvanceTo(double t_s);
  /// One step of the solver, of at most `longest_s`.
  void Step(double longest_s);

  double time_s() const { return t_; }
  double EdgeHeightMm() const;
  /// Flow off the stick's lower edge.
  double FlowMlS() const;
  /// Film thickness (mm) `below_top_mm` under the film's upper edge.
  double FilmMm(double below_top_mm) const;
  std::vector<StreamPiece> Pieces() const;
  /// Thinnest place of the liquid between stick and pool, 0 when apart.
  double NeckRadiusMm() const;
  /// Thread radius at a height above the pool, 0 where there is none.
  double RadiusMm(double height_mm) const;
  /// Longest gap (mm) on the way from stick to pool and its middle's height.
  double LargestGapMm(double* height_mm = nullptr) const;

  /// Moments the stick's own piece parted anywhere.
  const std::vector<double>& pinches_s() const { return pinches_s_; }
  /// Those of them with which more than 5 mm3 had left the stick's piece since
  /// the one before: the thread behind a drop, not a satellite.
  const std::vector<double>& drops_s() const { return drops_s_; }
  /// Moments a free drop reached the pool.
  const std::vector<double>& lands_s() const { return lands_s_; }
  const StreamSimOptions& options() const { return o_; }

 private:
  // Lagrangian chain: nodes x (m below the pool's surface, so negative above
  // it) with speed u (m/s), volumes (m3) between neighbours.
  struct Chain {
    bool on_stick = false;
    bool in_pool = false;
    std::vector<double> x, u, volume;
  };

  double EdgeX(double t) const;
  double EdgeSpeed(double t) const;
  void NodeRadii(const Chain& c, std::vector<double>* r) const;
  void Solve(Chain* c, double dt, double flow);
  void Remesh(Chain* c);
  void FeedTop(Chain* c, double dt, double flow);
  void DropIntoPool(Chain* c);
  /// Crumbs, and what lies wholly in the pool.
  void Forget();
  void Pinch();
  void Join();

  StreamSimOptions o_;
  double nu_, rho_, sigma_, mu_, edge_r_, wetted_, fall_, lift_;
  double t_ = 0.0;
  double dt_ = 1e-4;
  std::vector<Chain> chains_;  // top down
  double supplied_ = 0.0;      // m3 off the stick so far
  double left_before_ = 0.0;   // m3 gone from its piece at the last drop
  std::vector<double> pinches_s_, drops_s_, lands_s_;
  std::mt19937 random_;
  // Scratch of Solve and Remesh, kept to avoid allocation.
  std::vector<double> r_, tension_, lower_, diag_, upper_, rhs_, viscous_;
  std::vector<double> cumulative_, slope_v_, slope_u_;
  std::vector<double> new_x_, new_u_, new_volume_;
};

struct StreamChange {
  double t_s = 0.0;
  bool joined = false;
};

/// What a whole run gives; all times since the lift, < 0 if it did not happen.
struct StreamSimResult {
  double break_s = -1.0;  ///< first gap of at least 1 mm
  /// Start of the first gap that stays for 0.08 s.
  double lasting_break_s = -1.0;
  double first_pinch_s = -1.0;
  double break_height_mm = 0.0;
  double neck_0p2mm_s = -1.0;  ///< neck radius first below 0.2 mm
  double neck_0p1mm_s = -1.0;
  std::vector<StreamChange> continuity;
  std::vector<double> drips_s;
  std::vector<double> lands_s;
  struct Sample {
    double t_s, neck_radius_mm, flow_ml_s;
  };
  std::vector<Sample> samples;
};

/// Follows the joined / apart state while a StreamSim is stepped.
class StreamWatch {
 public:
  /// Looks at the state after a step.
  void See(const StreamSim& sim);
  /// Closes the record at the simulation's present time.
  StreamSimResult Finish(const StreamSim& sim) const;

 private:
  StreamSimResult r_;
  bool joined_ = false;
  double last_sample_s_ = -1.0;
};

/// Runs until `after_break_s` past the lasting break, at most `limit_s`.
StreamSimResult RunStream(const StreamSimOptions& options,
                          double after_break_s = 1.0,
                          double limit_s = 60.0);

}  // namespace flowkin::testing
