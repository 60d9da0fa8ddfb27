#include "core/track/front_track.h"

#include <ostream>

namespace flowkin {

void WriteFrontTrace(std::ostream& out, const FrontTrack& track) {
  out << "t_s,radius_px,radius_sd_px,radius_mm,x_px,y_px,shift_x_px,"
         "shift_y_px,c2_px,s2_px,c3_px,s3_px,visible,roughness_px\n";
  const auto precision = out.precision(8);
  for (const FrontSample& s : track.samples) {
    out << s.t_s << ',' << s.radius_px << ',' << s.radius_sd_px << ',';
    if (track.scale) out << s.radius_px * track.scale->mm_per_px;
    out << ',' << s.x_px << ',' << s.y_px << ',' << s.shift_x_px << ','
        << s.shift_y_px << ',' << s.c2_px << ',' << s.s2_px << ',' << s.c3_px
        << ',' << s.s3_px << ',' << s.visible << ',' << s.roughness_px << '\n';
  }
  out.precision(precision);
}

}  // namespace flowkin
