#pragma once

#include <istream>
#include <string>
#include <vector>

#include "app/usecases/json_fields.h"
#include "app/usecases/paper.h"

namespace flowkin {

/// A label as `print labels` reads it: one, or several under "labels". What its
/// code holds is such a document again.
Result<std::vector<BatchLabel>> ReadLabels(const std::string& path,
                                           std::istream& fallback);

/// The document of a label. For its code it is written in ASCII, because code
/// readers guess at anything else.
Json LabelDocument(const BatchLabel& label);

}  // namespace flowkin
