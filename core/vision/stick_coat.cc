#include "core/vision/stick_coat.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

namespace flowkin {
namespace {

constexpr int kGreySteps = 128;
constexpr double kSamplesPerEFold = 250.0;
constexpr int kMostBands = 9;
// In stick widths: where the lowest band begins, clear of the drop's root and
// the rounded corners; how high a band is; how far to either side it reaches.
constexpr double kFirstBand = 0.2, kBandHeight = 0.55, kReach = 0.95;
// Edges are looked for from here outwards, in stick widths from the middle: the
// grain and the gloss of the stick's face lie further in.
constexpr double kFaceEnd = 0.3;
// An edge stands out of the profile's own scatter by this much, and by this
// many grey levels per pixel.
constexpr double kStandsOut = 4.0, kLeastSlope = 0.8;
// An edge that is followed keeps at least this share of its slope.
constexpr double kKeeps = 0.35;

double MedianSlope(std::vector<float> slopes) {
  for (float& s : slopes) s = std::abs(s);
  const auto middle =
      slopes.begin() + static_cast<std::ptrdiff_t>(slopes.size() / 2);
  std::nth_element(slopes.begin(), middle, slopes.end());
  return *middle;
}

}  // namespace

StickCoat::StickCoat(const StreamEpisode& episode,
                     double stick_lean,
                     cv::Size picture)
    : lift_s_(episode.lift_s),
      center_x_px_(episode.stick_center_x_px),
      bottom_y_px_(episode.stick_bottom_y_px),
      width_px_(episode.stick_width_px),
      lean_(stick_lean),
      half_width_px_(static_cast<int>(kReach * width_px_)),
      band_height_px_(std::max(4, static_cast<int>(kBandHeight * width_px_))) {
  const double room_px =
      std::min(bottom_y_px_, static_cast<double>(picture.height)) -
      kFirstBand * width_px_;
  num_bands_ =
      std::clamp(static_cast<int>(room_px / band_height_px_), 0, kMostBands);
}

void StickCoat::Add(const cv::Mat& luma, double t_s, double shift_px) {
  if (num_bands_ == 0) return;
  if (!samples_.empty() &&
      t_s - samples_.back().t_s < (t_s - lift_s_) / kSamplesPerEFold)
    return;
  const int columns = 2 * half_width_px_ + 1;
  Sample sample;
  sample.t_s = t_s;
  sample.left_px =
      static_cast<int>(std::lround(center_x_px_ + shift_px)) - half_width_px_;
  sample.profile.resize(static_cast<std::size_t>(num_bands_ * columns));
  std::vector<int> sum(static_cast<std::size_t>(columns));
  const int first = static_cast<int>(bottom_y_px_ - kFirstBand * width_px_) - 1;
  for (int band = 0; band < num_bands_; ++band) {
    std::fill(sum.begin(), sum.end(), 0);
    for (int k = 0; k < band_height_px_; ++k) {
      const int y = first - band * band_height_px_ - k;
      const int x = sample.left_px +
                    static_cast<int>(std::lround(lean_ * (y - bottom_y_px_)));
      const auto* row = luma.ptr<std::uint8_t>(std::max(0, y));
      if (x >= 0 && x + columns <= luma.cols) {
        for (int c = 0; c < columns; ++c)
          sum[static_cast<std::size_t>(c)] += row[x + c];
      } else {
        for (int c = 0; c < columns; ++c)
          sum[static_cast<std::size_t>(c)] +=
              row[std::clamp(x + c, 0, luma.cols - 1)];
      }
    }
    for (int c = 0; c < columns; ++c)
      sample.profile[static_cast<std::size_t>(band * columns + c)] =
          static_cast<std::uint16_t>(
              kGreySteps * sum[static_cast<std::size_t>(c)] / band_height_px_);
  }
  samples_.push_back(std::move(sample));
}

// Between neighbouring columns, smoothed over about the width of a sharp edge.
std::vector<float> StickCoat::Slopes(const Sample& sample, int band) const {
  const int columns = 2 * half_width_px_ + 1;
  const auto* p = sample.profile.data() + band * columns;
  std::vector<float> slopes(static_cast<std::size_t>(columns - 1));
  for (int c = 0; c + 1 < columns; ++c)
    slopes[static_cast<std::size_t>(c)] =
        static_cast<float>(p[c + 1] - p[c]) / kGreySteps;
  // Binomial, once per 60 pixels of stick.
  const int times = std::max(1, static_cast<int>(width_px_ / 60.0));
  for (int i = 0; i < times; ++i) {
    float before = slopes.front();
    for (std::size_t c = 1; c + 1 < slopes.size(); ++c) {
      const float here = slopes[c];
      slopes[c] = 0.25F * before + 0.5F * here + 0.25F * slopes[c + 1];
      before = here;
    }
  }
  return slopes;
}

std::vector<StickCoat::Peak> StickCoat::FindPeaks(
    const std::vector<float>& slopes, double least_slope) {
  std::vector<Peak> peaks;
  for (std::size_t c = 2; c + 2 < slopes.size(); ++c) {
    const float before = std::abs(slopes[c - 1]), here = std::abs(slopes[c]),
                after = std::abs(slopes[c + 1]);
    if (here < least_slope || here < before || here <= after) continue;
    const float bend = before - 2.0F * here + after;
    const double aside = bend < 0.0F ? 0.5 * (before - after) / bend : 0.0;
    double step = 0.0;
    const auto add = [&](std::size_t from, int direction) {
      for (auto i = static_cast<std::ptrdiff_t>(from);
           i >= 0 && i < static_cast<std::ptrdiff_t>(slopes.size());
           i += direction) {
        const float s = slopes[static_cast<std::size_t>(i)];
        if (s * slopes[c] <= 0.0F || std::abs(s) < 0.15F * here) break;
        step += static_cast<double>(s);
      }
    };
    add(c, 1);
    add(c - 1, -1);
    // Slope c lies between columns c and c + 1.
    peaks.push_back({static_cast<double>(c) + 0.5 + aside,
                     static_cast<double>(slopes[c]),
                     step});
  }
  return peaks;
}

void StickCoat::FollowBand(int band, StreamEpisode& episode) const {
  // The first few pictures together: a faint edge shows there.
  constexpr std::size_t kFirst = 5;
  std::vector<std::vector<float>> slopes;
  slopes.reserve(samples_.size());
  for (const Sample& sample : samples_) slopes.push_back(Slopes(sample, band));
  std::vector<float> first(slopes.front().size(), 0.0F);
  for (std::size_t i = 0; i < kFirst; ++i)
    for (std::size_t c = 0; c < first.size(); ++c)
      first[c] += slopes[i][c] / kFirst;
  const double least = std::max(kLeastSlope, kStandsOut * MedianSlope(first));
  std::vector<std::vector<Peak>> peaks;
  peaks.reserve(slopes.size());
  for (const auto& s : slopes) peaks.push_back(FindPeaks(s, kKeeps * least));

  const double reach_px = std::max(2.5, 0.04 * width_px_);
  for (const Peak& start : FindPeaks(first, least)) {
    if (std::abs(start.x_px - half_width_px_) < kFaceEnd * width_px_) continue;
    CoatEdge edge;
    edge.band = band;
    edge.side = start.x_px < half_width_px_ ? -1 : 1;
    edge.x_px.reserve(samples_.size());
    double width_px = 0.0;
    std::size_t seen = 0;
    double at_px = start.x_px;
    for (std::size_t i = 0; i < samples_.size(); ++i) {
      const Peak* nearest = nullptr;
      for (const Peak& peak : peaks[i]) {
        if (peak.slope * start.slope < kKeeps * start.slope * start.slope)
          continue;
        if (nearest == nullptr ||
            std::abs(peak.x_px - at_px) < std::abs(nearest->x_px - at_px))
          nearest = &peak;
      }
      if (nearest == nullptr || std::abs(nearest->x_px - at_px) > reach_px) {
        edge.x_px.push_back(std::numeric_limits<float>::quiet_NaN());
        continue;
      }
      at_px += 0.5 * (nearest->x_px - at_px);
      edge.x_px.push_back(
          static_cast<float>(samples_[i].left_px + nearest->x_px));
      width_px += nearest->step / nearest->slope;
      ++seen;
    }
    if (seen * 2 < samples_.size()) continue;
    edge.width_px = width_px / static_cast<double>(seen);
    episode.coat_edges.push_back(std::move(edge));
  }
}

void StickCoat::FollowEdges(StreamEpisode& episode) const {
  if (samples_.size() < 20) return;
  for (const Sample& sample : samples_) episode.coat_t_s.push_back(sample.t_s);
  for (int band = 0; band < num_bands_; ++band) FollowBand(band, episode);
}

}  // namespace flowkin
