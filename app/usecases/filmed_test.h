#pragma once

#include "app/usecases/measure_clip.h"
#include "core/base/result.h"
#include "core/session/palette_session.h"

namespace flowkin {

/// What the bench keeps of a film that was measured with `options`.
FilmedTest ToFilmedTest(const MeasuredClip& measured,
                        const MeasureClipOptions& options);

/// The law its film was read by, to be drawn over its series (FittedCurve).
FlowCurve LawOf(const FilmedTest& test);

/// How a film is measured again, with every correction made so far.
MeasureClipOptions OptionsOf(const BenchTest& test);

/// The same with one more event set by hand, `at_s` seconds of real time since
/// the film's first frame.
MeasureClipOptions CorrectionOptions(const BenchTest& test,
                                     TestEvent event,
                                     double at_s);

}  // namespace flowkin
