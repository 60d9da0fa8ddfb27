#pragma once

#include <istream>
#include <string>
#include <vector>

#include "app/usecases/batch_label.h"
#include "app/usecases/json_fields.h"

namespace flowkin {

/// A label as `print labels` and `bench label` read it: one, or several under
/// "labels". What its code holds is such a document again.
Result<std::vector<BatchLabel>> ReadLabels(const std::string& path,
                                           std::istream& fallback);

/// The document of a label. For its code it is written in ASCII, because code
/// readers guess at anything else.
Json LabelDocument(const BatchLabel& label);

}  // namespace flowkin
