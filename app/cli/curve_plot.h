#pragma once

#include <string>

#include "app/usecases/brand_book.h"
#include "core/base/result.h"

namespace flowkin {

/// The bytes of a picture of the curve, its 95 % band and the tests it rests
/// on; SVG 1.1 or PNG by the ending of `file_name`.
Result<std::string> DrawCurvePlot(const CurvePlot& plot,
                                  const std::string& brand,
                                  const std::string& file_name);

}  // namespace flowkin
