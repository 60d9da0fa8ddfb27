#pragma once

#include <QImage>

#include "app/usecases/clip_test.h"

class QVideoFrame;

namespace flowkin {

/// Copies a camera's picture into `frame` (planes only; the time is the
/// caller's). False where the layout cannot be read.
bool CopyPlanes(const QVideoFrame& picture, Frame* frame);

/// An RGB picture of the frame, at most `most_width` px wide. With `found`,
/// what that test found is drawn in as it stood at the frame's time.
QImage ToPicture(const Frame& frame,
                 int most_width,
                 const ClipTest* found = nullptr);

}  // namespace flowkin
