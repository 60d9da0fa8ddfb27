#include "tests/clips/render/stream_scene.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace flowkin::clips {
namespace {

using testing::StickShape;
using testing::StreamPiece;
using testing::StreamSim;
using testing::StreamSimOptions;
using testing::StreamWatch;

double Radians(double deg) { return deg * CV_PI / 180.0; }

// The simulation begins with a meniscus of this height.
constexpr double kMeniscusMm = 1.0;

}  // namespace

StreamRecord::StreamRecord(const StreamSimOptions& options,
                           double interval_s,
                           double after_s,
                           double limit_s)
    : o_(options), interval_s_(interval_s) {
  StreamSim sim(options);
  StreamWatch watch;
  double end = limit_s;
  const auto rows = static_cast<std::size_t>(
      std::ceil((options.fall_height_mm + 3.0) / kRowMm));
  while (sim.time_s() < end) {
    const double next = static_cast<double>(states_.size()) * interval_s_;
    while (sim.time_s() < next - 1e-9) {
      sim.Step(next - sim.time_s());
      watch.See(sim);
    }
    State s;
    s.edge_mm = sim.EdgeHeightMm();
    s.flow_ml_s = sim.FlowMlS();
    s.radius_mm.assign(rows, 0.0f);
    for (const StreamPiece& piece : sim.Pieces()) {
      s.in_pool = s.in_pool || (piece.in_pool && piece.on_stick);
      for (std::size_t i = 0; i + 1 < piece.points.size(); ++i) {
        const auto& a = piece.points[i];
        const auto& b = piece.points[i + 1];
        const double low = std::max(0.0, b.height_mm);
        const int first = static_cast<int>(std::ceil(low / kRowMm - 0.5));
        const int last =
            static_cast<int>(std::floor(a.height_mm / kRowMm - 0.5));
        for (int k = std::max(0, first);
             k <= last && k < static_cast<int>(rows);
             ++k) {
          const double h = (k + 0.5) * kRowMm;
          const double f =
              (h - b.height_mm) / std::max(1e-9, a.height_mm - b.height_mm);
          const double r = b.radius_mm + f * (a.radius_mm - b.radius_mm);
          float& at = s.radius_mm[static_cast<std::size_t>(k)];
          at = std::max(at, static_cast<float>(r));
        }
      }
    }
    states_.push_back(std::move(s));
    if (end == limit_s && !sim.pinches_s().empty()) {
      const auto now = watch.Finish(sim);
      if (now.lasting_break_s >= 0.0) {
        end = std::min(limit_s, now.lasting_break_s + after_s);
      }
    }
  }
  result_ = watch.Finish(sim);
  end_s_ = sim.time_s();
}

const StreamRecord::State& StreamRecord::At(double t_s) const {
  const double at = std::max(0.0, t_s) / interval_s_;
  return states_[std::min(states_.size() - 1,
                          static_cast<std::size_t>(std::lround(at)))];
}

StreamScene::StreamScene(cv::Size size,
                         const StreamLook& look,
                         std::vector<const StreamRecord*> records,
                         double lift_s,
                         StreamStory story,
                         double apart_mm)
    : size_(size),
      look_(look),
      records_(std::move(records)),
      lift_s_(lift_s),
      story_(story),
      apart_mm_(apart_mm) {
  grain_ = SmoothNoise(size_, 5.0, 120.0, look_.seed + 31);
}

cv::Point2d StreamScene::ToPixel(double x_mm, double height_mm) const {
  return {look_.pool_px.x + x_mm / look_.mm_per_px,
          look_.pool_px.y - height_mm * std::cos(Radians(look_.elevation_deg)) /
                                look_.mm_per_px};
}

double StreamScene::StickX(double t) const {
  return look_.sway_mm * (0.7 * std::sin(2 * CV_PI * 0.43 * t + look_.seed) +
                          0.3 * std::sin(2 * CV_PI * 1.7 * t));
}

double StreamScene::EdgeMm(const StreamRecord& record, double t) const {
  const StreamSimOptions& o = record.options();
  const double since = t - lift_s_;
  if (since <= 0.0) {
    // Stands dipped, then is drawn up; full speed when the edge comes out.
    return -o.wetted_length_mm *
           std::tanh(-since * o.lift_speed_mm_s / o.wetted_length_mm);
  }
  const double meniscus_s = kMeniscusMm / o.lift_speed_mm_s;
  if (since < meniscus_s) return since * o.lift_speed_mm_s;
  return record.At(since - meniscus_s).edge_mm;
}

cv::Mat3f StreamScene::Background() {
  cv::Mat3f picture = PaintSurface(size_, look_.background, look_.seed);
  if (look_.background_blur_px > 0.0) {
    cv::GaussianBlur(picture, picture, {}, look_.background_blur_px);
  }
  const double s = 1.0 / look_.mm_per_px;
  const double e = std::sin(Radians(look_.elevation_deg));
  // The table meets the wall behind the container.
  const int horizon =
      std::clamp(static_cast<int>(look_.pool_px.y + (0.2 * look_.body_mm) * s),
                 0,
                 size_.height);
  const cv::Mat3f table = PaintSurface(size_, look_.table, look_.seed + 5);
  if (horizon < size_.height) {
    const cv::Rect lower(0, horizon, size_.width, size_.height - horizon);
    table(lower).copyTo(picture(lower));
    const cv::Rect seam(0, std::max(0, horizon - 20), size_.width, 40);
    const cv::Rect inside = seam & cv::Rect({0, 0}, size_);
    cv::Mat3f soft;
    cv::GaussianBlur(picture(inside), soft, {}, 4.0);
    soft.copyTo(picture(inside));
  }
  pool_mask_ = EmptyMask(size_);
  if (story_ == StreamStory::kTableOnly) return picture;

  const double rim = look_.pool_half_mm + look_.wall_mm + 1.5;
  const cv::Point2d top = ToPixel(0, look_.rim_above_mm);
  const cv::Point2d foot = ToPixel(0, look_.rim_above_mm - look_.body_mm);
  cv::Mat1b mask = EmptyMask(size_);
  FillEllipse(&mask,
              foot + cv::Point2d(9 * s, 1.5 * s),
              rim * look_.taper * s * 1.1,
              rim * look_.taper * e * s * 1.4);
  Shade(&picture, mask, 4.0 * s, 0.55);
  // Body with light from the left, then rim, inner wall, paint.
  cv::Mat3f body(size_);
  for (int x = 0; x < size_.width; ++x) {
    const double q = std::clamp((x - look_.pool_px.x) / (rim * s), -1.0, 1.0);
    const double tone = 0.55 + 0.45 * std::sqrt(1.0 - q * q) - 0.25 * q;
    body.col(x).setTo(look_.container * static_cast<float>(tone));
  }
  mask.setTo(0);
  FillPolygon(&mask,
              {top + cv::Point2d(-rim * s, 0),
               top + cv::Point2d(rim * s, 0),
               foot + cv::Point2d(rim * look_.taper * s, 0),
               foot + cv::Point2d(-rim * look_.taper * s, 0)});
  FillEllipse(&mask, foot, rim * look_.taper * s, rim * look_.taper * e * s);
  BlendPicture(&picture, mask, body);
  mask.setTo(0);
  FillEllipse(&mask, top, rim * s, rim * e * s);
  Blend(&picture, mask, look_.container);
  cv::Mat1b mouth = EmptyMask(size_);
  const double inner = look_.pool_half_mm + 1.0;
  FillEllipse(&mouth, top, inner * s, inner * e * s);
  Blend(&picture, mouth, look_.container * 0.55f);
  FillEllipse(&pool_mask_,
              look_.pool_px,
              look_.pool_half_mm * s,
              look_.pool_half_mm * e * s);
  Intersect(mouth, &pool_mask_);
  cv::Mat3f paint(size_);
  for (int y = 0; y < size_.height; ++y) {
    // The far side mirrors the wall, the near side the lamps.
    const double q = std::clamp(
        (y - look_.pool_px.y) / (look_.pool_half_mm * e * s), -1.0, 1.0);
    paint.row(y).setTo(
        look_.paint * static_cast<float>(0.95 + 0.08 * q) +
        Light::all(static_cast<float>(0.03 * look_.gloss * (1.0 - q))));
  }
  BlendPicture(&picture, pool_mask_, paint);
  // A lamp's image on the paint.
  mask.setTo(0);
  FillEllipse(&mask,
              ToPixel(-0.45 * look_.pool_half_mm, 0) + cv::Point2d(0, 1.0 * s),
              0.28 * look_.pool_half_mm * s,
              0.10 * look_.pool_half_mm * s);
  cv::GaussianBlur(mask, mask, {}, 1.5);
  Intersect(pool_mask_, &mask);
  Blend(&picture, mask, Light::all(1.1f), std::min(1.0, 0.8 * look_.gloss));
  return picture;
}

cv::Rect StreamScene::Region(double) const {
  const cv::Rect whole({0, 0}, size_);
  if (story_ == StreamStory::kTableOnly) return {};
  if (story_ != StreamStory::kTest || look_.grip_above_mm > 0.0) {
    const double s = 1.0 / look_.mm_per_px;
    const double reach = story_ == StreamStory::kTest ? 62.0 : 400.0;
    const double near_side = story_ == StreamStory::kTest ? 22.0 : 400.0;
    const double left = look_.hand_from_right ? near_side : reach;
    const double right = look_.hand_from_right ? reach : near_side;
    const int x0 = static_cast<int>(look_.pool_px.x - left * s);
    const int x1 = static_cast<int>(look_.pool_px.x + right * s);
    return cv::Rect(
               x0, 0, x1 - x0, static_cast<int>(look_.pool_px.y + 12 * s)) &
           whole;
  }
  const double half =
      (records_.empty() ? 12.0
                        : 0.5 * records_[0]->options().stick_width_mm + 6.0) +
      look_.sway_mm + (records_.size() > 1 ? apart_mm_ : 0.0) +
      std::abs(look_.stick_lean) * look_.pool_px.y * look_.mm_per_px;
  const double s = 1.0 / look_.mm_per_px;
  return cv::Rect(static_cast<int>(look_.pool_px.x - half * s),
                  0,
                  static_cast<int>(2 * half * s),
                  static_cast<int>(look_.pool_px.y + 12 * s)) &
         whole;
}

void StreamScene::DrawThread(const StreamRecord& record,
                             double t,
                             double offset_mm,
                             cv::Mat3f* picture) const {
  const double since =
      t - lift_s_ - kMeniscusMm / record.options().lift_speed_mm_s;
  if (since < 0.0) return;
  const StreamRecord::State& state = record.At(since);
  const double s = 1.0 / look_.mm_per_px;
  const double down = std::cos(Radians(look_.elevation_deg)) * s;
  const double edge = state.edge_mm;

  auto row = [&](int y,
                 double from_h,
                 double to_h,
                 double opacity,
                 bool mirrored) {
    // Mean over the states between two heights.
    const int a = std::max(0, static_cast<int>(from_h / StreamRecord::kRowMm));
    const int b =
        std::max(a + 1, static_cast<int>(to_h / StreamRecord::kRowMm));
    const double fall = std::max(0.0, edge - 0.5 * (from_h + to_h)) * 1e-3;
    const double x_mm = offset_mm + StickX(t - std::sqrt(2.0 * fall / 9.81));
    const double centre = look_.pool_px.x + x_mm * s;
    double widest = 0.0;
    const int n = static_cast<int>(state.radius_mm.size());
    for (int k = a; k < b && k < n; ++k) {
      widest = std::max(
          widest,
          static_cast<double>(state.radius_mm[static_cast<std::size_t>(k)]));
    }
    if (widest <= 0.0) return;
    const double r_px = widest * s;
    for (int x = std::max(0, static_cast<int>(centre - r_px - 1));
         x <= std::min(size_.width - 1, static_cast<int>(centre + r_px + 2));
         ++x) {
      double cover = 0.0;
      for (int k = a; k < b && k < n; ++k) {
        const double r =
            static_cast<double>(state.radius_mm[static_cast<std::size_t>(k)]) *
            s;
        cover += std::max(
            0.0, std::min(x + 0.5, centre + r) - std::max(x - 0.5, centre - r));
      }
      cover /= b - a;
      if (cover <= 0.0) continue;
      const double q =
          std::clamp((x - centre) / std::max(r_px, 0.5), -1.0, 1.0);
      Light c =
          look_.paint *
          static_cast<float>(0.70 + 0.32 * std::sqrt(1.0 - q * q) - 0.12 * q);
      // A bright streak where the lamp is mirrored; averages out when thin.
      const double streak = std::exp(-(q + 0.42) * (q + 0.42) / 0.02);
      const double share = r_px > 2.0 ? streak : 0.18;
      c += Light::all(static_cast<float>(0.55 * look_.gloss * share));
      Light& p = (*picture)(y, x);
      if (mirrored && pool_mask_(y, x) < 128) {
        continue;
      }
      p += (c - p) * static_cast<float>(std::min(1.0, cover) * opacity);
    }
  };
  const int lowest = static_cast<int>(std::lround(look_.pool_px.y));
  for (int y = 0; y <= std::min(lowest, size_.height - 1); ++y) {
    const double from_h = (look_.pool_px.y - y - 0.5) / down;
    const double to_h = (look_.pool_px.y - y + 0.5) / down;
    if (from_h > edge || to_h <= 0.0) continue;
    row(y, std::max(0.0, from_h), to_h, 1.0, false);
  }
  if (look_.reflection > 0.0) {
    for (int y = lowest + 1; y < size_.height; ++y) {
      const double h = (y - look_.pool_px.y) / down;
      if (h > edge || h > 15.0) break;
      row(y, h - 0.5 / down, h + 0.5 / down, look_.reflection, true);
    }
  }
  // Where it lands the surface bulges a little and catches light.
  if (state.in_pool && state.flow_ml_s > 0.005) {
    const double size = 0.8 + 1.4 * std::sqrt(state.flow_ml_s);
    cv::Mat1b mask = EmptyMask(size_);
    FillEllipse(&mask,
                ToPixel(offset_mm + StickX(t) - 0.3 * size, 0.1),
                size * s,
                0.35 * size * s);
    cv::GaussianBlur(mask, mask, {}, 1.2);
    Intersect(pool_mask_, &mask);
    Blend(picture, mask, Light::all(0.9f), 0.35 * look_.gloss);
  }
}

void StreamScene::DrawStick(double t,
                            double offset_mm,
                            double edge_mm,
                            const StreamRecord& record,
                            cv::Mat3f* picture) const {
  const StreamSimOptions& o = record.options();
  const double s = 1.0 / look_.mm_per_px;
  const double x_mm = offset_mm + StickX(t);
  const double half = 0.5 * o.stick_width_mm;
  const bool rod = o.stick == StickShape::kRod;
  const double down = std::cos(Radians(look_.elevation_deg)) * s;
  const double age =
      std::max(0.02, t - lift_s_ + o.wetted_length_mm / o.lift_speed_mm_s);
  Light base = FromScreen(200, 160, 108);
  if (look_.stick == "white") base = FromScreen(238, 238, 235);
  if (look_.stick == "steel") base = FromScreen(150, 154, 160);
  if (look_.stick == "dark") base = FromScreen(52, 48, 46);
  const double foot_px = look_.pool_px.y - edge_mm * down;
  const double stop = std::max(edge_mm, 0.0);  // the paint hides the rest
  const int bottom =
      std::min(size_.height - 1,
               static_cast<int>(std::lround(look_.pool_px.y - stop * down)));
  for (int y = 0; y <= bottom; ++y) {
    const double h = (look_.pool_px.y - y) / down;
    const double above_edge = h - edge_mm;
    const double centre =
        look_.pool_px.x + x_mm * s + look_.stick_lean * (y - foot_px);
    const double ragged =
        0.5 * std::sin(1.3 * x_mm + 0.9) + 0.3 * std::sin(above_edge);
    const bool coated =
        above_edge < o.wetted_length_mm + ragged &&
        t > lift_s_ - 1.5 * o.wetted_length_mm / o.lift_speed_mm_s;
    double film = 0.0;
    if (coated) {
      film =
          std::min(o.largest_coat_mm,
                   testing::FilmThicknessMm(
                       o, std::max(0.0, o.wetted_length_mm - above_edge), age));
      // The film ends round the lower edge.
      if (above_edge < 1.0 && edge_mm > 0.0) {
        film *= std::sqrt(std::max(0.0, above_edge));
      }
    }
    double width = half + film;
    if (above_edge < 0.6 && edge_mm > 0.0) {
      // Rounded corners.
      width -=
          0.6 * (1.0 - std::sqrt(std::max(
                           0.0, 1.0 - std::pow(1.0 - above_edge / 0.6, 2.0))));
    }
    for (int x = std::max(0, static_cast<int>(centre - width * s - 1));
         x <=
         std::min(size_.width - 1, static_cast<int>(centre + width * s + 2));
         ++x) {
      const double cover = std::min(x + 0.5, centre + width * s) -
                           std::max(x - 0.5, centre - width * s);
      if (cover <= 0.0) continue;
      const double q = std::clamp((x - centre) / (width * s), -1.0, 1.0);
      Light c;
      const double round = std::sqrt(1.0 - q * q);
      if (coated) {
        c = look_.paint *
            static_cast<float>(rod ? 0.62 + 0.4 * round - 0.12 * q
                                   : 0.95 - 0.06 * q -
                                         0.25 * std::pow(std::abs(q), 8.0));
        const double at = rod ? q + 0.42 : q + 0.8;
        c += Light::all(
            static_cast<float>(0.5 * look_.gloss * std::exp(-at * at / 0.012)));
      } else {
        const int gy =
            std::clamp(y - bottom + size_.height / 2, 0, size_.height - 1);
        const int gx = std::clamp(
            x - static_cast<int>(centre) + size_.width / 2, 0, size_.width - 1);
        const double grain =
            look_.stick == "wood"
                ? 1.0 + 0.10 * static_cast<double>(grain_(gy, gx))
                : 1.0;
        double tone = rod ? 0.6 + 0.42 * round - 0.12 * q : 0.98 - 0.08 * q;
        if (look_.stick == "steel") {
          tone += 0.9 * std::exp(-(q + 0.35) * (q + 0.35) / 0.02) +
                  0.3 * std::exp(-(q - 0.6) * (q - 0.6) / 0.02);
        }
        c = base * static_cast<float>(tone * grain);
      }
      Light& p = (*picture)(y, x);
      p += (c - p) * static_cast<float>(std::min(1.0, cover));
    }
  }
  if (edge_mm <= 0.0) {
    // Contact line: a dark lip of paint round the stick.
    cv::Mat1b mask = EmptyMask(size_);
    FillEllipse(&mask, ToPixel(x_mm, -0.2), (half + 0.8) * s, 0.9 * s);
    Intersect(pool_mask_, &mask);
    Blend(picture, mask, look_.paint * 0.8f, 0.8);
  }
}

void StreamScene::Draw(double t, cv::Mat3f* picture) {
  const double s = 1.0 / look_.mm_per_px;
  if (story_ == StreamStory::kTableOnly) return;
  if (story_ == StreamStory::kHandOnly) {
    // Reaches over the cup twice and goes away.
    const double in = std::abs(std::sin(2 * CV_PI * 0.22 * t));
    DrawHand(picture,
             ToPixel(95.0 - 90.0 * in, 30.0 + 10.0 * std::sin(3.0 * t)),
             16.0 * s,
             look_.glove,
             true);
    return;
  }
  const StreamRecord& first = *records_[0];
  if (story_ == StreamStory::kStirring) {
    const double a = 2 * CV_PI * 1.1 * t;
    const double x = 14.0 * std::cos(a) * std::min(1.0, t / 0.7);
    const double edge = -first.options().wetted_length_mm + 4.0 * std::sin(a);
    DrawStick(t, x, edge, first, picture);
    DrawHand(
        picture,
        ToPixel(x,
                edge + first.options().wetted_length_mm + look_.grip_above_mm),
        14.0 * s,
        look_.glove,
        look_.hand_from_right);
    return;
  }
  for (std::size_t i = 0; i < records_.size(); ++i) {
    const double offset = records_.size() == 1
                              ? 0.0
                              : (i == 0 ? -0.5 * apart_mm_ : 0.5 * apart_mm_);
    const double edge = EdgeMm(*records_[i], t);
    DrawThread(*records_[i], t, offset, picture);
    DrawStick(t, offset, edge, *records_[i], picture);
  }
  if (look_.grip_above_mm > 0.0) {
    const double edge = EdgeMm(first, t);
    DrawHand(
        picture,
        ToPixel(StickX(t),
                edge + first.options().wetted_length_mm + look_.grip_above_mm),
        14.0 * s,
        look_.glove,
        look_.hand_from_right);
  }
}

}  // namespace flowkin::clips
