#pragma once

#include <string>

#include "app/usecases/paper.h"

namespace flowkin {

/// Reads a photo of any usual kind, upright, at most `most_px` along its longer
/// side. kUnreadable where it is no picture.
Result<Photo> LoadPhoto(const std::string& path, int most_px);

}  // namespace flowkin
