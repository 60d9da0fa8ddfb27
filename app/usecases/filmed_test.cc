#include "app/usecases/filmed_test.h"

#include "core/flow/fitted_curve.h"

namespace flowkin {
namespace {

void SetByHand(EventsByHand& events, TestEvent event, double at_s) {
  switch (event) {
    case TestEvent::kLift:
      events.lift_s = at_s;
      break;
    case TestEvent::kBreak:
      events.break_s = at_s;
      break;
    case TestEvent::kLaid:
      events.laid_s = at_s;
      break;
    case TestEvent::kStart:
      events.start_s = at_s;
      break;
  }
}

}  // namespace

FilmedTest ToFilmedTest(const MeasuredClip& measured,
                        const MeasureClipOptions& options) {
  FilmedTest test;
  test.measurement = measured.measurement;
  test.film = measured.clip;
  test.duration_s = measured.info.duration_s;
  test.time_scale = measured.info.time_scale;
  test.volume_ml = options.test.volume_ml;
  test.mm_per_px = options.test.mm_per_px;
  test.shot_fps = options.shot_fps;
  test.clip_warnings = measured.info.warnings;
  return test;
}

FlowCurve LawOf(const FilmedTest& test) {
  return FittedCurve(test.measurement);
}

MeasureClipOptions OptionsOf(const BenchTest& test) {
  MeasureClipOptions options;
  options.test.kind = test.film.measurement.kind;
  options.test.volume_ml = test.film.volume_ml;
  options.test.mm_per_px = test.film.mm_per_px;
  options.shot_fps = test.film.shot_fps;
  for (const EventCorrected& correction : test.corrections) {
    SetByHand(options.test.by_hand, correction.event, correction.at_s);
  }
  return options;
}

MeasureClipOptions CorrectionOptions(const BenchTest& test,
                                     TestEvent event,
                                     double at_s) {
  MeasureClipOptions options = OptionsOf(test);
  SetByHand(options.test.by_hand, event, at_s);
  return options;
}

}  // namespace flowkin
