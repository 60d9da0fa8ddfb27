#pragma once

#include <QImage>

#include "app/usecases/clip_test.h"

class QVideoFrame;

namespace flowkin {

/// Copies a camera's picture into `frame` (planes only; the time is the
/// caller's). False where the layout cannot be read.
bool CopyPlanes(const QVideoFrame& picture, Frame* frame);

/// An RGB picture of the frame, at most `most_width` px wide.
QImage ToPicture(const Frame& frame, int most_width);

/// A copy of `picture`, a smaller one of a frame of `width_px` x `height_px`,
/// with what `test` found drawn in as it stood at `t_s`.
QImage WithFound(const QImage& picture,
                 int width_px,
                 int height_px,
                 const ClipTest& test,
                 double t_s);

}  // namespace flowkin
