#include <CLI/CLI.hpp>
#include <filesystem>
#include <system_error>
#include <utility>

#include "app/cli/bench_command.h"
#include "app/cli/cup_document.h"
#include "app/cli/measure_options.h"
#include "app/usecases/cup_of_label.h"
#include "app/usecases/filmed_test.h"
#include "app/usecases/label_document.h"
#include "app/usecases/labels_on_photo.h"
#include "app/usecases/measure_clips.h"

namespace flowkin {
namespace {

/// The bench is opened again from anywhere.
std::string WholePath(const std::string& clip) {
  std::error_code failed;
  const std::filesystem::path whole = std::filesystem::absolute(clip, failed);
  return failed ? clip : whole.lexically_normal().string();
}

BenchAction TestAction(CLI::App& bench) {
  struct Flags {
    std::string cup;
    std::vector<std::string> clips;
    ClipFlags test;
  };
  auto flags = std::make_shared<Flags>();
  CLI::App* app =
      bench.add_subcommand("test", "Measures films of a cup and records them");
  app->add_option("cup", flags->cup, "The cup, as you call it")
      ->required()
      ->type_name("CUP");
  app->add_option("clips", flags->clips, "Films of its test")
      ->required()
      ->type_name("CLIP...");
  flags->test.AddTo(*app);
  return {
      app,
      [flags](Bench& b, UtcTime now, Terminal& terminal) -> Result<BenchDone> {
        const auto id = FindCup(b, flags->cup);
        if (!id) return id.error();
        std::vector<std::string> clips;
        for (const std::string& clip : flags->clips) {
          clips.push_back(WholePath(clip));
        }
        std::vector<std::string> all = clips;
        for (const BenchCup& cup : b.session().cups()) {
          for (const BenchTest& test : cup.tests) all.push_back(test.film.film);
        }
        if (auto distinct = CheckDistinct(all); !distinct) {
          return distinct.error();
        }
        const MeasureClipOptions options = flags->test.ToOptions();
        auto measured = [&] {
          ProgressBar bar(terminal,
                          "measuring " + std::to_string(clips.size()) +
                              (clips.size() == 1 ? " film" : " films"));
          return MeasureClips(
              clips, options, 2, [&bar](double share) { bar.Show(share); });
        }();
        if (!measured) return measured.error();
        BenchDone done;
        bool any = false;
        for (const MeasuredClip& clip : *measured) {
          const auto test = b.RecordTest(*id, ToFilmedTest(clip, options), now);
          if (!test) return test.error();
          done.entry = *test;
          if (clip.measurement.outcome == Outcome::kMeasured) {
            any = true;
          } else {
            Warn(terminal, clip.clip + ": " + clip.measurement.reason);
          }
        }
        if (!any) done.refused = measured->front().measurement.reason;
        return done;
      }};
}

BenchAction CorrectAction(CLI::App& bench) {
  struct Flags {
    TestId test = 0;
    std::optional<double> lift_s, break_s, laid_s, start_s;
  };
  auto flags = std::make_shared<Flags>();
  CLI::App* app = bench.add_subcommand(
      "correct", "Sets an event of a film by hand and measures it again");
  app->add_option("film", flags->test, "The film's number, as 'show' lists it")
      ->required()
      ->type_name("N");
  const char* when = "Seconds of real time since the first frame";
  app->add_option("--lift-s", flags->lift_s, when)->type_name("S");
  app->add_option("--break-s", flags->break_s, when)->type_name("S");
  app->add_option("--laid-s", flags->laid_s, when)->type_name("S");
  app->add_option("--start-s", flags->start_s, when)->type_name("S");
  return {app, [flags](Bench& b, UtcTime now, Terminal&) -> Result<BenchDone> {
            const std::pair<TestEvent, std::optional<double>> given[] = {
                {TestEvent::kLift, flags->lift_s},
                {TestEvent::kBreak, flags->break_s},
                {TestEvent::kLaid, flags->laid_s},
                {TestEvent::kStart, flags->start_s}};
            BenchDone done;
            for (const auto& [event, at_s] : given) {
              if (!at_s) continue;
              const EventCorrected wanted{flags->test, event, *at_s, {}};
              if (auto fits = b.session().Check(wanted); !fits) {
                return fits.error();
              }
              const BenchTest& test = *b.session().FindTest(flags->test);
              const auto measured =
                  MeasureClip(CorrectionOptions(test, event, *at_s))
                      .Run(test.film.film);
              if (!measured) return measured.error();
              if (auto corrected = b.CorrectEvent(
                      flags->test, event, *at_s, measured->measurement, now);
                  !corrected) {
                return corrected.error();
              }
              done.entry = b.session().LastNumber();
              done.refused = measured->measurement.outcome == Outcome::kRefused
                                 ? measured->measurement.reason
                                 : "";
            }
            if (done.entry == 0) {
              return Error{
                  ErrorCode::kInvalidArgument,
                  "Say which event to set: --lift-s, --break-s, --laid-s "
                  "or --start-s."};
            }
            return done;
          }};
}

Result<LabelsOnPhoto> LabelsGiven(const std::string& photo,
                                  const std::string& file,
                                  std::istream& in) {
  if (!photo.empty()) return ReadLabelsOnPhoto(photo);
  auto labels = ReadLabels(file == "-" ? "" : file, in);
  if (!labels) return labels.error();
  if (labels->empty()) {
    return Error{ErrorCode::kInvalidArgument, "There is no label to read."};
  }
  return LabelsOnPhoto{*std::move(labels), {}};
}

BenchAction LabelAction(CLI::App& bench) {
  auto file = std::make_shared<std::string>();
  auto photo = std::make_shared<std::string>();
  CLI::App* app = bench.add_subcommand(
      "label", "Puts a cup on the bench from the code of its label");
  CLI::Option* scanned =
      app->add_option("--file",
                      *file,
                      "What the code gave when scanned; without it, standard "
                      "input")
          ->type_name("FILE");
  app->add_option(
         "--photo", *photo, "A photo of the label; of several, a cup each")
      ->type_name("PHOTO")
      ->excludes(scanned);
  return {app, [=](Bench& b, UtcTime now, Terminal& t) -> Result<BenchDone> {
            const auto given = LabelsGiven(*photo, *file, t.in);
            if (!given) return given.error();
            BenchDone done;
            done.refused = given->refused;
            if (!done.refused.empty()) return done;
            for (const BatchLabel& label : given->labels) {
              for (const std::string& name :
                   {label.name, label.brand, label.colour}) {
                if (auto fits = CheckName("label", name); !fits) {
                  return fits.error();
                }
              }
            }
            const auto last = AddLabelledCups(b, given->labels, now);
            if (!last) return last.error();
            done.entry = *last;
            return done;
          }};
}

}  // namespace

Command AddBenchCommand(CLI::App& parent) {
  return MakeBenchCommand(
      parent, [](CLI::App& bench, std::vector<BenchAction>& actions) {
        actions.push_back(TestAction(bench));
        actions.push_back(CorrectAction(bench));
        actions.push_back(LabelAction(bench));
      });
}

}  // namespace flowkin
