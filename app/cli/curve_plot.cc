#include "app/cli/curve_plot.h"

#include <pango/pangocairo.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <memory>
#include <vector>

namespace flowkin {
namespace {

constexpr int kWidth_px = 720;
constexpr int kHeight_px = 480;
constexpr double kLeft_px = 70.0;
constexpr double kRight_px = 20.0;
constexpr double kTop_px = 40.0;
constexpr double kBottom_px = 60.0;
constexpr int kFont_px = 14;

struct Spot {
  double x, y;
};
struct Colour {
  int red, green, blue;
};
constexpr Colour kInk{40, 40, 40};
constexpr Colour kGrid{220, 220, 220};
constexpr Colour kBand{198, 219, 239};
constexpr Colour kCurve{33, 102, 172};
constexpr Colour kPoint{178, 70, 24};

enum class Anchor { kStart, kMiddle, kEnd };

/// Where the same strokes go, whatever the format.
class Canvas {
 public:
  virtual ~Canvas() = default;
  virtual void Line(Spot a, Spot b, Colour colour, double width) = 0;
  virtual void Path(const std::vector<Spot>& spots, Colour colour) = 0;
  virtual void Area(const std::vector<Spot>& spots, Colour colour) = 0;
  virtual void Disc(Spot centre, double radius, Colour colour) = 0;
  virtual void Text(Spot at, const std::string& text, Anchor anchor) = 0;
};

class SvgCanvas : public Canvas {
 public:
  void Line(Spot a, Spot b, Colour colour, double width) override {
    Print("<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\"",
          a.x,
          a.y,
          b.x,
          b.y);
    Stroke(colour, width);
  }
  void Path(const std::vector<Spot>& spots, Colour colour) override {
    body_ += "<polyline points=\"";
    Points(spots);
    body_ += "\" fill=\"none\"";
    Stroke(colour, 2.0);
  }
  void Area(const std::vector<Spot>& spots, Colour colour) override {
    body_ += "<polygon points=\"";
    Points(spots);
    Print("\" fill=\"rgb(%.0f,%.0f,%.0f)\"/>\n",
          colour.red,
          colour.green,
          colour.blue);
  }
  void Disc(Spot centre, double radius, Colour colour) override {
    Print("<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.1f\"",
          centre.x,
          centre.y,
          radius);
    Print(" fill=\"rgb(%.0f,%.0f,%.0f)\"/>\n",
          colour.red,
          colour.green,
          colour.blue);
  }
  void Text(Spot at, const std::string& text, Anchor anchor) override {
    Print("<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"", at.x, at.y);
    body_ += anchor == Anchor::kStart
                 ? "start"
                 : (anchor == Anchor::kMiddle ? "middle" : "end");
    body_ += "\">";
    for (const char c : text) {
      if (c == '<') {
        body_ += "&lt;";
      } else if (c == '>') {
        body_ += "&gt;";
      } else if (c == '&') {
        body_ += "&amp;";
      } else {
        body_ += c;
      }
    }
    body_ += "</text>\n";
  }
  std::string Bytes() const {
    char head[320];
    std::snprintf(head,
                  sizeof(head),
                  "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" "
                  "height=\"%d\" viewBox=\"0 0 %d %d\" "
                  "font-family=\"sans-serif\" font-size=\"%d\">\n"
                  "<rect width=\"100%%\" height=\"100%%\" fill=\"white\"/>\n",
                  kWidth_px,
                  kHeight_px,
                  kWidth_px,
                  kHeight_px,
                  kFont_px);
    return head + body_ + "</svg>\n";
  }

 private:
  template <typename... Numbers>
  void Print(const char* format, Numbers... numbers) {
    char text[256];
    std::snprintf(text, sizeof(text), format, static_cast<double>(numbers)...);
    body_ += text;
  }
  void Stroke(Colour colour, double width) {
    Print(" stroke=\"rgb(%.0f,%.0f,%.0f)\" stroke-width=\"%.1f\"/>\n",
          colour.red,
          colour.green,
          colour.blue,
          width);
  }
  void Points(const std::vector<Spot>& spots) {
    for (const Spot& spot : spots) Print("%.2f,%.2f ", spot.x, spot.y);
  }
  std::string body_;
};

struct CairoFree {
  void operator()(cairo_surface_t* surface) const {
    cairo_surface_destroy(surface);
  }
  void operator()(cairo_t* context) const { cairo_destroy(context); }
  void operator()(PangoLayout* layout) const { g_object_unref(layout); }
  void operator()(PangoFontDescription* font) const {
    pango_font_description_free(font);
  }
};

class PictureCanvas : public Canvas {
 public:
  PictureCanvas()
      : surface_(cairo_image_surface_create(
            CAIRO_FORMAT_RGB24, kScale * kWidth_px, kScale * kHeight_px)),
        context_(cairo_create(surface_.get())),
        layout_(pango_cairo_create_layout(context_.get())) {
    cairo_scale(context_.get(), kScale, kScale);
    cairo_set_source_rgb(context_.get(), 1.0, 1.0, 1.0);
    cairo_paint(context_.get());
    const std::unique_ptr<PangoFontDescription, CairoFree> font(
        pango_font_description_from_string("sans-serif"));
    pango_font_description_set_absolute_size(font.get(),
                                             kFont_px * PANGO_SCALE);
    pango_layout_set_font_description(layout_.get(), font.get());
  }
  void Line(Spot a, Spot b, Colour colour, double width) override {
    cairo_move_to(context_.get(), a.x, a.y);
    cairo_line_to(context_.get(), b.x, b.y);
    Stroke(colour, width);
  }
  void Path(const std::vector<Spot>& spots, Colour colour) override {
    Trace(spots);
    Stroke(colour, 2.0);
  }
  void Area(const std::vector<Spot>& spots, Colour colour) override {
    Trace(spots);
    Use(colour);
    cairo_fill(context_.get());
  }
  void Disc(Spot centre, double radius, Colour colour) override {
    constexpr double kTurn = 6.283185307179586;
    cairo_new_path(context_.get());
    cairo_arc(context_.get(), centre.x, centre.y, radius, 0.0, kTurn);
    Use(colour);
    cairo_fill(context_.get());
  }
  void Text(Spot at, const std::string& text, Anchor anchor) override {
    pango_layout_set_text(
        layout_.get(), text.data(), static_cast<int>(text.size()));
    int width = 0;
    pango_layout_get_size(layout_.get(), &width, nullptr);
    double left = at.x;
    if (anchor == Anchor::kMiddle) left -= 0.5 * width / PANGO_SCALE;
    if (anchor == Anchor::kEnd) left -= 1.0 * width / PANGO_SCALE;
    const double top =
        at.y - 1.0 * pango_layout_get_baseline(layout_.get()) / PANGO_SCALE;
    cairo_move_to(context_.get(), left, top);
    Use(kInk);
    pango_cairo_show_layout(context_.get(), layout_.get());
  }

  /// PNG of the picture; empty where it could not be made.
  std::string Bytes() const {
    std::string bytes;
    const auto write =
        [](void* to, const unsigned char* data, unsigned int size) {
          static_cast<std::string*>(to)->append(
              reinterpret_cast<const char*>(data), size);
          return CAIRO_STATUS_SUCCESS;
        };
    if (cairo_surface_write_to_png_stream(surface_.get(), write, &bytes) !=
        CAIRO_STATUS_SUCCESS) {
      return {};
    }
    return bytes;
  }

 private:
  static constexpr int kScale = 2;  // for sharp print

  void Trace(const std::vector<Spot>& spots) {
    cairo_new_path(context_.get());
    for (const Spot& spot : spots) {
      cairo_line_to(context_.get(), spot.x, spot.y);
    }
  }
  void Use(Colour colour) {
    cairo_set_source_rgb(context_.get(),
                         colour.red / 255.0,
                         colour.green / 255.0,
                         colour.blue / 255.0);
  }
  void Stroke(Colour colour, double width) {
    Use(colour);
    cairo_set_line_width(context_.get(), width);
    cairo_stroke(context_.get());
  }

  std::unique_ptr<cairo_surface_t, CairoFree> surface_;
  std::unique_ptr<cairo_t, CairoFree> context_;
  std::unique_ptr<PangoLayout, CairoFree> layout_;
};

/// Smallest of 1, 2, 5 x 10^k that gives at most `most` steps over `length`.
double RoundStep(double length, int most) {
  const double least = length / most;
  const double power = std::pow(10.0, std::floor(std::log10(least)));
  for (const double factor : {1.0, 2.0, 5.0}) {
    if (factor * power >= least) return factor * power;
  }
  return 10.0 * power;
}

std::string Label(double value, int decimals) {
  char text[32];
  std::snprintf(text, sizeof(text), "%.*f", decimals, value);
  return text;
}

void Draw(const CurvePlot& plot, const std::string& brand, Canvas& canvas) {
  double low_x = plot.line.front().water_percent;
  double high_x = plot.line.back().water_percent;
  double low_y = 0.0;
  double high_y = 0.1;
  for (const CurvePlot::Line& line : plot.line) {
    low_y = std::min(low_y, line.low);
    high_y = std::max(high_y, std::min(line.high, 2.0));
  }
  for (const CurvePlot::Point& point : plot.points) {
    low_x = std::min(low_x, point.water_percent);
    high_x = std::max(high_x, point.water_percent);
    low_y = std::min(low_y, point.ln_ratio - 2.0 * point.sd);
    high_y = std::max(high_y, point.ln_ratio + 2.0 * point.sd);
  }
  const auto x = [&](double value) {
    return kLeft_px + (value - low_x) / (high_x - low_x) *
                          (kWidth_px - kLeft_px - kRight_px);
  };
  const auto y = [&](double value) {
    return kHeight_px - kBottom_px -
           (std::clamp(value, low_y, high_y) - low_y) / (high_y - low_y) *
               (kHeight_px - kTop_px - kBottom_px);
  };

  std::vector<Spot> area;
  std::vector<Spot> middle;
  for (const CurvePlot::Line& line : plot.line) {
    area.push_back({x(line.water_percent), y(line.low)});
    middle.push_back({x(line.water_percent), y(line.middle)});
  }
  for (std::size_t k = plot.line.size(); k-- > 0;) {
    area.push_back({x(plot.line[k].water_percent), y(plot.line[k].high)});
  }
  canvas.Area(area, kBand);
  const double step = RoundStep(high_x - low_x, 8);
  for (double tick = std::ceil(low_x / step) * step; tick <= high_x;
       tick += step) {
    canvas.Line({x(tick), y(low_y)}, {x(tick), y(high_y)}, kGrid, 1.0);
    canvas.Text({x(tick), kHeight_px - kBottom_px + 20.0},
                Label(tick + 0.0, step < 1.0 ? 1 : 0),
                Anchor::kMiddle);
  }
  for (const double ratio :
       {0.3, 0.5, 0.7, 0.85, 1.0, 1.15, 1.5, 2.0, 3.0, 4.0, 6.0}) {
    const double level = std::log(ratio);
    if (level < low_y || level > high_y) continue;
    canvas.Line({x(low_x), y(level)}, {x(high_x), y(level)}, kGrid, 1.0);
    canvas.Text({kLeft_px - 8.0, y(level) + 5.0},
                Label(ratio, ratio < 3.0 ? 2 : 0),
                Anchor::kEnd);
  }
  canvas.Path(middle, kCurve);
  for (const CurvePlot::Point& point : plot.points) {
    const double at = x(point.water_percent);
    canvas.Line({at, y(point.ln_ratio - 2.0 * point.sd)},
                {at, y(point.ln_ratio + 2.0 * point.sd)},
                kPoint,
                1.0);
    canvas.Disc({at, y(point.ln_ratio)}, 3.5, kPoint);
  }
  canvas.Line({kLeft_px, y(low_y)}, {kLeft_px, y(high_y)}, kInk, 1.0);
  canvas.Line({x(low_x), y(low_y)}, {x(high_x), y(low_y)}, kInk, 1.0);
  canvas.Text({kLeft_px, 24.0},
              brand + ": ratio to the base coat, 95 % band",
              Anchor::kStart);
  canvas.Text({0.5 * (kLeft_px + kWidth_px - kRight_px), kHeight_px - 14.0},
              "mL of water per 100 mL of paint that flows like the base coat",
              Anchor::kMiddle);
}

}  // namespace

Result<std::string> DrawCurvePlot(const CurvePlot& plot,
                                  const std::string& brand,
                                  const std::string& file_name) {
  const auto ends = [&](const char* ending) {
    const std::string suffix = ending;
    if (file_name.size() <= suffix.size()) return false;
    std::string tail = file_name.substr(file_name.size() - suffix.size());
    for (char& c : tail) {
      if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return tail == suffix;
  };
  if (ends(".svg")) {
    SvgCanvas canvas;
    Draw(plot, brand, canvas);
    return canvas.Bytes();
  }
  if (ends(".png")) {
    PictureCanvas canvas;
    Draw(plot, brand, canvas);
    std::string bytes = canvas.Bytes();
    if (bytes.empty()) {
      return Error{ErrorCode::kInternal,
                   "The picture could not be made as PNG; name a file that "
                   "ends in .svg."};
    }
    return bytes;
  }
  return Error{ErrorCode::kInvalidArgument,
               "The plot's file name must end in .svg or .png."};
}

}  // namespace flowkin
