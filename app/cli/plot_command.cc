#include <CLI/CLI.hpp>
#include <memory>
#include <string>
#include <utility>

#include "app/cli/book_options.h"
#include "app/cli/command.h"
#include "app/cli/curve_plot.h"
#include "app/usecases/write_file.h"

namespace flowkin {
namespace {

Result<void> Plot(const std::string& store,
                  std::string brand,
                  const std::string& file) {
  const Result<CalibrationStore> book = OpenBook(store, /*write=*/false);
  if (!book) return book.error();
  if (brand.empty()) {
    const Result<std::vector<BrandEntry>> brands = book->Brands();
    if (!brands) return brands.error();
    if (brands->size() != 1) {
      return Error{ErrorCode::kInvalidArgument,
                   "A plot shows one brand; name it with --brand."};
    }
    brand = brands->front().brand;
  }
  const Result<CurvePlot> plot = PlotBrand(*book, brand);
  if (!plot) return plot.error();
  const Result<std::string> bytes = DrawCurvePlot(*plot, brand, file);
  if (!bytes) return bytes.error();
  return WriteWhole(file, *bytes);
}

}  // namespace

Command AddBrandsCommand(CLI::App& parent) {
  Command list = AddListBrandsCommand(parent);
  auto file = std::make_shared<std::string>();
  CLI::App* app = list.app;
  app->add_option(
      "--plot", *file, "Draw the brand's curve with its points: .svg or .png");
  return {app, [list, file](Terminal& terminal) {
            if (!file->empty()) {
              const auto given = [&](const char* name) {
                return list.app->get_option(name)->as<std::string>();
              };
              if (const Result<void> done =
                      Plot(given("--store"), given("--brand"), *file);
                  !done) {
                return Fail(terminal, done.error());
              }
            }
            return list.run(terminal);
          }};
}

}  // namespace flowkin
