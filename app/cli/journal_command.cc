#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <memory>
#include <ostream>
#include <string>
#include <system_error>
#include <utility>

#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/cli/cup_document.h"
#include "app/cli/practice_options.h"
#include "app/usecases/amounts.h"
#include "app/usecases/bench.h"
#include "app/usecases/journal_document.h"
#include "app/usecases/read_file.h"

namespace flowkin {
namespace {

struct JournalArguments {
  bool json = false;
  std::string store;
  SessionId session = 0;
  SessionId other = 0;
  int most = 100;
  std::vector<std::string> words;
  std::string plan, text, photo, fault, verdict, kind = "wet", today, seen, cup;
  int days = 60;
  PourMade pour;
  CellsTested cells;
};

void PrintLine(std::ostream& out, const SessionLine& line) {
  out << PaddedLeft(std::to_string(line.id), 5) << "  "
      << FormatUtc(line.begun).substr(0, 10) << "  " << line.name << '\n';
}

/// "base coat", where documents say "base_coat".
std::string RoleWord(CupRole role) {
  std::string word = CupRoleName(role);
  std::replace(word.begin(), word.end(), '_', ' ');
  return word;
}

std::string Counted(std::size_t count, const std::string& what) {
  return std::to_string(count) + ' ' + what + (count == 1 ? "" : "s");
}

/// What she wrote besides.
std::string More(const std::string& text) {
  return text.empty() ? text : ", " + text;
}

void PrintPour(std::ostream& out, const PourMade& pour, UtcTime at) {
  const std::string when = FormatUtc(at);
  out << "Poured: " << when.substr(0, 10) << ' ' << when.substr(11, 5) << " UTC"
      << More(pour.technique);
  const auto number = [&](const char* what,
                          const std::optional<double>& value,
                          const char* unit) {
    if (value) out << what << Short(*value) << unit;
  };
  number(", planned ", pour.planned_ml, " mL");
  number(", used ", pour.used_ml, " mL");
  number(", ", pour.wet_mm, " mm wet");
  number(", ", pour.dry_mm, " mm dry");
  number(", ", pour.humidity_percent, " % humidity");
  number(", rested ", pour.rested_min, " min");
  if (pour.strained) out << (*pour.strained ? ", strained" : ", not strained");
  out << More(pour.text) << '\n';
}

void PrintPage(std::ostream& out, const JournalPage& page) {
  PrintLine(out, page.line);
  if (page.session.room_c()) {
    out << "Room: " << Short(*page.session.room_c()) << " °C\n";
  }
  const BenchJournal& journal = page.session.journal();
  for (const BenchCup& cup : page.session.cups()) {
    out << "  " << Padded(cup.details.label, 20)
        << Padded(RoleWord(cup.details.role), 12)
        << Counted(cup.tests.size(), "test");
    if (const auto share = cup.WaterShare()) {
      out << ", " << Short(100.0 * *share) << " % added water";
    }
    out << '\n';
  }
  if (journal.pour) {
    PrintPour(out, *journal.pour, *journal.poured_at);
    for (const PouredCup& cup : journal.pour->cups) {
      out << "  " << Padded(cup.label, 20);
      if (cup.ln_ratio && cup.interval) {
        out << Short(std::exp(cup.ln_ratio->value)) << " ("
            << Short(cup.interval->low) << " to " << Short(cup.interval->high)
            << "), aimed at " << Short(cup.target);
      } else {
        out << "not measured";
      }
      out << '\n';
    }
  }
  for (const BenchJournal::Photo& photo : journal.photos) {
    out << "Photo (" << PhotoKindName(photo.photo.kind)
        << "): " << photo.photo.path << '\n';
  }
  for (const BenchJournal::Cells& cells : journal.cells) {
    out << "Cell test: " << CellsSeenName(cells.test.seen);
    if (cells.test.after_s) {
      out << " after " << Short(*cells.test.after_s) << " s";
    }
    if (cells.test.additive_parts) {
      out << ", additive 1:" << Short(*cells.test.additive_parts);
    }
    if (cells.test.counted) {
      const CellsCounted& counted = *cells.test.counted;
      out << ", " << Short(counted.per_cm2) << " cells on a cm2 ("
          << Short(counted.per_cm2_interval.low) << " to "
          << Short(counted.per_cm2_interval.high) << "), half larger than "
          << Short(counted.median_mm) << " mm";
    }
    if (!cells.test.text.empty()) out << ": " << cells.test.text;
    out << '\n';
  }
  for (const BenchJournal::Note& note : journal.notes) {
    out << "Note: " << note.text << '\n';
  }
  if (journal.judged) {
    out << "Judged: " << PourVerdictName(journal.judged->verdict)
        << More(journal.judged->text) << '\n';
  }
  for (const ExplainedFault& fault : page.faults) {
    out << "Seen: " << fault.seen.fault << More(fault.seen.text) << '\n';
    if (!fault.causes.empty()) {
      out << "  Causes commonly named, held against that day (no proof):\n";
    }
    for (const Cause& cause : fault.causes) {
      out << "  " << Padded(StandingName(cause.standing), 14) << cause.says;
      if (!cause.evidence.empty()) out << " (" << cause.evidence << ")";
      out << '\n';
    }
  }
}

void PrintLearned(std::ostream& out, const LearnedPractice& learned) {
  out << Counted(static_cast<std::size_t>(learned.pours), "pour") << ", "
      << learned.judged << " judged.\n";
  const LearnedBand& band = learned.band;
  if (band.told) {
    out << "Your pictures bear a mismatch of about "
        << Short(100.0 * *band.band) << " % ("
        << Short(100.0 * band.band_interval.low) << " to "
        << Short(100.0 * band.band_interval.high) << " %).\n";
  } else {
    out << "Your own match band: too few pours to tell.\n";
  }
  for (const auto& [technique, roles] : learned.targets) {
    for (const auto& [role, target] : roles) {
      out << technique << ", " << RoleWord(role) << ": ";
      if (target.told) {
        out << "good pours lay at " << Short(target.ratio) << " ("
            << Short(target.interval.low) << " to "
            << Short(target.interval.high) << ").\n";
      } else {
        out << "too few pours to tell.\n";
      }
    }
  }
  for (const auto& [technique, use] : learned.use) {
    out << technique << ": ";
    if (use.told) {
      out << "you use " << Short(use.factor) << " times what is planned ("
          << Short(use.interval.low) << " to " << Short(use.interval.high)
          << ").\n";
    } else {
      out << "planned against used: too few pours to tell.\n";
    }
  }
}

ExitStatus RunSearch(const JournalArguments& arguments, Terminal& terminal) {
  const Result<Journal> journal = Journal::Open(StorePath(arguments.store));
  if (!journal) return Fail(terminal, journal.error());
  std::string words;
  for (const std::string& word : arguments.words) words += word + " ";
  const auto found = journal->Search(words, arguments.most);
  if (!found) return Fail(terminal, found.error());
  if (arguments.json) {
    Json document;
    document["sessions"] = Json::array();
    for (const SessionLine& line : *found) {
      document["sessions"].push_back(LineDocument(line));
    }
    PrintDocument(terminal, document);
    return ExitStatus::kDone;
  }
  for (const SessionLine& line : *found) PrintLine(terminal.out, line);
  if (found->empty()) terminal.out << "Nothing found.\n";
  return ExitStatus::kDone;
}

ExitStatus RunShow(const JournalArguments& arguments, Terminal& terminal) {
  const Result<Journal> journal = Journal::Open(StorePath(arguments.store));
  if (!journal) return Fail(terminal, journal.error());
  const Result<JournalPage> page = journal->Page(arguments.session);
  if (!page) return Fail(terminal, page.error());
  if (arguments.other != 0) {
    const Result<JournalPage> other = journal->Page(arguments.other);
    if (!other) return Fail(terminal, other.error());
    if (arguments.json) {
      Json document;
      document["sessions"] = {PageDocument(*page), PageDocument(*other)};
      PrintDocument(terminal, document);
    } else {
      PrintPage(terminal.out, *page);
      terminal.out << '\n';
      PrintPage(terminal.out, *other);
    }
    return ExitStatus::kDone;
  }
  if (arguments.json) {
    PrintDocument(terminal, PageDocument(*page));
  } else {
    PrintPage(terminal.out, *page);
  }
  return ExitStatus::kDone;
}

ExitStatus RunLearned(const JournalArguments& arguments, Terminal& terminal) {
  const Result<Journal> journal = Journal::Open(StorePath(arguments.store));
  if (!journal) return Fail(terminal, journal.error());
  const Result<LearnedPractice> learned = journal->Learned();
  if (!learned) return Fail(terminal, learned.error());
  if (arguments.json) {
    PrintDocument(terminal, LearnedDocument(*learned));
  } else {
    PrintLearned(terminal.out, *learned);
  }
  return ExitStatus::kDone;
}

ExitStatus RunExport(const JournalArguments& arguments, Terminal& terminal) {
  const Result<Journal> journal = Journal::Open(StorePath(arguments.store));
  if (!journal) return Fail(terminal, journal.error());
  if (arguments.json) {
    const Result<Json> document = JournalDocument(*journal);
    if (!document) return Fail(terminal, document.error());
    PrintDocument(terminal, *document);
    return ExitStatus::kDone;
  }
  const Result<std::string> table = JournalTable(*journal);
  if (!table) return Fail(terminal, table.error());
  terminal.out << *table;
  return ExitStatus::kDone;
}

ExitStatus RunRemind(const JournalArguments& arguments, Terminal& terminal) {
  const Result<Day> today = ReadToday(arguments.today);
  if (!today) return Fail(terminal, today.error());
  const Result<Journal> journal = Journal::Open(StorePath(arguments.store));
  if (!journal) return Fail(terminal, journal.error());
  const auto reminders = journal->Reminders(*today, arguments.days);
  if (!reminders) return Fail(terminal, reminders.error());
  if (arguments.json) {
    PrintDocument(terminal, RemindersDocument(*reminders));
    return ExitStatus::kDone;
  }
  for (const Reminder& reminder : *reminders) {
    terminal.out << FormatDay(reminder.from) << "  " << reminder.name << ": "
                 << reminder.says << '\n';
  }
  for (const std::string& caution : CautionsOf(*reminders)) {
    terminal.out << "Caution: " << caution << '\n';
  }
  return ExitStatus::kDone;
}

/// Does `verb` on the session's bench and shows its page.
template <typename Verb>
ExitStatus Write(const JournalArguments& arguments,
                 Terminal& terminal,
                 const Verb& verb) {
  {
    if (auto fits = CheckText(arguments.text); !fits) {
      return Fail(terminal, fits.error());
    }
    Result<Bench> bench = Bench::Open(StorePath(arguments.store));
    if (!bench) return Fail(terminal, bench.error());
    if (auto opened = bench->OpenSession(arguments.session); !opened) {
      return Fail(terminal, opened.error());
    }
    if (Result<void> done = verb(*bench); !done) {
      return Fail(terminal, done.error());
    }
  }
  return RunShow(arguments, terminal);
}

ExitStatus RunPour(const JournalArguments& arguments, Terminal& terminal) {
  return Write(arguments, terminal, [&](Bench& bench) {
    PourMade pour = arguments.pour;
    pour.text = arguments.text;
    if (!arguments.plan.empty()) {
      PracticeOptions practice;
      practice.store = arguments.store;
      const auto plan = ReadPlan(arguments.plan, practice, 1, terminal);
      if (!plan) return Result<void>(plan.error());
      const PourPlan& planned = plan->first.plan;
      if (pour.technique.empty()) {
        pour.technique = plan->second.technique.name;
      }
      if (!pour.planned_ml) {
        pour.planned_ml = planned.on_support_ml;
        pour.plan_factor = planned.learned.factor;
      }
      if (!pour.wet_mm) pour.wet_mm = planned.wet_mm.start;
      if (!pour.dry_mm) pour.dry_mm = planned.dry_mm.start;
    }
    return bench.RecordPour(std::move(pour), Now());
  });
}

/// The whole path of a photo that is there; what it shows is not looked at.
Result<std::string> PhotoPath(const std::string& photo) {
  if (const Result<std::ifstream> file = OpenToRead(photo); !file) {
    return file.error();
  }
  std::error_code failed;
  const std::filesystem::path path = std::filesystem::canonical(photo, failed);
  return failed ? photo : path.string();
}

ExitStatus RunPhoto(const JournalArguments& arguments, Terminal& terminal) {
  const Result<std::string> path = PhotoPath(arguments.photo);
  if (!path) return Fail(terminal, path.error());
  return Write(arguments, terminal, [&](Bench& bench) -> Result<void> {
    return bench.RecordPhoto(
        {*PhotoKindFromName(arguments.kind), *path, {}, arguments.text}, Now());
  });
}

ExitStatus RunCells(const JournalArguments& arguments, Terminal& terminal) {
  CellsTested cells = arguments.cells;
  cells.seen = *CellsSeenFromName(arguments.seen);
  cells.text = arguments.text;
  if (!arguments.photo.empty()) {
    const Result<std::string> path = PhotoPath(arguments.photo);
    if (!path) return Fail(terminal, path.error());
    cells.photo = *path;
  }
  return Write(arguments, terminal, [&](Bench& bench) -> Result<void> {
    if (!arguments.cup.empty()) {
      for (const BenchCup& cup : bench.session().cups()) {
        if (cup.details.label == arguments.cup) cells.cup = cup.id;
      }
      if (!cells.cup) {
        return Error{ErrorCode::kInvalidArgument,
                     "There is no cup '" + arguments.cup +
                         "' on that bench; name one of its cups."};
      }
    }
    return bench.RecordCells(cells, Now());
  });
}

ExitStatus RunFault(const JournalArguments& arguments, Terminal& terminal) {
  return Write(arguments, terminal, [&](Bench& bench) {
    return bench.RecordFault({arguments.fault, arguments.text}, Now());
  });
}

ExitStatus RunJudge(const JournalArguments& arguments, Terminal& terminal) {
  return Write(arguments, terminal, [&](Bench& bench) {
    return bench.JudgePour(
        {*PourVerdictFromName(arguments.verdict), arguments.text}, Now());
  });
}

ExitStatus RunNote(const JournalArguments& arguments, Terminal& terminal) {
  return Write(arguments, terminal, [&](Bench& bench) {
    return bench.TakeNote({}, arguments.text, Now());
  });
}

}  // namespace

Command AddJournalCommand(CLI::App& parent) {
  auto arguments = std::make_shared<JournalArguments>();
  using Run = ExitStatus (*)(const JournalArguments&, Terminal&);
  auto actions = std::make_shared<std::vector<std::pair<CLI::App*, Run>>>();
  CLI::App* app = parent.add_subcommand(
      "journal", "What was done, how it turned out and what it teaches");
  app->require_subcommand(1);
  const auto add = [&](const char* name, const char* what, Run run) {
    CLI::App* action = app->add_subcommand(name, what);
    action->add_flag("--json", arguments->json, "Print one JSON document");
    action->add_option(
        "--store", arguments->store, "Book that holds the sessions");
    actions->emplace_back(action, run);
    return action;
  };
  const auto add_to = [&](const char* name, const char* what, Run run) {
    CLI::App* action = add(name, what, run);
    action->add_option("SESSION", arguments->session, "Number of the session")
        ->required();
    return action;
  };
  CLI::App* search =
      add("search", "Finds sessions by what was written in them", RunSearch);
  search->add_option("WORDS", arguments->words, "Words; none lists the newest");
  search->add_option("--most", arguments->most, "So many at most")
      ->check(CLI::Range(1, 100000));
  add_to("show", "One session with everything about it", RunShow)
      ->add_option("--against", arguments->other, "And another beside it");
  CLI::App* pour = add_to("pour", "The picture was poured", RunPour);
  pour->add_option("--plan",
                   arguments->plan,
                   "Plan it was poured by, as 'plan --keep' writes it: brings "
                   "technique, amount and film");
  pour->add_option("--technique", arguments->pour.technique, "Way of pouring");
  pour->add_option("--planned-ml", arguments->pour.planned_ml, "As planned");
  pour->add_option("--plan-factor",
                   arguments->pour.plan_factor,
                   "By how much the plan followed your earlier pours");
  pour->add_option("--used-ml", arguments->pour.used_ml, "As it turned out");
  pour->add_option("--wet-mm", arguments->pour.wet_mm, "Film, wet");
  pour->add_option("--dry-mm", arguments->pour.dry_mm, "Film, dry");
  pour->add_option(
      "--humidity-percent", arguments->pour.humidity_percent, "Of the room");
  pour->add_option("--rested-min",
                   arguments->pour.rested_min,
                   "How long the mixes had rested");
  pour->add_option(
      "--strained", arguments->pour.strained, "Whether they were strained");
  pour->add_option("--text", arguments->text, "Anything else");
  CLI::App* photo = add_to("photo", "A photo of it", RunPhoto);
  photo->add_option("FILE", arguments->photo, "The photo")->required();
  photo->add_option("--kind", arguments->kind, "wet, dry, later or cells")
      ->check(CLI::IsMember({"wet", "dry", "later", "cells"}));
  photo->add_option("--text", arguments->text, "What it shows");
  std::vector<std::string> names;
  for (const Fault fault : AllFaults()) names.emplace_back(FaultName(fault));
  CLI::App* fault = add_to("fault", "A fault seen, with causes", RunFault);
  fault->add_option("FAULT", arguments->fault, "What is seen")
      ->required()
      ->check(CLI::IsMember(names));
  fault->add_option("--text", arguments->text, "Where, how much");
  CLI::App* judge = add_to("judge", "How it turned out", RunJudge);
  judge->add_option("VERDICT", arguments->verdict, "good, fair or poor")
      ->required()
      ->check(CLI::IsMember({"good", "fair", "poor"}));
  judge->add_option("--text", arguments->text, "Why");
  CLI::App* cells =
      add_to("cells", "A cell test: a drop on the cup's wall", RunCells);
  cells->add_option("SEEN", arguments->seen, "lacing, none, blob or drowned")
      ->required()
      ->check(CLI::IsMember({"lacing", "none", "blob", "drowned"}));
  cells->add_option(
      "--after-s", arguments->cells.after_s, "Seconds from drop to verdict");
  cells->add_option("--cup", arguments->cup, "Cup of the activator");
  cells->add_option("--additive-parts",
                    arguments->cells.additive_parts,
                    "Additive to one part of paint");
  cells->add_option("--photo", arguments->photo, "A photo of it");
  cells->add_option("--text", arguments->text, "Anything else");
  add_to("note", "A note", RunNote)
      ->add_option("TEXT", arguments->text, "What is to be kept")
      ->required();
  add("export",
      "Every session: a table (CSV), or with --json a document",
      RunExport);
  add("learned", "What your own pours teach", RunLearned);
  CLI::App* remind = add("remind", "What is due", RunRemind);
  remind->add_option("--today", arguments->today, "Another day than today");
  remind->add_option("--days", arguments->days, "Pours of so many days back")
      ->check(CLI::Range(1, 3650));
  return {app, [arguments, actions](Terminal& terminal) {
            for (const auto& [action, run] : *actions) {
              if (action->parsed()) return run(*arguments, terminal);
            }
            return ExitStatus::kFailed;
          }};
}

}  // namespace flowkin
