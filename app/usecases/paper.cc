#include "app/usecases/paper.h"

#include <cairo-pdf.h>
#include <pango/pangocairo.h>
#include <qrencode.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <memory>
#include <utility>

#include "app/usecases/cautions.h"
#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr double kPointsPerMm = 72.0 / 25.4;
constexpr double kPageWidth_mm = 210.0;  // ISO 216, A4
constexpr double kPageHeight_mm = 297.0;
constexpr double kMargin_mm = 15.0;
constexpr double kWidth_mm = kPageWidth_mm - 2.0 * kMargin_mm;

template <auto kFree>
struct Freed {
  template <typename T>
  void operator()(T* thing) const {
    kFree(thing);
  }
};
using Surface = std::unique_ptr<cairo_surface_t, Freed<cairo_surface_destroy>>;
using Context = std::unique_ptr<cairo_t, Freed<cairo_destroy>>;
using Layout = std::unique_ptr<PangoLayout, Freed<g_object_unref>>;
using Font =
    std::unique_ptr<PangoFontDescription, Freed<pango_font_description_free>>;
using Code = std::unique_ptr<QRcode, Freed<QRcode_free>>;

cairo_status_t Keep(void* bytes,
                    const unsigned char* data,
                    unsigned int length) {
  static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data),
                                           length);
  return CAIRO_STATUS_SUCCESS;
}

enum class Align { kLeft, kRight };

struct Column {
  std::string title;
  double width_mm = 20.0;
  Align align = Align::kLeft;
};

/// Pages that fill from the top; all lengths in mm.
class Pages {
 public:
  explicit Pages(const std::string& title) {
    surface_.reset(
        cairo_pdf_surface_create_for_stream(Keep,
                                            &bytes_,
                                            kPageWidth_mm * kPointsPerMm,
                                            kPageHeight_mm * kPointsPerMm));
    cairo_pdf_surface_set_metadata(
        surface_.get(), CAIRO_PDF_METADATA_TITLE, title.c_str());
    context_.reset(cairo_create(surface_.get()));
    cairo_scale(context_.get(), kPointsPerMm, kPointsPerMm);
    cairo_set_line_width(context_.get(), 0.2);
  }

  cairo_t* cr() const { return context_.get(); }
  double y() const { return y_; }
  void Skip(double mm) { y_ += mm; }

  void NewPage() {
    cairo_show_page(cr());
    y_ = kMargin_mm;
  }
  /// A new page where `mm` do not fit any more.
  void Need(double mm) {
    if (y_ + mm > kPageHeight_mm - kMargin_mm) NewPage();
  }

  /// Draws `text` wrapped to `width_mm`; returns its height. Font size in pt.
  double Put(const std::string& text,
             double x_mm,
             double y_mm,
             double width_mm,
             double size_pt,
             bool bold = false,
             Align align = Align::kLeft,
             bool draw = true) const {
    // Pango lays out in points; the page is scaled to mm.
    cairo_save(cr());
    cairo_translate(cr(), x_mm, y_mm);
    cairo_scale(cr(), 1.0 / kPointsPerMm, 1.0 / kPointsPerMm);
    const Layout layout(pango_cairo_create_layout(cr()));
    const Font font(pango_font_description_from_string("Sans"));
    pango_font_description_set_absolute_size(font.get(), size_pt * PANGO_SCALE);
    if (bold) {
      pango_font_description_set_weight(font.get(), PANGO_WEIGHT_BOLD);
    }
    pango_layout_set_font_description(layout.get(), font.get());
    pango_layout_set_width(
        layout.get(), static_cast<int>(width_mm * kPointsPerMm * PANGO_SCALE));
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    pango_layout_set_alignment(
        layout.get(),
        align == Align::kLeft ? PANGO_ALIGN_LEFT : PANGO_ALIGN_RIGHT);
    pango_layout_set_text(layout.get(), text.c_str(), -1);
    int width = 0;
    int height = 0;
    pango_layout_get_size(layout.get(), &width, &height);
    if (draw) pango_cairo_show_layout(cr(), layout.get());
    cairo_restore(cr());
    return height / (PANGO_SCALE * kPointsPerMm);
  }

  void Heading(const std::string& text, double size_pt = 13.0) {
    Need(35.0);  // no heading without what it heads
    y_ += 3.0;
    y_ += Put(text, kMargin_mm, y_, kWidth_mm, size_pt, true) + 1.5;
  }

  void Text(const std::string& text, double size_pt = 10.0) {
    const double height = Put(
        text, kMargin_mm, y_, kWidth_mm, size_pt, false, Align::kLeft, false);
    Need(height);
    y_ += Put(text, kMargin_mm, y_, kWidth_mm, size_pt) + 1.0;
  }

  void Line(double x1, double y1, double x2, double y2) const {
    cairo_move_to(cr(), x1, y1);
    cairo_line_to(cr(), x2, y2);
    cairo_stroke(cr());
  }

  void Table(const std::vector<Column>& columns,
             const std::vector<std::vector<std::string>>& rows,
             double size_pt = 9.5,
             double row_mm = 6.0) {
    std::vector<std::string> titles;
    for (const Column& column : columns) titles.push_back(column.title);
    Need(3.0 * row_mm);
    Row(columns, titles, size_pt, row_mm, true);
    for (const std::vector<std::string>& row : rows) {
      FLOWKIN_CHECK(row.size() == columns.size());
      const double height = RowHeight(columns, row, size_pt, row_mm, false);
      if (y_ + height > kPageHeight_mm - kMargin_mm) {
        NewPage();
        Row(columns, titles, size_pt, row_mm, true);
      }
      Row(columns, row, size_pt, row_mm, false);
    }
    y_ += 2.0;
  }

  Result<std::string> Finish() {
    context_.reset();
    cairo_surface_finish(surface_.get());
    if (cairo_surface_status(surface_.get()) != CAIRO_STATUS_SUCCESS) {
      return Error{ErrorCode::kInternal,
                   "The pages could not be drawn; there may not be enough "
                   "memory."};
    }
    surface_.reset();
    return std::move(bytes_);
  }

 private:
  double RowHeight(const std::vector<Column>& columns,
                   const std::vector<std::string>& row,
                   double size_pt,
                   double row_mm,
                   bool bold) const {
    double height = row_mm;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      height = std::max(height,
                        1.6 + Put(row[i],
                                  0.0,
                                  0.0,
                                  columns[i].width_mm - 2.0,
                                  size_pt,
                                  bold,
                                  columns[i].align,
                                  false));
    }
    return height;
  }

  void Row(const std::vector<Column>& columns,
           const std::vector<std::string>& row,
           double size_pt,
           double row_mm,
           bool bold) {
    const double height = RowHeight(columns, row, size_pt, row_mm, bold);
    double x = kMargin_mm;
    if (bold) {
      cairo_set_source_rgb(cr(), 0.90, 0.90, 0.90);
      double width = 0.0;
      for (const Column& column : columns) width += column.width_mm;
      cairo_rectangle(cr(), x, y_, width, height);
      cairo_fill(cr());
      cairo_set_source_rgb(cr(), 0.0, 0.0, 0.0);
    }
    for (std::size_t i = 0; i < columns.size(); ++i) {
      Put(row[i],
          x + 1.0,
          y_ + 0.8,
          columns[i].width_mm - 2.0,
          size_pt,
          bold,
          columns[i].align);
      cairo_rectangle(cr(), x, y_, columns[i].width_mm, height);
      cairo_stroke(cr());
      x += columns[i].width_mm;
    }
    y_ += height;
  }

  std::string bytes_;
  Surface surface_;
  Context context_;
  double y_ = kMargin_mm;
};

std::string RatioText(double value, double low, double high) {
  return Short(value) + " (" + Short(low) + " to " + Short(high) + ")";
}

void DrawCode(const Pages& pages,
              const CodeMatrix& code,
              double x_mm,
              double y_mm,
              double side_mm) {
  // ISO/IEC 18004: four light modules around it.
  constexpr int kQuiet = 4;
  const double module = side_mm / (code.size + 2 * kQuiet);
  for (int row = 0; row < code.size; ++row) {
    for (int column = 0; column < code.size; ++column) {
      if (!code.dark[static_cast<std::size_t>(row * code.size + column)]) {
        continue;
      }
      cairo_rectangle(pages.cr(),
                      x_mm + (kQuiet + column) * module,
                      y_mm + (kQuiet + row) * module,
                      module,
                      module);
    }
  }
  // One path, so that no hair lines show between modules.
  cairo_fill(pages.cr());
}

Result<void> DrawLabel(const Pages& pages,
                       const BatchLabel& label,
                       double x,
                       double y,
                       double width,
                       double height) {
  constexpr double kCode_mm = 34.0;
  const double text_width = width - kCode_mm - 5.0;
  cairo_rectangle(pages.cr(), x, y, width, height);
  cairo_stroke(pages.cr());
  // The corners of the type shrink until the words fit the jar.
  double name_pt = 15.0;
  while (name_pt > 8.0 &&
         pages.Put(
             label.name, x, y, text_width, name_pt, true, Align::kLeft, false) >
             13.0) {
    name_pt -= 0.5;
  }
  double at = y + 2.0;
  at += pages.Put(label.name, x + 3.0, at, text_width, name_pt, true) + 0.5;
  std::vector<std::string> lines;
  std::string who = label.role;
  for (const std::string& part : {label.brand, label.colour}) {
    if (!part.empty()) who += (who.empty() ? "" : ", ") + part;
  }
  if (!who.empty()) lines.push_back(who);
  if (!label.mix.empty()) lines.push_back(label.mix);
  if (label.volume_ml) lines.push_back(Short(*label.volume_ml) + " mL");
  if (label.water_ml || label.water_share) {
    std::string water = "water ";
    if (label.water_ml) water += Short(*label.water_ml) + " mL";
    if (label.water_share) {
      water += (label.water_ml ? ", " : "") +
               Short(100.0 * *label.water_share) + " %";
    }
    lines.push_back(water);
  }
  if (label.ratio) {
    lines.push_back("flow " + RatioText(label.ratio->start,
                                        label.ratio->low,
                                        label.ratio->high));
    if (!label.base_on.empty()) {
      lines.push_back("to the base coat of " + label.base_on);
    }
  }
  if (label.temperature_c) {
    lines.push_back("at " + Short(*label.temperature_c) + " °C");
  }
  std::string text;
  for (const std::string& line : lines) {
    text += (text.empty() ? "" : "\n") + line;
  }
  double text_pt = 9.0;
  const double room = y + height - 12.0 - at;
  while (
      text_pt > 5.0 &&
      pages.Put(text, x, at, text_width, text_pt, false, Align::kLeft, false) >
          room) {
    text_pt -= 0.25;
  }
  pages.Put(text, x + 3.0, at, text_width, text_pt);
  const std::string foot =
      (label.mixed_on.empty() ? std::string()
                              : "mixed " + label.mixed_on + ". ") +
      label.hazard;
  double foot_pt = 7.5;
  while (
      foot_pt > 4.5 &&
      pages.Put(foot, x, y, width - 6.0, foot_pt, false, Align::kLeft, false) >
          9.5) {
    foot_pt -= 0.25;
  }
  pages.Put(foot, x + 3.0, y + height - 11.0, width - 6.0, foot_pt);
  if (label.code.empty()) return {};
  const Result<CodeMatrix> code = MakeCode(label.code);
  if (!code) return code.error();
  DrawCode(pages, *code, x + width - kCode_mm - 1.0, y + 1.0, kCode_mm);
  return {};
}

std::string Amount(double ml, double g, AmountUnits units) {
  if (!(ml > 0.0)) return "-";
  return VolumeText(ml, units) + "\n" + MassText(g, units);
}

/// An activator may be mixed from a colour of the palette and bear its name.
std::string CupName(const PlannedCup& cup) {
  return cup.role == PourRole::kActivator ? cup.name + " (activator)"
                                          : cup.name;
}

void CupsTable(Pages& pages,
               const PourPlan& plan,
               double divisor,
               AmountUnits units) {
  std::vector<std::vector<std::string>> rows;
  for (const PlannedCup& cup : plan.cups) {
    const auto portion = [&](const Portion& p) {
      return Amount(p.volume_ml / divisor, p.mass_g() / divisor, units);
    };
    rows.push_back({cup.name + "\n" + PourRoleName(cup.role),
                    portion(cup.paint),
                    portion(cup.medium),
                    portion(cup.additive),
                    Amount(cup.mix_ml / divisor,
                           cup.mix_ml * cup.blend.density_g_per_ml / divisor,
                           units),
                    cup.reserve_ml > 0.0
                        ? VolumeText(cup.reserve_ml / divisor, units)
                        : "-"});
  }
  pages.Table({{"cup", 48.0, Align::kLeft},
               {"paint", 26.0, Align::kRight},
               {"medium", 26.0, Align::kRight},
               {"additive", 26.0, Align::kRight},
               {"mix", 28.0, Align::kRight},
               {"keep back", 26.0, Align::kRight}},
              rows);
}

void MediumLine(Pages& pages, const PourPlan& plan, AmountUnits units) {
  const MediumBatch& batch = plan.medium;
  if (!(batch.volume_ml > 0.0)) return;
  pages.Text("Make " + VolumeText(batch.volume_ml, units) +
             " of medium: " + VolumeText(batch.base.volume_ml, units) + " (" +
             MassText(batch.base.mass_g(), units) + ") of base and " +
             VolumeText(batch.varnish.volume_ml, units) + " (" +
             MassText(batch.varnish.mass_g(), units) +
             ") of varnish. Fold it, strain it, let it rest.");
}

void CautionList(Pages& pages, const std::vector<std::string>& cautions) {
  pages.Heading("Mind", 11.0);
  for (const std::string& caution : cautions) pages.Text(caution, 8.5);
}

/// ln of the ratio against added thinner, test by test, in a frame.
void PathPlot(Pages& pages, const BoardCup& cup, double band) {
  if (!cup.request || cup.request->cup.tests.empty()) return;
  constexpr double kHeight = 42.0;
  constexpr double kLeft = 18.0;
  pages.Need(kHeight + 16.0);
  pages.Text(cup.details.label + ": flow against the base coat, test by test",
             9.0);
  const std::vector<CupTest>& tests = cup.request->cup.tests;
  const double target = cup.details.target_ratio;
  double low = target / (1.0 + band) / 1.1;
  double high = target * (1.0 + band) * 1.1;
  double most_ml = 1e-9;
  for (const CupTest& test : tests) {
    low = std::min(low, test.ratio * std::exp(-2.2 * test.rel_sd));
    high = std::max(high, test.ratio * std::exp(2.2 * test.rel_sd));
    most_ml = std::max(most_ml, test.added_ml);
  }
  const double x0 = kMargin_mm + kLeft;
  const double width = kWidth_mm - kLeft - 4.0;
  const double y0 = pages.y();
  const auto y_of = [&](double ratio) {
    return y0 + kHeight * std::log(high / ratio) / std::log(high / low);
  };
  const auto x_of = [&](double ml) {
    return x0 + 4.0 + (width - 8.0) * (most_ml > 1e-8 ? ml / most_ml : 0.0);
  };
  cairo_t* cr = pages.cr();
  const double band_top = y_of(target * (1.0 + band));
  const double band_bottom = y_of(target / (1.0 + band));
  cairo_set_source_rgb(cr, 0.88, 0.88, 0.88);
  cairo_rectangle(cr, x0, band_top, width, band_bottom - band_top);
  cairo_fill(cr);
  cairo_set_source_rgb(cr, 0.0, 0.0, 0.0);
  cairo_rectangle(cr, x0, y0, width, kHeight);
  cairo_stroke(cr);
  for (const double ratio : {0.5, 0.7, 1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0}) {
    if (ratio < low || ratio > high) continue;
    pages.Line(x0 - 1.5, y_of(ratio), x0, y_of(ratio));
    pages.Put(Short(ratio),
              kMargin_mm,
              y_of(ratio) - 1.8,
              kLeft - 2.5,
              8.0,
              false,
              Align::kRight);
  }
  cairo_set_line_width(cr, 0.35);
  for (std::size_t i = 0; i < tests.size(); ++i) {
    const CupTest& test = tests[i];
    const double x = x_of(test.added_ml);
    pages.Line(x,
               y_of(test.ratio * std::exp(1.96 * test.rel_sd)),
               x,
               y_of(test.ratio * std::exp(-1.96 * test.rel_sd)));
    cairo_arc(cr, x, y_of(test.ratio), 0.9, 0.0, 6.2832);
    cairo_fill(cr);
    if (i > 0) {
      pages.Line(x_of(tests[i - 1].added_ml),
                 y_of(tests[i - 1].ratio),
                 x,
                 y_of(test.ratio));
    }
  }
  cairo_set_line_width(cr, 0.2);
  pages.Put("0", x_of(0.0) - 2.0, y0 + kHeight + 0.8, 10.0, 8.0);
  pages.Put(Short(most_ml > 1e-8 ? most_ml : 0.0) + " mL added",
            x0 + width - 40.0,
            y0 + kHeight + 0.8,
            40.0,
            8.0,
            false,
            Align::kRight);
  pages.Skip(kHeight + 7.0);
}

void DrawPhotos(Pages& pages, const std::vector<Photo>& photos) {
  for (const Photo& photo : photos) {
    FLOWKIN_CHECK(photo.rgb.size() ==
                  static_cast<std::size_t>(photo.width) * 3u *
                      static_cast<std::size_t>(photo.height));
    const int stride =
        cairo_format_stride_for_width(CAIRO_FORMAT_RGB24, photo.width);
    std::vector<std::uint8_t> rows(static_cast<std::size_t>(stride) *
                                   static_cast<std::size_t>(photo.height));
    for (int y = 0; y < photo.height; ++y) {
      auto* out = reinterpret_cast<std::uint32_t*>(
          rows.data() + static_cast<std::ptrdiff_t>(stride) * y);
      const std::uint8_t* in =
          photo.rgb.data() + static_cast<std::ptrdiff_t>(3) * photo.width * y;
      for (int x = 0; x < photo.width; ++x, in += 3) {
        out[x] = static_cast<std::uint32_t>(in[0] << 16 | in[1] << 8 | in[2]);
      }
    }
    const Surface image(cairo_image_surface_create_for_data(
        rows.data(), CAIRO_FORMAT_RGB24, photo.width, photo.height, stride));
    constexpr double kMostHeight = 110.0;
    const double scale =
        std::min(kWidth_mm / photo.width, kMostHeight / photo.height);
    pages.Need(scale * photo.height + 8.0);
    pages.Text(photo.caption, 9.0);
    cairo_t* cr = pages.cr();
    cairo_save(cr);
    cairo_translate(cr, kMargin_mm, pages.y());
    cairo_scale(cr, scale, scale);
    cairo_set_source_surface(cr, image.get(), 0.0, 0.0);
    cairo_paint(cr);
    cairo_restore(cr);
    // The page keeps its own copy only once it is shown.
    cairo_surface_flush(image.get());
    pages.Skip(scale * photo.height + 3.0);
  }
}

}  // namespace

Result<CodeMatrix> MakeCode(const std::string& text) {
  const Code code(QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M));
  if (code == nullptr) {
    return Error{ErrorCode::kInvalidArgument,
                 "The recipe is too long for a code; shorten its names."};
  }
  CodeMatrix matrix;
  matrix.size = code->width;
  const std::size_t count = static_cast<std::size_t>(code->width) *
                            static_cast<std::size_t>(code->width);
  for (std::size_t i = 0; i < count; ++i) {
    matrix.dark.push_back((code->data[i] & 1) != 0);
  }
  return matrix;
}

Result<std::string> PrintLabels(const std::vector<BatchLabel>& labels) {
  if (labels.empty()) {
    return Error{ErrorCode::kInvalidArgument, "There is no label to print."};
  }
  constexpr double kLabelWidth = 90.0;
  constexpr double kLabelHeight = 53.4;
  constexpr std::size_t kAcross = 2;
  constexpr std::size_t kOnAPage = 10;
  Pages pages("Labels");
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (i > 0 && i % kOnAPage == 0) pages.NewPage();
    const std::size_t place = i % kOnAPage;
    const std::size_t row = place / kAcross;
    const double x =
        kMargin_mm + static_cast<double>(place % kAcross) * kLabelWidth;
    const double y = kMargin_mm + static_cast<double>(row) * kLabelHeight;
    if (const Result<void> drawn =
            DrawLabel(pages, labels[i], x, y, kLabelWidth, kLabelHeight);
        !drawn) {
      return drawn.error();
    }
  }
  return pages.Finish();
}

Result<std::string> PrintBenchSheet(const PlanReport& report,
                                    const PlanRequest& request,
                                    AmountUnits units) {
  const PourPlan& plan = report.plan;
  Pages pages("Bench sheet");
  pages.Heading("Bench sheet: " + request.technique.name, 16.0);
  pages.Text(std::to_string(plan.pictures) +
             (plan.pictures == 1 ? " picture, " : " pictures, ") +
             Short(1e4 * (plan.face_m2 + plan.edge_m2)) + " cm² painted, " +
             VolumeText(plan.on_support_ml, units) + " on the canvas, " +
             Short(plan.wet_mm.start) + " mm wet, " + Short(plan.dry_mm.start) +
             " mm dry.");
  pages.Heading("First mixes");
  CupsTable(pages, plan, 1.0, units);
  MediumLine(pages, plan, units);
  pages.Heading("At the bench");
  std::vector<std::vector<std::string>> rows;
  for (const PlannedCup& cup : plan.cups) {
    rows.push_back({CupName(cup), "", "", "", "", "", "", ""});
  }
  pages.Table({{"cup", 40.0, Align::kLeft},
               {"flow 1", 18.0, Align::kLeft},
               {"water", 18.0, Align::kLeft},
               {"flow 2", 18.0, Align::kLeft},
               {"water", 18.0, Align::kLeft},
               {"flow 3", 18.0, Align::kLeft},
               {"°C", 14.0, Align::kLeft},
               {"match, time", 36.0, Align::kLeft}},
              rows,
              9.5,
              9.0);
  pages.Text(
      "Room ______ °C   humidity ______ %   rested ______ min   strained "
      "yes / no   date ____________");
  pages.Heading("To have ready");
  std::vector<std::vector<std::string>> supplies;
  for (const Supply& supply : plan.supplies) {
    supplies.push_back(
        {supply.name,
         VolumeText(supply.needed_ml, units),
         MassText(supply.needed_g, units),
         supply.buy_ml > 0.0 ? VolumeText(supply.buy_ml, units) : "-"});
  }
  pages.Table({{"what", 75.0, Align::kLeft},
               {"volume", 35.0, Align::kRight},
               {"weight", 35.0, Align::kRight},
               {"to buy", 35.0, Align::kRight}},
              supplies);
  for (const std::string& note : plan.notes) pages.Text(note, 9.0);
  CautionList(pages, report.cautions);
  return pages.Finish();
}

Result<std::string> PrintHandout(const PlanReport& report,
                                 const PlanRequest& request,
                                 int students,
                                 const std::string& title,
                                 AmountUnits units) {
  if (students < 1 || students > 500) {
    return Error{ErrorCode::kInvalidArgument, "A class has 1 to 500 places."};
  }
  const PourPlan& plan = report.plan;
  Pages pages(title.empty() ? "Class" : title);
  pages.Heading(title.empty() ? "Class: " + request.technique.name : title,
                16.0);
  pages.Text(std::to_string(students) + " places, one base coat for all; " +
             request.technique.what + ".");
  pages.Heading("The whole batch");
  CupsTable(pages, plan, 1.0, units);
  MediumLine(pages, plan, units);
  pages.Heading("At each place");
  CupsTable(pages, plan, students, units);
  pages.Heading("Steps");
  int number = 0;
  for (const char* step :
       {"Cover the table; tape the back of the canvas; set it on cups and "
        "level it.",
        "Stir your cups slowly. Lift the stick and compare with the base coat: "
        "does it run as fast?",
        "Slower: ask before adding water; then a few drops, stir, compare "
        "again. Faster: stir in some of what was kept back.",
        "As fast as the base coat: stop. Write down the drops.",
        "Lay the wet base, pour, tilt slowly to all corners.",
        "Photograph it wet. Leave it level, covered, without draught."}) {
    pages.Text(std::to_string(++number) + ". " + step);
  }
  pages.Heading("Your cups", 11.0);
  std::vector<std::vector<std::string>> rows;
  for (const PlannedCup& cup : plan.cups) {
    rows.push_back({CupName(cup), "", "", ""});
  }
  pages.Table({{"cup", 60.0, Align::kLeft},
               {"slower / as fast / faster", 50.0, Align::kLeft},
               {"drops added", 35.0, Align::kLeft},
               {"as fast now?", 35.0, Align::kLeft}},
              rows,
              9.5,
              8.0);
  CautionList(pages, report.cautions);
  return pages.Finish();
}

Result<std::string> PrintReport(const JournalPage& page,
                                const Board& board,
                                const std::vector<Photo>& photos) {
  Pages pages(page.line.name);
  pages.Heading(page.line.name, 16.0);
  const BenchJournal& journal = page.session.journal();
  std::string head = FormatUtc(page.line.begun).substr(0, 10);
  if (page.session.room_c()) {
    head += ", room " + Short(*page.session.room_c()) + " °C";
  }
  if (journal.pour && journal.pour->humidity_percent) {
    head += ", " + Short(*journal.pour->humidity_percent) + " % humidity";
  }
  if (journal.judged) {
    head += ", judged " + std::string(PourVerdictName(journal.judged->verdict));
  }
  pages.Text(head);
  DrawPhotos(pages, photos);
  pages.Heading("Cups");
  std::vector<std::vector<std::string>> rows;
  for (const BoardCup& cup : board.cups) {
    std::string ratio = cup.base_coat ? "1 (reference)" : "not measured";
    if (cup.comparison && cup.comparison->outcome == Outcome::kMeasured) {
      ratio = RatioText(cup.comparison->ratio.Ratio(),
                        cup.comparison->interval.low,
                        cup.comparison->interval.high);
      if (cup.before_addition) ratio += ", before the last addition";
    }
    const PaintKey& paint = cup.details.paint;
    rows.push_back(
        {cup.details.label,
         paint.brand +
             (paint.brand.empty() || paint.colour.empty() ? "" : " ") +
             paint.colour,
         ratio,
         Short(cup.details.target_ratio),
         cup.thinner_ml > 0.0 ? Short(cup.thinner_ml) + " mL" : "-",
         cup.water_share ? Short(100.0 * *cup.water_share) + " %" : "-"});
  }
  pages.Table({{"cup", 36.0, Align::kLeft},
               {"paint", 40.0, Align::kLeft},
               {"flow to the base coat (95 %)", 48.0, Align::kLeft},
               {"target", 16.0, Align::kRight},
               {"added", 20.0, Align::kRight},
               {"water", 20.0, Align::kRight}},
              rows);
  for (const BoardCup& cup : board.cups) {
    PathPlot(pages, cup, board.settings.band);
  }
  if (journal.pour) {
    const PourMade& pour = *journal.pour;
    pages.Heading("Pour");
    std::string text = FormatUtc(*journal.poured_at).substr(0, 10);
    if (!pour.technique.empty()) text += ", " + pour.technique;
    if (pour.planned_ml) {
      text += ", planned " + Short(*pour.planned_ml) + " mL";
    }
    if (pour.used_ml) text += ", used " + Short(*pour.used_ml) + " mL";
    if (pour.wet_mm) text += ", " + Short(*pour.wet_mm) + " mm wet";
    if (pour.dry_mm) text += ", " + Short(*pour.dry_mm) + " mm dry";
    pages.Text(text + ".");
    if (!pour.text.empty()) pages.Text(pour.text);
  }
  if (!journal.cells.empty()) {
    pages.Heading("Cell tests");
    std::vector<std::vector<std::string>> tests;
    for (const BenchJournal::Cells& cells : journal.cells) {
      const CellsTested& test = cells.test;
      const BenchCup* cup =
          test.cup ? page.session.FindCup(*test.cup) : nullptr;
      tests.push_back(
          {cup != nullptr ? cup->details.label : "-",
           CellsSeenName(test.seen),
           test.after_s ? Short(*test.after_s) + " s" : "-",
           test.additive_parts ? "1 : " + Short(*test.additive_parts) : "-",
           test.ln_ratio ? Short(std::exp(test.ln_ratio->value)) : "-",
           test.text});
    }
    pages.Table({{"cup", 36.0, Align::kLeft},
                 {"seen", 22.0, Align::kLeft},
                 {"after", 18.0, Align::kRight},
                 {"paint : additive", 28.0, Align::kRight},
                 {"flow", 18.0, Align::kRight},
                 {"remark", 58.0, Align::kLeft}},
                tests);
  }
  if (!page.faults.empty()) {
    pages.Heading("Seen on it");
    pages.Text(
        "Causes are those commonly named, held against what was "
        "measured that day; none is proven by it.",
        8.5);
    std::vector<std::vector<std::string>> causes;
    for (const ExplainedFault& fault : page.faults) {
      std::string what = fault.seen.fault;
      if (!fault.seen.text.empty()) what += ": " + fault.seen.text;
      for (const Cause& cause : fault.causes) {
        causes.push_back(
            {what, cause.says, StandingName(cause.standing), cause.evidence});
        what.clear();
      }
      if (fault.causes.empty()) causes.push_back({what, "", "", ""});
    }
    pages.Table({{"fault", 36.0, Align::kLeft},
                 {"cause", 66.0, Align::kLeft},
                 {"that day", 26.0, Align::kLeft},
                 {"measured", 52.0, Align::kLeft}},
                causes,
                8.5);
  }
  if (!journal.notes.empty()) {
    pages.Heading("Notes");
    for (const BenchJournal::Note& note : journal.notes) {
      pages.Text(FormatUtc(note.at).substr(0, 16) + "  " + note.text);
    }
  }
  return pages.Finish();
}

}  // namespace flowkin
