#pragma once

#include <optional>

#include "core/flow/measurement.h"
#include "core/track/stream_track.h"

namespace flowkin {

/// From colour to colour: where the outline is seen depends on the paint's
/// shade against what stands behind it. Rendered films of light and dark
/// paints, treated as cameras and phones do, lie so far apart.
inline constexpr double kOutlineSd = 0.07;

/// How thick the paint lies on the raised stick: by how much its outline
/// narrows while it drains, between `lift_s` and `break_s`, seconds since the
/// clip's first frame. The film of paint that runs down an upright wall is as
/// thick as sqrt(nu z / (g t)), z below its upper end, t after it left the
/// paint [Jeffreys1930]; so the outline's width is a constant plus this proxy,
/// coat_thickness [stick widths], over sqrt(t / 1 s). It goes with sqrt(nu),
/// whatever surface tension and the moment of the break do.
///
/// Both outlines of the stick's lower end are taken; one of them where the
/// other cannot be told from what stands behind and a stretch of bare stick
/// shows how the hand moves. Empty where outlines do not narrow alike, do not
/// follow the law, or are not seen.
std::optional<FlowProxy> CoatThickness(const StreamEpisode& episode,
                                       double lift_s,
                                       double break_s);

}  // namespace flowkin
