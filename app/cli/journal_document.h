#pragma once

#include <istream>
#include <string>

#include "app/cli/json_fields.h"
#include "app/usecases/journal.h"

namespace flowkin {

/// The facts of a table as `ready` reads them; the form stands in README.md.
Result<DayFacts> ReadDayFacts(const std::string& path, std::istream& fallback);

Json ReadyDocument(const ReadyReport& report);
Json LineDocument(const SessionLine& line);
Json PageDocument(const JournalPage& page);
Json LearnedDocument(const LearnedPractice& learned);
Json RemindersDocument(const std::vector<Reminder>& reminders);

}  // namespace flowkin
