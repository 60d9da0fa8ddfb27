#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>
#include <string>

#include "app/cli/book_options.h"
#include "app/cli/command.h"

namespace flowkin {
namespace {

struct BrandsArguments {
  bool json = false;
  std::string store, brand;
};

ExitStatus RunList(const BrandsArguments& arguments, Terminal& terminal) {
  const Result<CalibrationStore> book =
      OpenBook(arguments.store, /*write=*/false);
  if (!book) return Fail(terminal, book.error());
  const Result<std::vector<BrandReport>> brands =
      ListBrands(*book, arguments.brand);
  if (!brands) return Fail(terminal, brands.error());
  const Result<std::vector<LiquidReport>> liquids = ListLiquids(*book);
  if (!liquids) return Fail(terminal, liquids.error());
  if (arguments.json) {
    Json document;
    document["outcome"] = "listed";
    document["brands"] = Json::array();
    for (const BrandReport& report : *brands) {
      Json entry;
      entry["brand"] = report.entry.brand;
      entry["colours"] = report.entry.colours;
      entry["cups"] = report.entry.cups;
      entry["tests"] = report.entry.tests;
      entry["curve"] =
          report.curve ? CurveDocument(*report.curve) : Json(nullptr);
      document["brands"].push_back(std::move(entry));
    }
    document["liquids"] = Json::array();
    for (const LiquidReport& liquid : *liquids) {
      document["liquids"].push_back(LiquidDocument(liquid));
    }
    PrintDocument(terminal, document);
    return ExitStatus::kDone;
  }
  if (brands->empty()) {
    terminal.out << "The book is empty; 'flowkin learn' puts a cup into it.\n";
  }
  for (const BrandReport& report : *brands) {
    terminal.out << report.entry.brand << ": ";
    if (report.curve) terminal.out << CurveSentence(*report.curve) << "; ";
    terminal.out << report.entry.cups << " cup(s), " << report.entry.tests
                 << " tests";
    for (std::size_t i = 0; i < report.entry.colours.size(); ++i) {
      terminal.out << (i == 0 ? "; colours: " : ", ")
                   << report.entry.colours[i];
    }
    terminal.out << ".\n";
  }
  for (const LiquidReport& liquid : *liquids) {
    terminal.out << LiquidSentence(liquid) << '\n';
  }
  return ExitStatus::kDone;
}

}  // namespace

Command AddListBrandsCommand(CLI::App& parent) {
  auto arguments = std::make_shared<BrandsArguments>();
  CLI::App* app = parent.add_subcommand(
      "brands", "Lists the brands with their curves, or plots one");
  app->add_flag("--json", arguments->json, "Print one JSON document");
  AddStoreOption(*app, arguments->store);
  app->add_option("--brand", arguments->brand, "Only this brand");
  return {app, [arguments](Terminal& terminal) {
            return RunList(*arguments, terminal);
          }};
}

}  // namespace flowkin
