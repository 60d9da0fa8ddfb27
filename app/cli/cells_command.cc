#include <CLI/CLI.hpp>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <ostream>
#include <string>
#include <utility>

#include "app/cli/bench_command.h"
#include "app/cli/book_options.h"
#include "app/cli/clock.h"
#include "app/cli/command.h"
#include "app/usecases/amounts.h"
#include "app/usecases/bench.h"
#include "app/usecases/view_cells.h"

namespace flowkin {
namespace {

struct CellsArguments {
  bool json = false;
  CellPhoto photo, other;
  std::string part, other_part, marks, picture;
  // To write it into a session's cell test.
  std::optional<SessionId> session;
  std::string store, cup;
  std::string seen = CellsSeenName(CellsSeen::kLacing);
  std::optional<double> after_s;
};

Result<std::optional<PicturePart>> ReadPart(const std::string& text) {
  if (text.empty()) return std::optional<PicturePart>();
  PicturePart part;
  int end = 0;
  if (std::sscanf(text.c_str(),
                  "%d,%d,%d,%d%n",
                  &part.x,
                  &part.y,
                  &part.width,
                  &part.height,
                  &end) != 4 ||
      static_cast<std::size_t>(end) != text.size()) {
    return Error{ErrorCode::kInvalidArgument,
                 "'" + text + "' is no part; write it like 100,50,800,600."};
  }
  return std::optional<PicturePart>(part);
}

Json ViewDocument(const std::string& path, const CellView& view) {
  Json document;
  document["photo"] = path;
  document["outcome"] = view.measured ? "measured" : "refused";
  document["reason"] = view.measured ? Json(nullptr) : Json(view.reason);
  document["cells"] = view.cells.size();
  document["area_cm2"] = JsonNumber(view.area_cm2);
  if (view.measured) {
    document["cells_per_cm2"] =
        IntervalDocument(std::exp(view.ln_per_cm2.value), view.per_cm2);
    document["median_diameter_mm"] =
        IntervalDocument(view.median_mm, view.median_mm_interval);
    document["tenth_smaller_mm"] = JsonNumber(view.lower_mm, 4);
    document["tenth_larger_mm"] = JsonNumber(view.upper_mm, 4);
    document["share_covered"] = JsonNumber(view.share_covered, 4);
  }
  return document;
}

const char* VerdictName(CellVerdict verdict) {
  switch (verdict) {
    case CellVerdict::kMore:
      return "more";
    case CellVerdict::kFewer:
      return "fewer";
    case CellVerdict::kAlike:
      return "alike";
    case CellVerdict::kUndecided:
      return "undecided";
  }
  return "";
}

void Print(std::ostream& out, const CellView& view) {
  out << view.cells.size() << " whole cells on " << Short(view.area_cm2)
      << " cm2.\n"
      << Short(std::exp(view.ln_per_cm2.value)) << " cells on a square "
      << "centimetre (" << Short(view.per_cm2.low) << " to "
      << Short(view.per_cm2.high) << ").\n"
      << "Half of them are larger than " << Short(view.median_mm) << " mm ("
      << Short(view.median_mm_interval.low) << " to "
      << Short(view.median_mm_interval.high) << "); eight of ten lie between "
      << Short(view.lower_mm) << " and " << Short(view.upper_mm) << " mm.\n";
}

void Print(std::ostream& out, const CellComparison& comparison) {
  switch (comparison.verdict) {
    case CellVerdict::kMore:
      out << "The second has more cells: ";
      break;
    case CellVerdict::kFewer:
      out << "The second has fewer cells: ";
      break;
    case CellVerdict::kAlike:
      out << "They are alike: ";
      break;
    case CellVerdict::kUndecided:
      out << "These photos cannot tell which has more: ";
      break;
  }
  out << Short(comparison.density_ratio) << " times as many ("
      << Short(comparison.density_interval.low) << " to "
      << Short(comparison.density_interval.high) << "), "
      << Short(comparison.size_ratio) << " times as large ("
      << Short(comparison.size_interval.low) << " to "
      << Short(comparison.size_interval.high) << ").\n";
}

Result<void> KeepCells(const CellsArguments& arguments,
                       const CellPicture& picture,
                       const CellView& view) {
  CellsTested test;
  test.seen = *CellsSeenFromName(arguments.seen);
  test.after_s = arguments.after_s;
  // The journal's pages show photos, not clips.
  const std::string& photo =
      picture.at_s ? arguments.picture : arguments.photo.path;
  if (!photo.empty()) test.photo = std::filesystem::absolute(photo).string();
  test.counted = CountedOf(view);
  Result<Bench> bench = Bench::Open(StorePath(arguments.store));
  if (!bench) return bench.error();
  if (auto opened = bench->OpenSession(*arguments.session); !opened) {
    return opened.error();
  }
  if (!arguments.cup.empty()) {
    const Result<CupId> cup = FindCup(*bench, arguments.cup);
    if (!cup) return cup.error();
    test.cup = *cup;
  }
  return bench->RecordCells(std::move(test), Now());
}

ExitStatus RunCells(const CellsArguments& given, Terminal& terminal) {
  CellsArguments arguments = given;
  for (auto [photo, text] :
       {std::pair(&arguments.photo, &arguments.part),
        std::pair(&arguments.other, &arguments.other_part)}) {
    const auto part = ReadPart(*text);
    if (!part) return Fail(terminal, part.error());
    photo->part = *part;
  }
  const Result<CellPicture> picture = ReadCellPicture(arguments.photo.path);
  if (!picture) return Fail(terminal, picture.error());
  const Result<CellView> view = ViewPicture(*picture, arguments.photo);
  if (!view) return Fail(terminal, view.error());
  Json document = ViewDocument(arguments.photo.path, *view);
  document["at_s"] = JsonNumber(picture->at_s);
  std::string refused = view->measured ? "" : view->reason;
  std::optional<CellView> second;
  if (!arguments.other.path.empty()) {
    if (!(arguments.other.mm_per_px > 0.0)) {
      arguments.other.mm_per_px = arguments.photo.mm_per_px;
    }
    arguments.other.rel_sd_scale = arguments.photo.rel_sd_scale;
    Result<CellView> other = ViewPhoto(arguments.other);
    if (!other) return Fail(terminal, other.error());
    document["against"] = ViewDocument(arguments.other.path, *other);
    if (!other->measured && refused.empty()) refused = other->reason;
    second = *std::move(other);
  }
  const double mm_per_px = arguments.photo.mm_per_px;
  for (const auto& [out, cells] :
       {std::pair(arguments.picture, std::vector<Cell>()),
        std::pair(arguments.marks, view->cells)}) {
    if (out.empty()) continue;
    if (const auto drawn = DrawCells(*picture, mm_per_px, cells, out); !drawn) {
      return Fail(terminal, drawn.error());
    }
  }
  std::optional<CellComparison> comparison;
  if (second && refused.empty()) {
    comparison = CompareCells(*view, *second);
    Json compared;
    compared["verdict"] = VerdictName(comparison->verdict);
    compared["density_ratio"] = IntervalDocument(comparison->density_ratio,
                                                 comparison->density_interval);
    compared["size_ratio"] =
        IntervalDocument(comparison->size_ratio, comparison->size_interval);
    document["comparison"] = std::move(compared);
  }
  if (arguments.session && refused.empty()) {
    if (const auto kept = KeepCells(arguments, *picture, *view); !kept) {
      return Fail(terminal, kept.error());
    }
  }
  if (arguments.json) {
    PrintDocument(terminal, document);
  } else if (refused.empty()) {
    if (picture->at_s) {
      terminal.out << "The picture at " << Short(*picture->at_s)
                   << " s of the clip was read.\n";
    }
    Print(terminal.out, *view);
    if (second) Print(terminal.out, *second);
    if (comparison) Print(terminal.out, *comparison);
  }
  if (!refused.empty()) return Fail(terminal, ExitStatus::kRefused, refused);
  return ExitStatus::kDone;
}

}  // namespace

Command AddCellsCommand(CLI::App& parent) {
  auto arguments = std::make_shared<CellsArguments>();
  CLI::App* app = parent.add_subcommand(
      "cells", "Counts and measures the cells on a photo or in a clip");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  app->add_option("PHOTO",
                  arguments->photo.path,
                  "Photo or short clip, from straight above")
      ->required();
  app->add_option("--mm-per-px",
                  arguments->photo.mm_per_px,
                  "Size of a pixel, from a ruler on the photo")
      ->required();
  app->add_option("--scale-rel-sd",
                  arguments->photo.rel_sd_scale,
                  "How well that is known, 0.02 is 2 %");
  app->add_option("--part", arguments->part, "Only x,y,width,height of it");
  app->add_option(
      "--against", arguments->other.path, "A second photo to compare with");
  app->add_option("--against-mm-per-px",
                  arguments->other.mm_per_px,
                  "Its scale; without it the same");
  app->add_option("--against-part", arguments->other_part, "Its part");
  app->add_option(
      "--marks", arguments->marks, "Write the photo with the cells outlined");
  app->add_option("--picture",
                  arguments->picture,
                  "Write the picture that was read, for the journal of a clip");
  CLI::Option* session =
      app->add_option("--session",
                      arguments->session,
                      "Write it into this session as a cell test");
  AddStoreOption(*app, arguments->store);
  app->add_option("--cup", arguments->cup, "Cup of the activator")
      ->needs(session);
  app->add_option("--seen", arguments->seen, "lacing, none, blob or drowned")
      ->needs(session)
      ->check(CLI::IsMember({"lacing", "none", "blob", "drowned"}));
  app->add_option(
         "--after-s", arguments->after_s, "Seconds from drop to verdict")
      ->needs(session);
  return {app, [arguments](Terminal& terminal) {
            return RunCells(*arguments, terminal);
          }};
}

}  // namespace flowkin
