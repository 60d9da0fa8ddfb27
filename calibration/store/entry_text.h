#pragma once

#include <string>

#include "core/base/result.h"
#include "core/session/palette_session.h"

namespace flowkin {

/// An entry of a session's log as the store keeps it: the kind's name and a
/// JSON object. Fields may be added to a kind, never renamed or dropped.
struct EntryText {
  std::string kind;
  std::string body;
};

EntryText ToText(const EntryWhat& what);

/// Reads what ToText writes, of this or an older program. A kind it does not
/// know becomes a ForeignEntry; a body that is damaged is kUnreadable.
Result<EntryWhat> FromText(const EntryText& text);

}  // namespace flowkin
