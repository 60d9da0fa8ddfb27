#pragma once

#include <string>
#include <vector>

#include "app/usecases/batch_label.h"
#include "core/base/result.h"

namespace flowkin {

struct LabelsOnPhoto {
  std::vector<BatchLabel> labels;
  std::string refused;  ///< why there are none
};

/// Reads the code of every label on a photo, however it is turned. Codes of
/// other kinds are passed over. kUnreadable where the file is no picture.
Result<LabelsOnPhoto> ReadLabelsOnPhoto(const std::string& path);

}  // namespace flowkin
