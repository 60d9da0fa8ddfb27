// Prints how a stream thins and breaks: events on standard error as
// "name,value", the thread's radius at a few heights against time as CSV on
// standard output.
#include <CLI/CLI.hpp>
#include <cstdio>
#include <string>

#include "tests/support/stream_sim.h"

int main(int argc, char** argv) {
  using namespace flowkin::testing;
  StreamSimOptions o;
  std::string stick = "flat";
  double after_s = 1.0, limit_s = 60.0, step_s = 0.05;
  bool events_only = false;
  CLI::App app{"Draining stick and its thread, simulated"};
  app.add_option("--nu", o.nu_mm2_s, "kinematic viscosity, mm2/s");
  app.add_option("--rho", o.rho_kg_m3, "density, kg/m3");
  app.add_option("--sigma", o.sigma_n_m, "surface tension, N/m");
  app.add_option("--stick", stick, "flat or rod")
      ->check(CLI::IsMember({"flat", "rod"}));
  app.add_option("--width", o.stick_width_mm, "broad side or diameter, mm");
  app.add_option("--thickness", o.stick_thickness_mm, "flat stick, mm");
  app.add_option("--wetted", o.wetted_length_mm, "wetted length, mm");
  app.add_option("--fall", o.fall_height_mm, "fall height, mm");
  app.add_option("--lift", o.lift_speed_mm_s, "lift speed, mm/s");
  app.add_option("--edge", o.edge_radius_mm, "radius at the edge, mm");
  app.add_option("--coat", o.largest_coat_mm, "largest first coat, mm");
  app.add_option("--disturbance", o.disturbance, "relative, of the flow");
  app.add_option("--seed", o.seed, "of the disturbance");
  app.add_option("--after", after_s, "go on this long after the break, s");
  app.add_option("--limit", limit_s, "stop at the latest, s");
  app.add_option("--step", step_s, "of the table, s");
  app.add_flag("--events", events_only, "events only, on standard output");
  CLI11_PARSE(app, argc, argv);
  if (stick == "rod") o.stick = StickShape::kRod;

  if (events_only) {
    const StreamSimResult r = RunStream(o, after_s, limit_s);
    std::printf(
        "nu,break_s,lasting_break_s,first_pinch_s,neck_0p2mm_s,"
        "neck_0p1mm_s,break_height_mm,drips\n");
    std::printf("%.3f,%.4f,%.4f,%.4f,%.4f,%.4f,%.2f,",
                o.nu_mm2_s,
                r.break_s,
                r.lasting_break_s,
                r.first_pinch_s,
                r.neck_0p2mm_s,
                r.neck_0p1mm_s,
                r.break_height_mm);
    for (double t : r.drips_s) std::printf("%.3f ", t);
    std::printf("\n");
    return r.break_s < 0.0 ? 1 : 0;
  }
  StreamSim sim(o);
  StreamWatch watch;
  std::printf("t_s,edge_mm,flow_ml_s,neck_mm,gap_mm");
  for (int i = 1; i < 10; ++i) {
    std::printf(",r_at_%.0fmm", o.fall_height_mm * i / 10.0);
  }
  std::printf("\n");
  double next = 0.0, end = limit_s;
  while (sim.time_s() < end) {
    sim.Step(step_s);
    watch.See(sim);
    const StreamSimResult now = watch.Finish(sim);
    if (now.lasting_break_s >= 0.0) {
      end = std::min(limit_s, now.lasting_break_s + after_s);
    }
    if (sim.time_s() < next) continue;
    next += step_s;
    std::printf("%.4f,%.3f,%.5f,%.5f,%.3f",
                sim.time_s(),
                sim.EdgeHeightMm(),
                sim.FlowMlS(),
                sim.NeckRadiusMm(),
                sim.LargestGapMm());
    for (int i = 1; i < 10; ++i) {
      std::printf(",%.5f", sim.RadiusMm(o.fall_height_mm * i / 10.0));
    }
    std::printf("\n");
  }
  const StreamSimResult r = watch.Finish(sim);
  std::fprintf(stderr,
               "break_s,%.4f\nlasting_break_s,%.4f\nfirst_pinch_s,%.4f\n",
               r.break_s,
               r.lasting_break_s,
               r.first_pinch_s);
  return r.break_s < 0.0 ? 1 : 0;
}
