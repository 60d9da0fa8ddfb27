#pragma once

#include <istream>
#include <string>

#include "app/usecases/journal.h"
#include "app/usecases/json_fields.h"

namespace flowkin {

/// The facts of a table as `ready` reads them; the form stands in README.md.
Result<DayFacts> ReadDayFacts(const std::string& path, std::istream& fallback);

Json ReadyDocument(const ReadyReport& report);
Json LineDocument(const SessionLine& line);
Json PageDocument(const JournalPage& page);
/// Every day, oldest first: {"format": "flowkin-journal", "version": 1,
/// "sessions": [...]}.
Result<Json> JournalDocument(const Journal& journal);
/// The same as a table after RFC 4180: one row per poured cup, or one per day
/// without a pour.
Result<std::string> JournalTable(const Journal& journal);
Json LearnedDocument(const LearnedPractice& learned);
Json RemindersDocument(const std::vector<Reminder>& reminders);

}  // namespace flowkin
