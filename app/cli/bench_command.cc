#include "app/cli/bench_command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <map>
#include <ostream>
#include <utility>

#include "app/cli/bench_text.h"
#include "app/cli/book_options.h"
#include "app/cli/cup_document.h"

namespace flowkin {
namespace {

Error Wrong(std::string message) {
  return {ErrorCode::kInvalidArgument, std::move(message)};
}

Result<UtcTime> TimeOf(const std::string& at_utc) {
  if (at_utc.empty()) {
    return UtcTime{std::chrono::duration_cast<std::chrono::milliseconds>(
                       std::chrono::system_clock::now().time_since_epoch())
                       .count()};
  }
  const auto time = ParseUtc(at_utc);
  if (!time) {
    return Wrong(
        "The time of --at must be written as 2026-03-01T12:00:00Z; it is "
        "universal time.");
  }
  return *time;
}

const std::map<std::string, CupRole> kRoles = {
    {"base-coat", CupRole::kBaseCoat},
    {"colour", CupRole::kColour},
    {"activator", CupRole::kActivator}};
const std::map<std::string, ThinnerKind> kThinners = {
    {"water", ThinnerKind::kWater},
    {"additive", ThinnerKind::kAdditive},
    {"medium", ThinnerKind::kMedium}};
const std::map<std::string, TestKind> kTests = {{"stream", TestKind::kStream},
                                                {"level", TestKind::kLevel},
                                                {"puddle", TestKind::kPuddle}};

/// "#1e90ff".
Result<SwatchColour> ReadSwatch(const std::string& text) {
  unsigned value = 0;
  const char* end = text.data() + text.size();
  if (text.size() == 7 && text[0] == '#' && text[1] != '-') {
    const auto read = std::from_chars(text.data() + 1, end, value, 16);
    if (read.ec == std::errc() && read.ptr == end) {
      return SwatchColour{static_cast<std::uint8_t>(value >> 16U),
                          static_cast<std::uint8_t>((value >> 8U) & 0xffU),
                          static_cast<std::uint8_t>(value & 0xffU)};
    }
  }
  return Wrong("A swatch is written as #rrggbb, six hexadecimal digits.");
}

struct UnitFlags {
  std::string kind;
  std::optional<double> ml;

  void AddTo(CLI::App& app) {
    app.add_option("--unit",
                   kind,
                   "What is measured out: drop, ml, gram, spray, teaspoon or "
                   "teaspoon_us")
        ->type_name("KIND");
    app.add_option("--unit-ml", ml, "One of it in mL, as you counted it")
        ->type_name("V");
  }
  /// Leaves `unit` alone where nothing was given.
  Result<void> ApplyTo(std::optional<DoseUnit>& unit) const {
    if (kind.empty()) {
      if (ml) return Wrong("--unit-ml needs --unit.");
      return {};
    }
    auto known = KnownUnit(kind);
    if (!known) {
      return Wrong("--unit is '" + kind +
                   "', but must be drop, ml, gram, spray, teaspoon or "
                   "teaspoon_us.");
    }
    if (ml) known->ml = *ml;
    unit = std::move(known);
    return {};
  }
};

CLI::App* Action(CLI::App& bench, const char* name, const char* what) {
  return bench.add_subcommand(name, what);
}

BenchAction Named(CLI::App* app,
                  const std::shared_ptr<std::string>& cup,
                  std::function<Result<void>(Bench&, CupId, UtcTime)> run) {
  app->add_option("cup", *cup, "The cup, as you call it")
      ->required()
      ->type_name("CUP");
  return {app,
          [cup, run = std::move(run)](
              Bench& bench, UtcTime now, Terminal&) -> Result<BenchDone> {
            const auto id = FindCup(bench, *cup);
            if (!id) return id.error();
            if (auto done = run(bench, *id, now); !done) return done.error();
            return BenchDone{bench.session().LastNumber(), ""};
          }};
}

struct CupFlags {
  std::string label, rename, role, brand, colour, swatch, thinner;
  std::optional<double> volume_ml, target, reserve_ml, thinner_ratio;
  UnitFlags unit;
  bool remove = false;
};

Result<void> ApplyTo(const CupFlags& flags, CupDetails& cup) {
  for (const auto& [what, name] :
       {std::pair<const char*, const std::string&>("cup", flags.label),
        std::pair<const char*, const std::string&>("cup", flags.rename),
        std::pair<const char*, const std::string&>("brand", flags.brand),
        std::pair<const char*, const std::string&>("colour", flags.colour)}) {
    if (auto fits = CheckName(what, name); !fits) return fits;
  }
  if (!flags.rename.empty()) cup.label = flags.rename;
  if (!flags.role.empty()) cup.role = kRoles.at(flags.role);
  if (!flags.brand.empty()) cup.paint.brand = flags.brand;
  if (!flags.colour.empty()) cup.paint.colour = flags.colour;
  if (!flags.swatch.empty()) {
    const auto swatch = ReadSwatch(flags.swatch);
    if (!swatch) return swatch.error();
    cup.swatch = *swatch;
  }
  if (!flags.thinner.empty()) cup.thinner = kThinners.at(flags.thinner);
  if (flags.volume_ml) cup.volume_ml = flags.volume_ml;
  if (flags.target) cup.target_ratio = *flags.target;
  if (flags.reserve_ml) cup.reserve_ml = flags.reserve_ml;
  if (flags.thinner_ratio) {
    if (!(*flags.thinner_ratio > 0.0)) {
      return Wrong("--thinner-ratio must be above 0.");
    }
    constexpr double kRelSd = 0.05;  // as `dose` takes it
    cup.thinner_ln_ratio = Estimate{std::log(*flags.thinner_ratio), kRelSd};
  }
  return flags.unit.ApplyTo(cup.unit);
}

BenchAction CupAction(CLI::App& bench) {
  auto flags = std::make_shared<CupFlags>();
  CLI::App* app =
      Action(bench, "cup", "Puts a cup on the bench, or changes or removes it");
  app->add_option("cup", flags->label, "What you call it")
      ->required()
      ->type_name("CUP");
  app->add_option("--role", flags->role, "base-coat, colour or activator")
      ->check(CLI::IsMember({"base-coat", "colour", "activator"}))
      ->type_name("ROLE");
  app->add_option("--name", flags->rename, "Another name for it");
  app->add_option("--brand", flags->brand, "Brand of the paint");
  app->add_option("--colour", flags->colour, "Its colour, as you call it");
  app->add_option("--swatch", flags->swatch, "Its look, as #rrggbb")
      ->type_name("#RRGGBB");
  app->add_option(
         "--volume-ml", flags->volume_ml, "What is in it before any addition")
      ->type_name("V");
  app->add_option("--target", flags->target, "Wanted ratio to the base coat")
      ->type_name("R");
  app->add_option(
         "--reserve-ml", flags->reserve_ml, "Unthinned mix that is kept back")
      ->type_name("V");
  app->add_option("--thinner", flags->thinner, "water, additive or medium")
      ->check(CLI::IsMember({"water", "additive", "medium"}))
      ->type_name("KIND");
  app->add_option("--thinner-ratio",
                  flags->thinner_ratio,
                  "The thinner's own ratio to the base coat, where tested")
      ->type_name("R");
  flags->unit.AddTo(*app);
  app->add_flag("--remove", flags->remove, "Take it off the bench");
  return {app, [flags](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
            const auto known = FindCup(b, flags->label);
            if (flags->remove) {
              if (!known) return known.error();
              if (auto done = b.RemoveCup(*known, now); !done) {
                return done.error();
              }
              return BenchDone{b.session().LastNumber(), ""};
            }
            CupDetails cup;
            if (known) {
              cup = b.session().FindCup(*known)->details;
            } else {
              cup.label = flags->label;
            }
            if (auto fits = ApplyTo(*flags, cup); !fits) return fits.error();
            if (known) {
              if (auto done = b.ChangeCup(*known, cup, now); !done) {
                return done.error();
              }
              return BenchDone{b.session().LastNumber(), ""};
            }
            const auto id = b.AddCup(cup, now);
            if (!id) return id.error();
            return BenchDone{*id, ""};
          }};
}

BenchAction AddedAction(CLI::App& bench) {
  struct Flags {
    std::string cup, thinner;
    std::optional<double> ml, units;
  };
  auto flags = std::make_shared<Flags>();
  CLI::App* app = Action(bench, "added", "Records what was stirred into a cup");
  app->add_option("cup", flags->cup, "The cup, as you call it")
      ->required()
      ->type_name("CUP");
  app->add_option("ml", flags->ml, "How much, millilitres")->type_name("ML");
  app->add_option("--units", flags->units, "Or: how many of the cup's unit")
      ->type_name("N");
  app->add_option(
         "--thinner", flags->thinner, "water, additive or medium, if another")
      ->check(CLI::IsMember({"water", "additive", "medium"}))
      ->type_name("KIND");
  return {
      app, [flags](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
        const auto id = FindCup(b, flags->cup);
        if (!id) return id.error();
        const CupDetails& cup = b.session().FindCup(*id)->details;
        if (flags->ml.has_value() == flags->units.has_value()) {
          return Wrong(
              "Say how much was added: millilitres, or a number of the "
              "cup's unit with --units.");
        }
        double ml = flags->ml.value_or(0.0);
        if (flags->units) {
          const auto& unit = cup.unit ? cup.unit : b.session().settings().unit;
          if (!unit) {
            return Wrong(
                "The cup has no unit; give it one with 'flowkin "
                "bench cup CUP --unit KIND'.");
          }
          ml = *flags->units * unit->ml;
        }
        const ThinnerKind thinner =
            flags->thinner.empty() ? cup.thinner : kThinners.at(flags->thinner);
        if (auto done = b.RecordAddition(*id, ml, thinner, flags->units, now);
            !done) {
          return done.error();
        }
        return BenchDone{b.session().LastNumber(), ""};
      }};
}

BenchAction SettingsAction(CLI::App& bench) {
  struct Flags {
    std::optional<double> band, smallest_step_ml, recheck_min;
    std::optional<int> base_films, cup_films;
    std::string test;
    UnitFlags unit;
  };
  auto flags = std::make_shared<Flags>();
  CLI::App* app = Action(bench, "settings", "Changes how this bench works");
  app->add_option("--band", flags->band, "Match band")->type_name("B");
  app->add_option("--smallest-step-ml",
                  flags->smallest_step_ml,
                  "The least that can be measured out")
      ->type_name("V");
  app->add_option("--test", flags->test, "The test that is usually filmed")
      ->check(CLI::IsMember({"stream", "level", "puddle"}))
      ->type_name("TEST");
  app->add_option("--base-films", flags->base_films, "Films of the base coat")
      ->type_name("N");
  app->add_option(
         "--cup-films", flags->cup_films, "Films of a cup after each addition")
      ->type_name("N");
  app->add_option("--recheck-min",
                  flags->recheck_min,
                  "Minutes after which a cup is filmed again")
      ->type_name("M");
  flags->unit.AddTo(*app);
  return {app, [flags](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
            BenchSettings settings = b.session().settings();
            const auto set = [](auto& field, const auto& given) {
              if (given) field = *given;
            };
            set(settings.band, flags->band);
            set(settings.smallest_step_ml, flags->smallest_step_ml);
            set(settings.recheck_min, flags->recheck_min);
            set(settings.base_films, flags->base_films);
            set(settings.cup_films, flags->cup_films);
            if (!flags->test.empty()) settings.test = kTests.at(flags->test);
            if (auto fits = flags->unit.ApplyTo(settings.unit); !fits) {
              return fits.error();
            }
            if (auto done = b.ChangeSettings(settings, now); !done) {
              return done.error();
            }
            return BenchDone{b.session().LastNumber(), ""};
          }};
}

/// An action that takes the number of a film.
BenchAction TestAction(CLI::App& bench,
                       const char* name,
                       const char* what,
                       Result<void> (Bench::*verb)(TestId, UtcTime)) {
  auto test = std::make_shared<TestId>(0);
  CLI::App* app = Action(bench, name, what);
  app->add_option("film", *test, "The film's number, as 'show' lists it")
      ->required()
      ->type_name("N");
  return {app,
          [test, verb](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
            if (auto done = (b.*verb)(*test, now); !done) return done.error();
            return BenchDone{b.session().LastNumber(), ""};
          }};
}

/// An action that takes nothing but the bench.
BenchAction PlainAction(CLI::App& bench,
                        const char* name,
                        const char* what,
                        Result<void> (Bench::*verb)(UtcTime)) {
  return {Action(bench, name, what),
          [verb](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
            if (auto done = (b.*verb)(now); !done) return done.error();
            return BenchDone{b.session().LastNumber(), ""};
          }};
}

std::vector<BenchAction> PlainActions(CLI::App& bench) {
  std::vector<BenchAction> actions;
  actions.push_back(
      {Action(bench, "show", "Shows every cup and what to do next"),
       [](Bench&, UtcTime, Terminal&) -> Result<BenchDone> {
         return BenchDone{};
       }});
  actions.push_back(CupAction(bench));
  actions.push_back(AddedAction(bench));
  actions.push_back(SettingsAction(bench));
  {
    auto cup = std::make_shared<std::string>();
    auto ml = std::make_shared<double>(0.0);
    CLI::App* app =
        Action(bench,
               "put-back",
               "Records unthinned mix that was put back into a cup");
    actions.push_back(Named(app, cup, [ml](Bench& b, CupId id, UtcTime now) {
      return b.PutReserveBack(id, *ml, now);
    }));
    app->add_option("ml", *ml, "How much, millilitres")
        ->required()
        ->type_name("ML");
  }
  actions.push_back(Named(
      Action(bench, "stirred", "Records that a cup was stirred"),
      std::make_shared<std::string>(),
      [](Bench& b, CupId id, UtcTime now) { return b.RecordStir(id, now); }));
  actions.push_back(
      Named(Action(bench, "learn", "Puts a matched cup into the brand book"),
            std::make_shared<std::string>(),
            [](Bench& b, CupId id, UtcTime now) -> Result<void> {
              auto learned = b.Learn(id, now);
              if (!learned) return learned.error();
              return {};
            }));
  actions.push_back(TestAction(bench,
                               "set-aside",
                               "Leaves a film out of the count",
                               &Bench::SetAsideTest));
  actions.push_back(
      TestAction(bench, "take-back", "Counts it again", &Bench::TakeBackTest));
  {
    auto room_c = std::make_shared<double>(0.0);
    CLI::App* app = Action(bench, "room", "Records the room's temperature");
    app->add_option("degrees", *room_c, "Degrees Celsius")
        ->required()
        ->type_name("C");
    actions.push_back(
        {app, [room_c](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
           if (auto done = b.SetRoomTemperature(*room_c, now); !done) {
             return done.error();
           }
           return BenchDone{b.session().LastNumber(), ""};
         }});
  }
  {
    struct Flags {
      std::string text, cup;
    };
    auto flags = std::make_shared<Flags>();
    CLI::App* app = Action(bench, "note", "Notes something");
    app->add_option("text", flags->text, "What to note")->required();
    app->add_option("--cup", flags->cup, "The cup it is about");
    actions.push_back(
        {app, [flags](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
           std::optional<CupId> cup;
           if (!flags->cup.empty()) {
             const auto id = FindCup(b, flags->cup);
             if (!id) return id.error();
             cup = *id;
           }
           if (auto fits = CheckText(flags->text); !fits) return fits.error();
           if (auto done = b.TakeNote(cup, flags->text, now); !done) {
             return done.error();
           }
           return BenchDone{b.session().LastNumber(), ""};
         }});
  }
  actions.push_back(
      PlainAction(bench, "undo", "Takes the last action back", &Bench::Undo));
  actions.push_back(
      PlainAction(bench, "redo", "Puts it in force again", &Bench::Redo));
  actions.push_back(PlainAction(bench,
                                "close",
                                "Ends the session; its films may go",
                                &Bench::CloseSession));
  actions.push_back(PlainAction(
      bench, "reopen", "Goes on with a closed session", &Bench::ReopenSession));
  return actions;
}

Result<Bench> OpenBench(const BenchFlags& flags) {
  auto bench = Bench::Open(flags.store);
  if (!bench) return bench;
  if (flags.session) {
    if (auto opened = bench->OpenSession(*flags.session); !opened) {
      return opened.error();
    }
    return bench;
  }
  const auto any = bench->OpenLastSession();
  if (!any) return any.error();
  if (!*any) {
    return Wrong(
        "There is no open session; begin one with 'flowkin bench new' or name "
        "one with --session.");
  }
  return bench;
}

ExitStatus Answer(const Bench& bench,
                  const BenchDone& done,
                  const BenchFlags& flags,
                  UtcTime now,
                  Terminal& terminal) {
  const auto board = bench.State(now);
  if (!board) return Fail(terminal, board.error());
  if (flags.json) {
    Json document;
    document["outcome"] = done.refused.empty() ? "done" : "refused";
    document["reason"] =
        done.refused.empty() ? Json(nullptr) : Json(done.refused);
    document["entry"] = done.entry != 0 ? Json(done.entry) : Json(nullptr);
    document.update(BoardDocument(bench, *board));
    PrintDocument(terminal, document);
  } else {
    PrintBoard(terminal.out, bench, *board);
  }
  if (!done.refused.empty()) {
    return Fail(terminal, ExitStatus::kRefused, done.refused);
  }
  return ExitStatus::kDone;
}

ExitStatus RunNew(const std::string& name,
                  const BenchFlags& flags,
                  UtcTime now,
                  Terminal& terminal) {
  auto bench = Bench::Open(flags.store);
  if (!bench) return Fail(terminal, bench.error());
  if (auto fits = CheckName("session", name); !fits) {
    return Fail(terminal, fits.error());
  }
  const std::string called = name.empty() ? FormatUtc(now).substr(0, 10) : name;
  if (auto id = bench->NewSession(called, now); !id) {
    return Fail(terminal, id.error());
  }
  return Answer(*bench, {}, flags, now, terminal);
}

ExitStatus RunList(const BenchFlags& flags, Terminal& terminal) {
  const auto bench = Bench::Open(flags.store);
  if (!bench) return Fail(terminal, bench.error());
  const auto lines = bench->Sessions();
  if (!lines) return Fail(terminal, lines.error());
  if (flags.json) {
    PrintDocument(terminal, SessionsDocument(*lines));
  } else {
    PrintSessions(terminal.out, *lines);
  }
  return ExitStatus::kDone;
}

ExitStatus RunHistory(const std::string& cup,
                      const BenchFlags& flags,
                      UtcTime now,
                      Terminal& terminal) {
  const auto bench = OpenBench(flags);
  if (!bench) return Fail(terminal, bench.error());
  const auto id = FindCup(*bench, cup);
  if (!id) return Fail(terminal, id.error());
  const auto board = bench->State(now);
  if (!board) return Fail(terminal, board.error());
  for (const BoardCup& card : board->cups) {
    if (card.id != *id) continue;
    if (!card.request) break;
    PrintDocument(terminal, HistoryDocument(card));
    return ExitStatus::kDone;
  }
  return Fail(terminal,
              ExitStatus::kRefused,
              "This cup has no ratio to the base coat or no volume yet; film "
              "both and say how much is in the cup.");
}

}  // namespace

Result<CupId> FindCup(const Bench& bench, const std::string& name) {
  std::optional<CupId> found;
  for (const BenchCup& cup : bench.session().cups()) {
    if (cup.details.label == name) {
      if (found) {
        return Wrong("Two cups are called '" + name +
                     "'; say which by its number.");
      }
      found = cup.id;
    }
  }
  if (found) return *found;
  for (const BenchCup& cup : bench.session().cups()) {
    if (std::to_string(cup.id) == name) return cup.id;
  }
  return Wrong("There is no cup called '" + name +
               "' on the bench; 'flowkin bench show' lists them.");
}

Command MakeBenchCommand(CLI::App& parent, const AddBenchActions& more) {
  auto flags = std::make_shared<BenchFlags>();
  CLI::App* bench = parent.add_subcommand(
      "bench", "Keeps a day at the bench: cups, films, additions, next steps");
  bench->require_subcommand(1);

  auto actions = std::make_shared<std::vector<BenchAction>>();
  auto name = std::make_shared<std::string>();
  CLI::App* begin = Action(*bench, "new", "Begins a session");
  begin->add_option("name", *name, "What to call it; without it, the date");
  CLI::App* list = Action(*bench, "list", "Lists the sessions");
  auto cup = std::make_shared<std::string>();
  CLI::App* history = Action(
      *bench, "history", "Prints a cup's history as 'flowkin dose' reads it");
  history->add_option("cup", *cup, "The cup, as you call it")
      ->required()
      ->type_name("CUP");
  *actions = PlainActions(*bench);
  if (more) more(*bench, *actions);
  for (CLI::App* app : bench->get_subcommands({})) {
    AddStoreOption(*app, flags->store);
    app->add_option("--at",
                    flags->at_utc,
                    "When it happened, universal time, if not now")
        ->type_name("TIME");
    if (app != history) {
      app->add_flag("--json", flags->json, "Print one JSON document");
    }
    if (app == begin || app == list) continue;
    app->add_option("--session",
                    flags->session,
                    "Session to work on; without it, the last one that is "
                    "not closed")
        ->type_name("N");
  }
  return {bench, [=](Terminal& terminal) {
            const auto now = TimeOf(flags->at_utc);
            if (!now) return Fail(terminal, now.error());
            if (begin->parsed()) return RunNew(*name, *flags, *now, terminal);
            if (list->parsed()) return RunList(*flags, terminal);
            if (history->parsed()) {
              return RunHistory(*cup, *flags, *now, terminal);
            }
            auto opened = OpenBench(*flags);
            if (!opened) return Fail(terminal, opened.error());
            for (const BenchAction& action : *actions) {
              if (!action.app->parsed()) continue;
              const auto done = action.run(*opened, *now, terminal);
              if (!done) return Fail(terminal, done.error());
              return Answer(*opened, *done, *flags, *now, terminal);
            }
            return ExitStatus::kFailed;
          }};
}

Command AddBenchWithoutFilmsCommand(CLI::App& parent) {
  return MakeBenchCommand(parent, nullptr);
}

}  // namespace flowkin
