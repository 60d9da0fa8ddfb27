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
#include "app/usecases/sentence.h"
#include "core/base/check.h"

namespace flowkin {
namespace {

constexpr double kPointsPerMm = 72.0 / 25.4;
constexpr double kPageWidth_mm = 210.0;  // ISO 216, A4
constexpr double kPageHeight_mm = 297.0;
constexpr double kPageWidth_pt = kPageWidth_mm * kPointsPerMm;
constexpr double kPageHeight_pt = kPageHeight_mm * kPointsPerMm;
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

}  // namespace

struct Paper::Sheets {
  std::string title;
  std::vector<Surface> sheets;
};

namespace {

cairo_status_t Keep(void* bytes,
                    const unsigned char* data,
                    unsigned int length) {
  static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data),
                                           length);
  return CAIRO_STATUS_SUCCESS;
}

bool Sound(const Surface& surface) {
  return cairo_surface_status(surface.get()) == CAIRO_STATUS_SUCCESS;
}

Error NotDrawn() {
  return {ErrorCode::kInternal,
          "The pages could not be drawn; there may not be enough memory."};
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
  explicit Pages(const std::string& title)
      : sheets_(std::make_shared<Paper::Sheets>()) {
    sheets_->title = title;
    NewPage();
  }

  cairo_t* cr() const { return context_.get(); }
  double y() const { return y_; }
  void Skip(double mm) { y_ += mm; }

  void NewPage() {
    const cairo_rectangle_t page{0.0, 0.0, kPageWidth_pt, kPageHeight_pt};
    sheets_->sheets.emplace_back(
        cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, &page));
    context_.reset(cairo_create(sheets_->sheets.back().get()));
    cairo_scale(cr(), kPointsPerMm, kPointsPerMm);
    cairo_set_line_width(cr(), 0.2);
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

  Result<Paper> Finish() {
    context_.reset();
    for (const Surface& sheet : sheets_->sheets) {
      if (!Sound(sheet)) return NotDrawn();
    }
    return Paper(std::move(sheets_));
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

  std::shared_ptr<Paper::Sheets> sheets_;
  Context context_;
  double y_ = kMargin_mm;
};

std::string RatioText(const Words& words,
                      double value,
                      double low,
                      double high) {
  return PutTogether(
      words.Phrase("page", "%1 (%2 to %3)"),
      {words.Number(value), words.Number(low), words.Number(high)});
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
                       const Words& words,
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
  std::string who = words.Name(label.role);
  for (const std::string& part : {label.brand, label.colour}) {
    if (!part.empty()) who += (who.empty() ? "" : ", ") + part;
  }
  if (!who.empty()) lines.push_back(who);
  if (!label.mix.empty()) lines.push_back(label.mix);
  if (label.volume_ml) lines.push_back(words.Volume(*label.volume_ml));
  if (label.water_ml || label.water_share) {
    std::string water;
    if (label.water_ml) water = words.Volume(*label.water_ml);
    if (label.water_share) {
      water += (label.water_ml ? ", " : "") + words.Percent(*label.water_share);
    }
    lines.push_back(PutTogether(words.Phrase("page", "water %1"), {water}));
  }
  if (label.ratio) {
    lines.push_back(PutTogether(
        words.Phrase("page", "flow %1"),
        {RatioText(
            words, label.ratio->start, label.ratio->low, label.ratio->high)}));
    if (!label.base_on.empty()) {
      lines.push_back(PutTogether(
          words.Phrase("page", "to the base coat of %1"), {label.base_on}));
    }
  }
  if (label.temperature_c) {
    lines.push_back(PutTogether(words.Phrase("page", "at %1"),
                                {words.Temperature(*label.temperature_c)}));
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
      (label.mixed_on.empty()
           ? std::string()
           : PutTogether(words.Phrase("page", "mixed %1."), {label.mixed_on}) +
                 " ") +
      words.Name(label.hazard);
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

std::string Amount(double ml, double g, const Words& words) {
  if (!(ml > 0.0)) return "-";
  return words.Volume(ml) + "\n" + words.Mass(g);
}

/// An activator may be mixed from a colour of the palette and bear its name.
std::string CupName(const PlannedCup& cup, const Words& words) {
  return cup.role == PourRole::kActivator
             ? PutTogether(words.Phrase("page", "%1 (activator)"),
                           {words.Name(cup.name)})
             : words.Name(cup.name);
}

void CupsTable(Pages& pages,
               const PourPlan& plan,
               double divisor,
               const Words& words) {
  std::vector<std::vector<std::string>> rows;
  for (const PlannedCup& cup : plan.cups) {
    const auto portion = [&](const Portion& p) {
      return Amount(p.volume_ml / divisor, p.mass_g() / divisor, words);
    };
    rows.push_back(
        {cup.name == PourRoleName(cup.role)
             ? words.Name(cup.name)
             : words.Name(cup.name) + "\n" + words.Name(PourRoleName(cup.role)),
         portion(cup.paint),
         portion(cup.medium),
         portion(cup.additive),
         Amount(cup.mix_ml / divisor,
                cup.mix_ml * cup.blend.density_g_per_ml / divisor,
                words),
         cup.reserve_ml > 0.0 ? words.Volume(cup.reserve_ml / divisor) : "-"});
  }
  pages.Table({{words.Phrase("page", "cup"), 48.0, Align::kLeft},
               {words.Phrase("page", "paint"), 26.0, Align::kRight},
               {words.Phrase("page", "medium"), 26.0, Align::kRight},
               {words.Phrase("page", "additive"), 26.0, Align::kRight},
               {words.Phrase("page", "mix"), 28.0, Align::kRight},
               {words.Phrase("page", "keep back"), 26.0, Align::kRight}},
              rows);
}

void MediumLine(Pages& pages, const PourPlan& plan, const Words& words) {
  const MediumBatch& batch = plan.medium;
  if (!(batch.volume_ml > 0.0)) return;
  pages.Text(PutTogether(
      words.Phrase("page",
                   "Make %1 of medium: %2 (%3) of base and %4 (%5) of "
                   "varnish. Fold it, strain it, let it rest."),
      {words.Volume(batch.volume_ml),
       words.Volume(batch.base.volume_ml),
       words.Mass(batch.base.mass_g()),
       words.Volume(batch.varnish.volume_ml),
       words.Mass(batch.varnish.mass_g())}));
}

void CautionList(Pages& pages,
                 const std::vector<std::string>& cautions,
                 const Words& words) {
  pages.Heading(words.Phrase("page", "Mind"), 11.0);
  for (const std::string& caution : cautions) {
    pages.Text(words.Engine(caution), 8.5);
  }
}

/// ln of the ratio against added thinner, test by test, in a frame.
void PathPlot(Pages& pages,
              const BoardCup& cup,
              double band,
              const Words& words) {
  // One point is no path; the table says it.
  if (!cup.request || cup.request->cup.tests.size() < 2) return;
  constexpr double kHeight = 42.0;
  constexpr double kLeft = 18.0;
  pages.Need(kHeight + 16.0);
  pages.Text(
      PutTogether(
          words.Phrase("page", "%1: flow against the base coat, test by test"),
          {cup.details.label}),
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
  static const std::vector<double> kWide = {
      0.5, 0.7, 1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0};
  static const std::vector<double> kNarrow = {
      0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.4, 1.6, 1.8, 2.0, 2.4, 2.8};
  for (const double ratio : high < 2.5 * low ? kNarrow : kWide) {
    if (ratio < low || ratio > high) continue;
    pages.Line(x0 - 1.5, y_of(ratio), x0, y_of(ratio));
    pages.Put(words.Number(ratio),
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
  pages.Put(PutTogether(words.Phrase("page", "%1 added"),
                        {words.Volume(most_ml > 1e-8 ? most_ml : 0.0)}),
            x0 + width - 60.0,
            y0 + kHeight + 0.8,
            60.0,
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
    pages.Skip(scale * photo.height + 3.0);
  }
}

}  // namespace

Paper::Paper(std::shared_ptr<const Sheets> sheets)
    : sheets_(std::move(sheets)) {}

int Paper::pages() const { return static_cast<int>(sheets_->sheets.size()); }

Result<std::string> Paper::Pdf() const {
  std::string bytes;
  const Surface surface(cairo_pdf_surface_create_for_stream(
      Keep, &bytes, kPageWidth_pt, kPageHeight_pt));
  cairo_pdf_surface_set_metadata(
      surface.get(), CAIRO_PDF_METADATA_TITLE, sheets_->title.c_str());
  Context context(cairo_create(surface.get()));
  for (const Surface& sheet : sheets_->sheets) {
    cairo_set_source_surface(context.get(), sheet.get(), 0.0, 0.0);
    cairo_paint(context.get());
    cairo_show_page(context.get());
  }
  context.reset();
  cairo_surface_finish(surface.get());
  if (!Sound(surface)) return NotDrawn();
  return bytes;
}

Result<Photo> Paper::Picture(int page, int width_px) const {
  FLOWKIN_CHECK(page >= 0 && page < pages() && width_px > 0);
  const double scale = width_px / kPageWidth_pt;
  const auto height_px = static_cast<int>(std::lround(scale * kPageHeight_pt));
  const Surface surface(
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, width_px, height_px));
  const Context context(cairo_create(surface.get()));
  cairo_set_source_rgb(context.get(), 1.0, 1.0, 1.0);
  cairo_paint(context.get());
  cairo_scale(context.get(), scale, scale);
  cairo_set_source_surface(
      context.get(),
      sheets_->sheets[static_cast<std::size_t>(page)].get(),
      0.0,
      0.0);
  cairo_paint(context.get());
  cairo_surface_flush(surface.get());
  if (!Sound(surface)) return NotDrawn();
  Photo picture;
  picture.width = width_px;
  picture.height = height_px;
  picture.rgb.reserve(static_cast<std::size_t>(width_px) * 3u *
                      static_cast<std::size_t>(height_px));
  const unsigned char* rows = cairo_image_surface_get_data(surface.get());
  const int stride = cairo_image_surface_get_stride(surface.get());
  for (int y = 0; y < height_px; ++y) {
    const auto* row = reinterpret_cast<const std::uint32_t*>(
        rows + static_cast<std::ptrdiff_t>(stride) * y);
    for (int x = 0; x < width_px; ++x) {
      for (const int shift : {16, 8, 0}) {
        picture.rgb.push_back(static_cast<std::uint8_t>(row[x] >> shift));
      }
    }
  }
  return picture;
}

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

Result<Paper> PrintLabels(const std::vector<BatchLabel>& labels,
                          const Words& words) {
  if (labels.empty()) {
    return Error{ErrorCode::kInvalidArgument, "There is no label to print."};
  }
  constexpr double kLabelWidth = 90.0;
  constexpr double kLabelHeight = 53.4;
  constexpr std::size_t kAcross = 2;
  constexpr std::size_t kOnAPage = 10;
  Pages pages(words.Phrase("page", "Labels"));
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (i > 0 && i % kOnAPage == 0) pages.NewPage();
    const std::size_t place = i % kOnAPage;
    const std::size_t row = place / kAcross;
    const double x =
        kMargin_mm + static_cast<double>(place % kAcross) * kLabelWidth;
    const double y = kMargin_mm + static_cast<double>(row) * kLabelHeight;
    if (const Result<void> drawn =
            DrawLabel(pages, labels[i], words, x, y, kLabelWidth, kLabelHeight);
        !drawn) {
      return drawn.error();
    }
  }
  return pages.Finish();
}

Result<Paper> PrintBenchSheet(const PlanReport& report,
                              const PlanRequest& request,
                              const Words& words) {
  const PourPlan& plan = report.plan;
  Pages pages(words.Phrase("page", "Bench sheet"));
  pages.Heading(PutTogether(words.Phrase("page", "Bench sheet: %1"),
                            {words.Name(request.technique.name)}),
                16.0);
  pages.Text(PutTogether(
      words.Phrase("page",
                   "Pictures: %1; %2 painted, %3 on the canvas, %4 wet, "
                   "%5 dry."),
      {std::to_string(plan.pictures),
       words.Area(plan.face_m2 + plan.edge_m2),
       words.Volume(plan.on_support_ml),
       words.Film(plan.wet_mm.start),
       words.Film(plan.dry_mm.start)}));
  pages.Heading(words.Phrase("page", "First mixes"));
  CupsTable(pages, plan, 1.0, words);
  MediumLine(pages, plan, words);
  pages.Heading(words.Phrase("page", "At the bench"));
  std::vector<std::vector<std::string>> rows;
  for (const PlannedCup& cup : plan.cups) {
    rows.push_back({CupName(cup, words), "", "", "", "", "", "", ""});
  }
  const auto flow = [&](const char* number) {
    return Column{PutTogether(words.Phrase("page", "flow %1"), {number}),
                  18.0,
                  Align::kLeft};
  };
  const Column water{words.Phrase("page", "water"), 18.0, Align::kLeft};
  const std::string degrees = words.units() == AmountUnits::kUs ? "°F" : "°C";
  pages.Table({{words.Phrase("page", "cup"), 40.0, Align::kLeft},
               flow("1"),
               water,
               flow("2"),
               water,
               flow("3"),
               {degrees, 14.0, Align::kLeft},
               {words.Phrase("page", "match, time"), 36.0, Align::kLeft}},
              rows,
              9.5,
              9.0);
  pages.Text(PutTogether(
      words.Phrase("page",
                   "Room ______ %1   humidity ______ %   rested ______ "
                   "min   strained yes / no   date ____________"),
      {degrees}));
  pages.Heading(words.Phrase("page", "To have ready"));
  std::vector<std::vector<std::string>> supplies;
  for (const Supply& supply : plan.supplies) {
    supplies.push_back(
        {words.Name(supply.name),
         words.Volume(supply.needed_ml),
         words.Mass(supply.needed_g),
         supply.buy_ml > 0.0 ? words.Volume(supply.buy_ml) : "-"});
  }
  pages.Table({{words.Phrase("page", "what"), 75.0, Align::kLeft},
               {words.Phrase("page", "volume"), 35.0, Align::kRight},
               {words.Phrase("page", "weight"), 35.0, Align::kRight},
               {words.Phrase("page", "to buy"), 35.0, Align::kRight}},
              supplies);
  for (const std::string& note : plan.notes) {
    pages.Text(words.Engine(note), 9.0);
  }
  CautionList(pages, report.cautions, words);
  return pages.Finish();
}

Result<Paper> PrintHandout(const PlanReport& report,
                           const PlanRequest& request,
                           int students,
                           const std::string& title,
                           const Words& words) {
  if (students < 1 || students > 500) {
    return Error{ErrorCode::kInvalidArgument, "A class has 1 to 500 places."};
  }
  const PourPlan& plan = report.plan;
  Pages pages(title.empty() ? words.Phrase("page", "Class") : title);
  pages.Heading(title.empty()
                    ? PutTogether(words.Phrase("page", "Class: %1"),
                                  {words.Name(request.technique.name)})
                    : title,
                16.0);
  pages.Text(PutTogether(
      words.Phrase("page", "Places: %1, one base coat for all; %2."),
      {std::to_string(students), words.Name(request.technique.what)}));
  pages.Heading(words.Phrase("page", "The whole batch"));
  CupsTable(pages, plan, 1.0, words);
  MediumLine(pages, plan, words);
  pages.Heading(words.Phrase("page", "At each place"));
  CupsTable(pages, plan, students, words);
  pages.Heading(words.Phrase("page", "Steps"));
  int number = 0;
  for (const std::string& step :
       {words.Phrase("page",
                     "Cover the table; tape the back of the canvas; set it on "
                     "cups and level it."),
        words.Phrase("page",
                     "Stir your cups slowly. Lift the stick and compare with "
                     "the base coat: does it run as fast?"),
        words.Phrase("page",
                     "Slower: ask before adding water; then a few drops, stir, "
                     "compare again. Faster: stir in some of what was kept "
                     "back."),
        words.Phrase("page",
                     "As fast as the base coat: stop. Write down the drops."),
        words.Phrase("page",
                     "Lay the wet base, pour, tilt slowly to all corners."),
        words.Phrase("page",
                     "Photograph it wet. Leave it level, covered, without "
                     "draught.")}) {
    pages.Text(std::to_string(++number) + ". " + step);
  }
  pages.Heading(words.Phrase("page", "Your cups"), 11.0);
  std::vector<std::vector<std::string>> rows;
  for (const PlannedCup& cup : plan.cups) {
    rows.push_back({CupName(cup, words), "", "", ""});
  }
  pages.Table(
      {{words.Phrase("page", "cup"), 60.0, Align::kLeft},
       {words.Phrase("page", "slower / as fast / faster"), 50.0, Align::kLeft},
       {words.Phrase("page", "drops added"), 35.0, Align::kLeft},
       {words.Phrase("page", "as fast now?"), 35.0, Align::kLeft}},
      rows,
      9.5,
      8.0);
  CautionList(pages, report.cautions, words);
  return pages.Finish();
}

Result<Paper> PrintReport(const JournalPage& page,
                          const Board& board,
                          const std::vector<Photo>& photos,
                          const Words& words) {
  Pages pages(page.line.name);
  pages.Heading(page.line.name, 16.0);
  const BenchJournal& journal = page.session.journal();
  std::string head = FormatUtc(page.line.begun).substr(0, 10);
  if (page.session.room_c()) {
    head += ", " + PutTogether(words.Phrase("page", "room %1"),
                               {words.Temperature(*page.session.room_c())});
  }
  if (journal.pour && journal.pour->humidity_percent) {
    head += ", " + PutTogether(
                       words.Phrase("page", "%1 humidity"),
                       {words.Percent(0.01 * *journal.pour->humidity_percent)});
  }
  if (journal.judged) {
    head += ", " +
            PutTogether(words.Phrase("page", "judged %1"),
                        {words.Name(PourVerdictName(journal.judged->verdict))});
  }
  pages.Text(head);
  DrawPhotos(pages, photos);
  pages.Heading(words.Phrase("page", "Cups"));
  std::vector<std::vector<std::string>> rows;
  for (const BoardCup& cup : board.cups) {
    std::string ratio = cup.base_coat ? words.Phrase("page", "1 (reference)")
                                      : words.Phrase("page", "not measured");
    if (cup.comparison && cup.comparison->outcome == Outcome::kMeasured) {
      ratio = RatioText(words,
                        cup.comparison->ratio.Ratio(),
                        cup.comparison->interval.low,
                        cup.comparison->interval.high);
      if (cup.before_addition) {
        ratio = PutTogether(
            words.Phrase("page", "%1, before the last addition"), {ratio});
      }
    }
    const PaintKey& paint = cup.details.paint;
    rows.push_back(
        {cup.details.label,
         paint.brand +
             (paint.brand.empty() || paint.colour.empty() ? "" : " ") +
             paint.colour,
         ratio,
         words.Number(cup.details.target_ratio),
         cup.thinner_ml > 0.0 ? words.Volume(cup.thinner_ml) : "-",
         cup.water_share ? words.Percent(*cup.water_share) : "-"});
  }
  pages.Table({{words.Phrase("page", "cup"), 36.0, Align::kLeft},
               {words.Phrase("page", "paint"), 40.0, Align::kLeft},
               {words.Phrase("page", "flow to the base coat (95 %)"),
                46.0,
                Align::kLeft},
               {words.Phrase("page", "target"), 16.0, Align::kRight},
               {words.Phrase("page", "added"), 22.0, Align::kRight},
               {words.Phrase("page", "water"), 20.0, Align::kRight}},
              rows);
  for (const BoardCup& cup : board.cups) {
    PathPlot(pages, cup, board.settings.band, words);
  }
  if (journal.pour) {
    const PourMade& pour = *journal.pour;
    pages.Heading(words.Phrase("page", "Pour"));
    std::string text = FormatUtc(*journal.poured_at).substr(0, 10);
    const auto more = [&](const std::string& part) { text += ", " + part; };
    if (!pour.technique.empty()) more(words.Name(pour.technique));
    if (pour.planned_ml) {
      more(PutTogether(words.Phrase("page", "planned %1"),
                       {words.Volume(*pour.planned_ml)}));
    }
    if (pour.used_ml) {
      more(PutTogether(words.Phrase("page", "used %1"),
                       {words.Volume(*pour.used_ml)}));
    }
    if (pour.wet_mm) {
      more(PutTogether(words.Phrase("page", "%1 wet"),
                       {words.Film(*pour.wet_mm)}));
    }
    if (pour.dry_mm) {
      more(PutTogether(words.Phrase("page", "%1 dry"),
                       {words.Film(*pour.dry_mm)}));
    }
    pages.Text(text + ".");
    if (!pour.text.empty()) pages.Text(pour.text);
  }
  if (!journal.cells.empty()) {
    pages.Heading(words.Phrase("page", "Cell tests"));
    std::vector<std::vector<std::string>> tests;
    for (const BenchJournal::Cells& cells : journal.cells) {
      const CellsTested& test = cells.test;
      const BenchCup* cup =
          test.cup ? page.session.FindCup(*test.cup) : nullptr;
      std::string remark = test.text;
      if (test.counted) {
        const CellsCounted& counted = *test.counted;
        if (!remark.empty()) remark += "\n";
        remark += PutTogether(
            words.Phrase("page", "%1 on a cm², half larger than %2 mm"),
            {RatioText(words,
                       counted.per_cm2,
                       counted.per_cm2_interval.low,
                       counted.per_cm2_interval.high),
             words.Number(counted.median_mm)});
      }
      tests.push_back(
          {cup != nullptr ? cup->details.label : "-",
           words.Name(CellsSeenName(test.seen)),
           test.after_s ? words.Number(*test.after_s) + " s" : "-",
           test.additive_parts ? "1 : " + words.Number(*test.additive_parts)
                               : "-",
           test.ln_ratio ? words.Number(std::exp(test.ln_ratio->value)) : "-",
           remark});
    }
    pages.Table(
        {{words.Phrase("page", "cup"), 36.0, Align::kLeft},
         {words.Phrase("page", "seen"), 34.0, Align::kLeft},
         {words.Phrase("page", "after"), 18.0, Align::kRight},
         {words.Phrase("page", "paint : additive"), 28.0, Align::kRight},
         {words.Phrase("page", "flow"), 18.0, Align::kRight},
         {words.Phrase("page", "remark"), 46.0, Align::kLeft}},
        tests);
  }
  if (!page.faults.empty()) {
    pages.Heading(words.Phrase("page", "Seen on it"));
    pages.Text(
        words.Phrase("page",
                     "Causes are those commonly named, held against what was "
                     "measured that day; none is proven by it."),
        8.5);
    std::vector<std::vector<std::string>> causes;
    for (const ExplainedFault& fault : page.faults) {
      std::string what = words.Name(fault.seen.fault);
      if (!fault.seen.text.empty()) {
        what = PutTogether(words.Phrase("page", "%1: %2"),
                           {what, fault.seen.text});
      }
      for (const Cause& cause : fault.causes) {
        causes.push_back({what,
                          words.Engine(cause.says),
                          words.Name(StandingName(cause.standing)),
                          words.Engine(cause.evidence)});
        what.clear();
      }
      if (fault.causes.empty()) causes.push_back({what, "", "", ""});
    }
    pages.Table({{words.Phrase("page", "fault"), 36.0, Align::kLeft},
                 {words.Phrase("page", "cause"), 66.0, Align::kLeft},
                 {words.Phrase("page", "that day"), 26.0, Align::kLeft},
                 {words.Phrase("page", "measured"), 52.0, Align::kLeft}},
                causes,
                8.5);
  }
  if (!journal.notes.empty()) {
    pages.Heading(words.Phrase("page", "Notes"));
    for (const BenchJournal::Note& note : journal.notes) {
      const std::string at = FormatUtc(note.at);
      pages.Text(at.substr(0, 10) + " " + at.substr(11, 5) + "  " + note.text);
    }
  }
  return pages.Finish();
}

}  // namespace flowkin
