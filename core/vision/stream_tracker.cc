#include "core/vision/stream_tracker.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <deque>
#include <limits>
#include <numeric>
#include <opencv2/imgproc.hpp>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/base/estimate.h"
#include "core/vision/stick_coat.h"

namespace flowkin {
namespace {

constexpr int kStripRows = 128;
constexpr double kSamplesPerEFold = 800.0;

struct Reduced {
  double t_s;
  cv::Mat image;
  /// `image` averaged along its columns: upright edges stay, noise goes.
  cv::Mat upright;
};

double MedianOf(std::vector<float>& v) {
  if (v.empty()) return 0.0;
  const auto mid = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
  std::nth_element(v.begin(), mid, v.end());
  return *mid;
}

/// Where a stick's two edges run in a reduced picture.
struct Stance {
  int left, right;    ///< [left, right) in row `pivot`
  double lean = 0.0;  ///< columns to the right per row down
  int pivot = 0;

  int ShiftAt(int row) const {
    return static_cast<int>(std::lround(lean * (row - pivot)));
  }
};

// Difference with row-wise lighting (flicker, rolling-shutter bands, exposure)
// taken out: a stick is narrow against the picture, so a row's median change
// is the lamp's.
cv::Mat LightFreeDifference(const cv::Mat& now, const cv::Mat& before) {
  cv::Mat d;
  cv::subtract(now, before, d, cv::noArray(), CV_16S);
  std::vector<float> row;
  for (int y = 0; y < d.rows; ++y) {
    auto* p = d.ptr<std::int16_t>(y);
    row.clear();
    for (int x = y % 4; x < d.cols; x += 4) row.push_back(p[x]);
    const auto m = static_cast<std::int16_t>(std::lround(MedianOf(row)));
    for (int x = 0; x < d.cols; ++x) p[x] = static_cast<std::int16_t>(p[x] - m);
  }
  return d;
}

double RobustSigma(const cv::Mat& d) {
  std::vector<float> v;
  v.reserve(static_cast<std::size_t>(d.total() / 7 + 1));
  for (int y = 0; y < d.rows; ++y) {
    const auto* p = d.ptr<std::int16_t>(y);
    for (int x = y % 7; x < d.cols; x += 7)
      v.push_back(static_cast<float>(std::abs(p[x])));
  }
  return std::max(0.7, 1.4826 * MedianOf(v));
}

// Less is within reach of EdgeProfile (1.1 degrees); more is no camera that
// somebody set up (8 degrees).
constexpr double kLeastLean = 0.02, kMostLean = 0.14;

/// How the band of what moved leans, from its middle row by row.
Stance FindLean(const cv::Mat& moved, const Stance& plumb) {
  const int width = plumb.right - plumb.left;
  struct Middle {
    double row, column;
  };
  std::vector<Middle> middles;
  for (int y = 0; y < moved.rows; ++y) {
    const auto* p = moved.ptr<std::uint8_t>(y);
    const int from = std::max(0, plumb.left - width / 2);
    const int to = std::min(moved.cols, plumb.right + width / 2);
    int first = from, last = to - 1;
    while (first < to && p[first] == 0) ++first;
    while (last > first && p[last] == 0) --last;
    // Neither a hand nor a piece of the stick.
    if (std::abs(last + 1 - first - width) > width / 4 + 1) continue;
    middles.push_back({static_cast<double>(y), 0.5 * (first + last + 1)});
  }
  const std::size_t half = middles.size() / 2;
  if (half < static_cast<std::size_t>(moved.rows) / 20) return plumb;
  std::vector<float> values;
  for (std::size_t i = 0; i < half; ++i) {
    const Middle &a = middles[i], &b = middles[i + half];
    values.push_back(
        static_cast<float>((b.column - a.column) / (b.row - a.row)));
  }
  const double lean = MedianOf(values);
  if (std::abs(lean) < kLeastLean || std::abs(lean) > kMostLean) return plumb;
  Stance stance = plumb;
  stance.lean = lean;
  values.clear();
  for (const Middle& m : middles)
    values.push_back(
        static_cast<float>(m.column - lean * (m.row - stance.pivot)));
  const double middle = MedianOf(values);
  for (float& v : values) v = std::abs(v - static_cast<float>(middle));
  // A straight stick, or something else.
  if (MedianOf(values) > 1.5) return plumb;
  stance.left = static_cast<int>(std::lround(middle - 0.5 * width));
  stance.right = stance.left + width;
  return stance;
}

/// The tallest band of changed columns between two reduced pictures.
std::optional<Stance> FindBand(const cv::Mat& now, const cv::Mat& before) {
  const cv::Mat d = LightFreeDifference(now, before);
  const double threshold = std::max(6.0, 5.0 * RobustSigma(d));
  cv::Mat changed = cv::abs(d) > threshold;
  // Clean single pixels, then bridge a stick whose middle looks like what
  // stands behind it.
  cv::Mat mask;
  cv::medianBlur(changed, mask, 3);
  const int bridge = std::max(3, now.cols / 24) | 1;
  cv::morphologyEx(mask,
                   mask,
                   cv::MORPH_CLOSE,
                   cv::getStructuringElement(cv::MORPH_RECT, {bridge, 3}));
  cv::Mat columns;
  cv::reduce(mask / 255, columns, 0, cv::REDUCE_SUM, CV_32S);
  const int* n = columns.ptr<int>();
  const int best = static_cast<int>(std::max_element(n, n + columns.cols) - n);
  if (n[best] < now.rows / 10) return std::nullopt;
  Stance band{best, best + 1, 0.0, now.rows / 2};
  while (band.left > 0 && n[band.left - 1] * 2 > n[best]) --band.left;
  while (band.right < now.cols && n[band.right] * 2 > n[best]) ++band.right;
  return FindLean(mask, band);
}

// Enough to be an edge is enough: a plain stretch of stick must not count for
// more than a faint one.
float EdgeStrength(int step) { return static_cast<float>(std::min(step, 10)); }

// Strength of the stick's two edges in each row.
std::vector<float> EdgeProfile(const cv::Mat& image, const Stance& stick) {
  // As far as a hand sways, but not as far in as what hangs from a narrow
  // stick.
  const int out = 3, in = std::clamp((stick.right - stick.left) / 8, 1, 3);
  std::vector<float> e(static_cast<std::size_t>(image.rows), 0.0F);
  for (int y = 0; y < image.rows; ++y) {
    const auto* p = image.ptr<std::uint8_t>(y);
    const int left = stick.left + stick.ShiftAt(y);
    const int right = stick.right + stick.ShiftAt(y);
    const auto strongest = [&](int from, int to) {
      int most = 0;
      for (int x = std::max(1, from); x <= std::min(image.cols - 2, to); ++x)
        most = std::max(most, std::abs(p[x + 1] - p[x - 1]));
      return EdgeStrength(most);
    };
    e[static_cast<std::size_t>(y)] =
        strongest(left - out, left + in) + strongest(right - in, right + out);
  }
  return e;
}

// The same on the way up, when the stick has yet to clear the rows below `end`:
// there only edges count that `raised` lacks, not those of what stands behind
// or of the cup's rim. So they may be looked for as far out as a thick coat
// reaches.
std::vector<float> EdgeProfileOnWay(const cv::Mat& image,
                                    const cv::Mat& raised,
                                    int end,
                                    const Stance& stick) {
  std::vector<float> e = EdgeProfile(image, stick);
  const int width = stick.right - stick.left;
  const int out = std::max(3, width / 3), in = std::clamp(width / 8, 1, 3);
  for (int y = std::max(0, end); y < image.rows; ++y) {
    const auto* p = image.ptr<std::uint8_t>(y);
    const auto* q = raised.ptr<std::uint8_t>(y);
    const int left = stick.left + stick.ShiftAt(y);
    const int right = stick.right + stick.ShiftAt(y);
    const auto strongest = [&](int from, int to) {
      int most = 0;
      for (int x = std::max(1, from); x <= std::min(image.cols - 2, to); ++x) {
        const int edge = p[x + 1] - p[x - 1];
        const int stays = q[x + 1] - q[x - 1];
        most = std::max(most, std::min(std::abs(edge), std::abs(edge - stays)));
      }
      return EdgeStrength(most);
    };
    e[static_cast<std::size_t>(y)] =
        strongest(left - out, left + in) + strongest(right - in, right + out);
  }
  return e;
}

// The row where the edges end: the lowest of the marked falls of edge
// strength, the first one below the stick's end. (Higher falls are the end of
// the coat on the stick.)
int FindEdgeEnd(const std::vector<float>& e, int top, int bottom, int reach) {
  std::vector<double> sum(e.size() + 1, 0.0);
  for (std::size_t i = 0; i < e.size(); ++i) sum[i + 1] = sum[i] + e[i];
  std::vector<double> fall(e.size() + 1, 0.0);
  double largest = 0.0;
  const auto mean = [&](int from, int to) {
    return (sum[static_cast<std::size_t>(to)] -
            sum[static_cast<std::size_t>(from)]) /
           (to - from);
  };
  for (int y = top + reach / 2; y <= bottom - reach / 2; ++y) {
    const double f = mean(std::max(top, y - reach), y) -
                     mean(y, std::min(bottom, y + reach));
    fall[static_cast<std::size_t>(y)] = f;
    largest = std::max(largest, f);
  }
  for (int y = bottom - reach / 2; y >= top + reach / 2; --y) {
    const double f = fall[static_cast<std::size_t>(y)];
    if (f < 0.6 * largest) continue;
    // Climb to the top of this fall.
    int peak = y;
    for (int k = y; k >= std::max(top, y - reach); --k)
      if (fall[static_cast<std::size_t>(k)] >
          fall[static_cast<std::size_t>(peak)])
        peak = k;
    return peak;
  }
  return 0;
}

/// The strip around the stream of one frame, rows averaged into at most
/// kStripRows, columns at full resolution.
struct Strip {
  double t_s = 0.0;
  double shift_px = 0.0;
  double change = 0.0;
  std::vector<std::uint8_t> pixels;  // [row][column]
};

struct StripGeometry {
  int rows = 0, cols = 0;
  int first_row_px = 0, row_height_px = 1;
  int half_width_px = 0;
};

/// From strips to presence and width per piece of the fall.
class StripAnalysis {
 public:
  StripAnalysis(const std::vector<Strip>& strips,
                const StripGeometry& geometry,
                StreamEpisode& episode)
      : strips_(strips), geometry_(geometry), episode_(episode) {}

  void Run() {
    const double height = episode_.pool_y_px - episode_.stick_bottom_y_px;
    const auto row_of = [&](double y_px) {
      return (y_px - geometry_.first_row_px) / geometry_.row_height_px;
    };
    top_ = std::clamp(
        static_cast<int>(row_of(episode_.stick_bottom_y_px + 0.03 * height)) +
            1,
        0,
        geometry_.rows);
    bottom_ = std::clamp(
        static_cast<int>(row_of(episode_.pool_y_px)) + 1, 0, geometry_.rows);
    if (bottom_ - top_ < 2 * kPieces || strips_.size() < 8) return;
    core_ = std::clamp(static_cast<int>(0.2 * episode_.stick_width_px),
                       4,
                       geometry_.half_width_px - 4);
    Center();
    Background();
    Unchanged();
    Present();
    Widths();
  }

 private:
  using Profile = std::vector<float>;  // rows x (2 core + 1), flanks removed

  int Columns() const { return 2 * core_ + 1; }

  // The rows of one strip about column `offset` from its middle, each less
  // the straight line between its flanks.
  Profile Cut(const Strip& strip, int offset) const {
    const int columns = Columns();
    const int left = geometry_.half_width_px + offset - core_;
    Profile out(static_cast<std::size_t>((bottom_ - top_) * columns));
    const auto flank = [&](const std::uint8_t* row, int from) {
      int sum = 0;
      for (int k = 0; k < kFlank; ++k)
        sum += row[std::clamp(from + k, 0, geometry_.cols - 1)];
      return static_cast<float>(sum) / kFlank;
    };
    for (int r = top_; r < bottom_; ++r) {
      const std::uint8_t* row =
          strip.pixels.data() + static_cast<std::size_t>(r) *
                                    static_cast<std::size_t>(geometry_.cols);
      const float a = flank(row, left - kFlank);
      const float b = flank(row, left + columns);
      float* to = out.data() + static_cast<std::size_t>((r - top_) * columns);
      for (int c = 0; c < columns; ++c) {
        const int x = std::clamp(left + c, 0, geometry_.cols - 1);
        to[c] = static_cast<float>(row[x]) -
                (a + (b - a) * static_cast<float>(c) /
                         static_cast<float>(columns - 1));
      }
    }
    return out;
  }

  // Follows the stream sideways by its likeness to what it was a moment ago:
  // it moves with the stick, or it stays where it was in the picture when only
  // the reading of the stick jumped, give or take a pixel.
  void Center() {
    const int limit = geometry_.half_width_px - core_ - kFlank / 2;
    int offset = 0;
    double last_shift_px = strips_.front().shift_px;
    Profile likeness = Cut(strips_.front(), 0);
    for (const Strip& strip : strips_) {
      const int stayed =
          offset -
          static_cast<int>(std::lround(strip.shift_px - last_shift_px));
      Profile best;
      double best_score = -std::numeric_limits<double>::max();
      int best_offset = offset;
      for (const int from : {offset, stayed}) {
        for (int at = from - 1; at <= from + 1; ++at) {
          const int place = std::clamp(at, -limit, limit);
          Profile cut = Cut(strip, place);
          double score = 0.0;
          for (std::size_t i = 0; i < cut.size(); ++i)
            score += static_cast<double>(cut[i]) * likeness[i];
          if (score > best_score) {
            best_score = score;
            best_offset = place;
            best = std::move(cut);
          }
        }
        if (stayed == offset) break;
      }
      offset = best_offset;
      last_shift_px = strip.shift_px;
      for (std::size_t i = 0; i < likeness.size(); ++i)
        likeness[i] += 0.07F * (best[i] - likeness[i]);
      cuts_.push_back(std::move(best));
      episode_.t_s.push_back(strip.t_s);
      episode_.change.push_back(static_cast<float>(strip.change));
      episode_.shift_px.push_back(static_cast<float>(strip.shift_px + offset));
    }
  }

  // What stands behind the stream: the median of the last moments of the
  // clip, when it has gone.
  void Background() {
    const std::size_t n = cuts_.size();
    const double end = episode_.t_s.back();
    std::size_t from = n - std::min<std::size_t>(n, 5);
    while (from > 0 && end - episode_.t_s[from - 1] < 0.4) --from;
    episode_.background_from_s = episode_.t_s[from];
    background_.resize(cuts_.front().size());
    std::vector<float> values(n - from);
    for (std::size_t i = 0; i < background_.size(); ++i) {
      for (std::size_t k = from; k < n; ++k) values[k - from] = cuts_[k][i];
      background_[i] = static_cast<float>(MedianOf(values));
    }
  }

  void Unchanged() {
    episode_.unchanged_s.assign(cuts_.size() * kPieces, 0.0F);
    const auto piece_begin = [&](int piece) {
      return piece * (bottom_ - top_) / kPieces * Columns();
    };
    for (std::size_t i = 1; i < cuts_.size(); ++i)
      for (int p = 0; p < kPieces; ++p) {
        if (!std::equal(cuts_[i].begin() + piece_begin(p),
                        cuts_[i].begin() + piece_begin(p + 1),
                        cuts_[i - 1].begin() + piece_begin(p)))
          continue;
        const std::size_t at = i * kPieces + static_cast<std::size_t>(p);
        episode_.unchanged_s[at] =
            episode_.unchanged_s[at - kPieces] +
            static_cast<float>(episode_.t_s[i] - episode_.t_s[i - 1]);
      }
  }

  // Mean over a piece's rows of `at(i)`.
  template <typename Values>
  std::vector<float> PieceMean(int piece, const Values& at) const {
    const int rows = bottom_ - top_;
    const int r0 = piece * rows / kPieces;
    const int r1 = (piece + 1) * rows / kPieces;
    std::vector<float> mean(static_cast<std::size_t>(Columns()), 0.0F);
    for (int r = r0; r < r1; ++r)
      for (int c = 0; c < Columns(); ++c)
        mean[static_cast<std::size_t>(c)] +=
            at(static_cast<std::size_t>(r * Columns() + c));
    for (float& m : mean) m /= static_cast<float>(r1 - r0);
    return mean;
  }
  std::vector<float> PieceProfile(const Profile& cut, int piece) const {
    return PieceMean(piece,
                     [&](std::size_t i) { return cut[i] - background_[i]; });
  }
  std::vector<float> BackgroundProfile(int piece) const {
    return PieceMean(piece, [&](std::size_t i) { return background_[i]; });
  }

  void Present() {
    const std::size_t n = cuts_.size();
    episode_.num_pieces = kPieces;
    episode_.presence.assign(n * kPieces, 1.0F);
    episode_.presence_sd.assign(n * kPieces, 10.0F);
    episode_.strength.assign(n * kPieces, 0.0F);
    profiles_.resize(kPieces);
    std::vector<std::array<PieceLine, kPieces>> lines(n);
    for (int piece = 0; piece < kPieces; ++piece) {
      const auto at_piece = static_cast<std::size_t>(piece);
      auto& y = profiles_[at_piece];
      for (const Profile& cut : cuts_) y.push_back(PieceProfile(cut, piece));
      const std::vector<float> behind = BackgroundProfile(piece);
      const std::vector<double> behind_line =
          LineContrast({behind.begin(), behind.end()});
      // Noise of one value from neighbouring frames: not from the same
      // picture twice, which a slow codec repeats.
      std::vector<float> steps;
      for (std::size_t i = 2; i < n; ++i)
        for (std::size_t c = 0; c < y[i].size(); c += 3)
          steps.push_back(std::abs(y[i][c] - y[i - 2][c]));
      const double noise = std::max(0.05, 1.4826 * MedianOf(steps) / 1.414);
      for (std::size_t i = 0; i < n; ++i) {
        double power = 0.0;
        for (const float v : y[i]) power += static_cast<double>(v) * v;
        const std::size_t at = i * kPieces + static_cast<std::size_t>(piece);
        episode_.strength[at] = static_cast<float>(
            std::sqrt(power / static_cast<double>(y[i].size())) / noise);
      }
      for (std::size_t i = 1; i < n; ++i) {
        // The stream of a moment ago.
        std::vector<double> then(y[i].size(), 0.0);
        int count = 0;
        for (std::size_t k = i; k-- > 0;) {
          const double ago = episode_.t_s[i] - episode_.t_s[k];
          if (ago > kThenFrom_s && count >= 3) break;
          if (ago < kThenTo_s && i - k < 2) continue;
          if (ago < kThenTo_s && k > 0 && count == 0 &&
              episode_.t_s[i] - episode_.t_s[k - 1] < kThenFrom_s)
            continue;
          for (std::size_t c = 0; c < then.size(); ++c) then[c] += y[k][c];
          ++count;
        }
        if (count < 2) continue;
        double power = 0.0, now = 0.0;
        for (std::size_t c = 0; c < then.size(); ++c) {
          then[c] /= count;
          power += then[c] * then[c];
          now += then[c] * y[i][c];
        }
        lines[i][at_piece] = FindLine(then, behind, behind_line);
        const std::size_t at = i * kPieces + static_cast<std::size_t>(piece);
        // The template's own noise adds to its power.
        const double own =
            noise * noise * static_cast<double>(then.size()) / count;
        if (power < 4.0 * own) continue;
        episode_.presence[at] = static_cast<float>(now / power);
        episode_.presence_sd[at] = static_cast<float>(noise / std::sqrt(power));
      }
    }
    for (const auto& line : lines) {
      const Estimate left = LineLeft(line);
      episode_.line_left.push_back(static_cast<float>(left.value));
      episode_.line_left_sd.push_back(static_cast<float>(left.sd));
    }
  }

  /// The stream of a moment ago in one piece: contrast of its line, and what of
  /// it is there at the end of the clip a pixel to the left, in place, a pixel
  /// to the right.
  struct PieceLine {
    double then = 0.0;
    std::array<double, 3> at_end{};
  };

  // `then` lacks what stands behind; the contrast of a thread wider than a
  // pixel does not change while it thins, so the difference alone would not
  // tell a thinner thread from none.
  PieceLine FindLine(std::vector<double> then,
                     const std::vector<float>& behind,
                     const std::vector<double>& behind_line) const {
    for (std::size_t c = 0; c < then.size(); ++c) then[c] += behind[c];
    const std::vector<double> line = LineContrast(then);
    const auto peak = std::max_element(
        line.begin() + 1, line.end() - 1, [](double a, double b) {
          return std::abs(a) < std::abs(b);
        });
    PieceLine found{std::abs(*peak), {}};
    const auto left = behind_line.begin() + (peak - line.begin()) - 1;
    for (std::size_t k = 0; k < found.at_end.size(); ++k)
      found.at_end[k] = std::copysign(1.0, *peak) * left[static_cast<int>(k)];
    return found;
  }

  // Of a narrow upright line at each column against both its sides.
  std::vector<double> LineContrast(const std::vector<double>& profile) const {
    const int half = std::max(
        1, static_cast<int>(std::lround(episode_.stick_width_px / 60.0)));
    const int count = static_cast<int>(profile.size());
    // Nothing stands out beyond the flanks.
    const auto mean = [&](int from, int to) {
      double sum = 0.0;
      for (int c = std::max(0, from); c <= std::min(count - 1, to); ++c)
        sum += profile[static_cast<std::size_t>(c)];
      return sum / (to - from + 1);
    };
    std::vector<double> contrast(profile.size());
    for (int c = 0; c < count; ++c)
      contrast[static_cast<std::size_t>(c)] =
          mean(c - half, c + half) -
          0.5 * (mean(c - 3 * half - 1, c - 2 * half - 1) +
                 mean(c + 2 * half + 1, c + 3 * half + 1));
    return contrast;
  }

  // Median over the fall, of the shift that leaves most. What hangs from the
  // stick stays.
  static Estimate LineLeft(std::span<const PieceLine> lines) {
    Estimate most{-std::numeric_limits<double>::max(), 0.0};
    std::vector<float> left(lines.size() - lines.size() / 7);
    for (std::size_t shift = 0; shift < 3; ++shift) {
      std::transform(
          lines.end() - static_cast<std::ptrdiff_t>(left.size()),
          lines.end(),
          left.begin(),
          [shift](const PieceLine& l) {
            return static_cast<float>(l.at_end[shift] / std::max(0.01, l.then));
          });
      const double median = MedianOf(left);
      if (median < most.value) continue;
      for (float& v : left) v = std::abs(v - static_cast<float>(median));
      // Of a median of normal values, from their median distance.
      most = {median,
              1.25 * 1.4826 * MedianOf(left) /
                  std::sqrt(static_cast<double>(left.size()))};
    }
    return most;
  }

  // Width at half contrast: does not care how strong the contrast is, only
  // where it falls off on both sides.
  void Widths() {
    const std::size_t n = cuts_.size();
    episode_.width_px.assign(n * kPieces, -1.0F);
    const int columns = Columns();
    for (int piece = 0; piece < kPieces; ++piece) {
      const auto& y = profiles_[static_cast<std::size_t>(piece)];
      // A short running mean against noise.
      for (std::size_t i = 2; i + 2 < n; ++i) {
        std::vector<double> mean(static_cast<std::size_t>(columns), 0.0);
        for (std::size_t k = i - 2; k <= i + 2; ++k)
          for (std::size_t c = 0; c < mean.size(); ++c) mean[c] += y[k][c] / 5;
        int peak = core_;
        for (int c = core_ - 3; c <= core_ + 3; ++c)
          if (std::abs(mean[static_cast<std::size_t>(c)]) >
              std::abs(mean[static_cast<std::size_t>(peak)]))
            peak = c;
        const double top = mean[static_cast<std::size_t>(peak)];
        if (std::abs(top) < 4.0) continue;
        const auto side = [&](int step) {
          for (int c = peak; c > 0 && c + 1 < columns; c += step) {
            const double here = mean[static_cast<std::size_t>(c)] / top;
            const double next = mean[static_cast<std::size_t>(c + step)] / top;
            if (next < 0.5)
              return std::abs(c - peak) + (here - 0.5) / (here - next);
          }
          return -1.0;
        };
        const double left = side(-1), right = side(1);
        if (left < 0 || right < 0) continue;
        episode_.width_px[i * kPieces + static_cast<std::size_t>(piece)] =
            static_cast<float>(left + right);
      }
    }
  }

  static constexpr int kPieces = 28;
  static constexpr int kFlank = 6;
  static constexpr double kThenFrom_s = 0.35;
  static constexpr double kThenTo_s = 0.05;

  const std::vector<Strip>& strips_;
  const StripGeometry& geometry_;
  StreamEpisode& episode_;
  int top_ = 0, bottom_ = 0, core_ = 0;
  std::vector<Profile> cuts_;
  Profile background_;
  std::vector<std::vector<std::vector<float>>> profiles_;
};

// Where the dipped stick met the paint: the row its edges ended at most often
// while they ended lower than `least`.
std::optional<double> FindPool(const std::vector<double>& ends, double least) {
  const double lowest = *std::max_element(ends.begin(), ends.end());
  std::vector<int> votes(static_cast<std::size_t>(lowest) + 3, 0);
  for (const double row : ends)
    if (row > least) ++votes[static_cast<std::size_t>(row)];
  int best = 2;
  std::optional<double> pool;
  for (std::size_t y = 1; y + 1 < votes.size(); ++y) {
    const int v = votes[y - 1] + votes[y] + votes[y + 1];
    if (v > best) {
      best = v;
      pool = static_cast<double>(y);
    }
  }
  return pool;
}

// There must be a stick above where it is said to end.
bool StandsAbove(const std::vector<float>& edges, int end, int width) {
  const int from = std::max(0, end - 2 * width);
  int seen = 0;
  for (int y = from; y < end; ++y)
    seen += edges[static_cast<std::size_t>(y)] > 7.0F ? 1 : 0;
  return seen * 10 >= (end - from) * 6;
}

}  // namespace

class StreamTracker::Impl {
 public:
  explicit Impl(const StreamTrackerOptions& options) : options_(options) {}

  void Add(const Frame& frame) {
    Reduced now{frame.TimeS(), Reduce(frame.luma), {}};
    cv::blur(now.image, now.upright, {1, 7});
    ++track_.num_frames;
    track_.duration_s = now.t_s;
    track_.width_px = frame.luma.cols;
    track_.height_px = frame.luma.rows;
    if (!ring_.empty())
      change_ = cv::norm(now.image, ring_.back().image, cv::NORM_L1) /
                static_cast<double>(now.image.total());
    if (now.t_s >= next_check_s_ && ring_.size() > 4) {
      next_check_s_ = now.t_s + 1.0 / 12.0;
      if (++checks_ % 4 == 0) Look(now);
      Check(now, frame);
    }
    if (recording_) Record(frame);
    if (ring_.empty() || now.t_s - ring_.back().t_s > 1.0 / 70.0) {
      while (!ring_.empty() &&
             now.t_s - ring_.front().t_s > options_.look_back_s)
        ring_.pop_front();
      ring_.push_back(std::move(now));
    }
  }

  std::optional<StreamPlace> Place() const {
    if (!recording_) return std::nullopt;
    return StreamPlace{episode_.stick_center_x_px + shift_px_,
                       episode_.stick_width_px,
                       episode_.stick_bottom_y_px,
                       episode_.stream_x_px + shift_px_,
                       episode_.stream_lean,
                       episode_.pool_y_px};
  }

  StreamTrack Finish() {
    EndEpisode();
    if (looks_ > 0) {
      track_.mean_luma /= looks_;
      track_.luma_spread /= looks_;
      track_.sharpness /= looks_;
    }
    return std::move(track_);
  }

 private:
  // Halving again and again is far quicker than one odd factor.
  cv::Mat Reduce(const cv::Mat& luma) {
    cv::Mat image = luma;
    for (factor_ = 1; std::max(image.rows, image.cols) > 640; factor_ *= 2) {
      cv::Mat half;
      cv::resize(
          image, half, {image.cols / 2, image.rows / 2}, 0, 0, cv::INTER_AREA);
      image = half;
    }
    return factor_ == 1 ? luma.clone() : image;
  }

  // What the picture as a whole is like, for the words of a refusal.
  void Look(const Reduced& now) {
    cv::Scalar mean, spread;
    cv::meanStdDev(now.image, mean, spread);
    cv::Mat detail;
    cv::Laplacian(now.image, detail, CV_16S);
    track_.mean_luma += mean[0];
    track_.luma_spread += spread[0];
    track_.sharpness += cv::mean(cv::abs(detail))[0] / std::max(1.0, spread[0]);
    ++looks_;
    const Reduced* before = &ring_.front();
    for (const Reduced& r : ring_)
      if (now.t_s - r.t_s >= 0.1) before = &r;
    const cv::Mat d = LightFreeDifference(now.image, before->image);
    const cv::Mat moved = cv::abs(d) > std::max(8.0, 6.0 * RobustSigma(d));
    track_.most_motion = std::max(track_.most_motion,
                                  static_cast<double>(cv::countNonZero(moved)) /
                                      static_cast<double>(moved.total()));
  }

  void Check(const Reduced& now, const Frame& frame) {
    const Reduced& before = ring_.front();
    // The same lift is seen until it has left the ring.
    if (recording_ && before.t_s < episode_.rest_s) return;
    const auto band = FindBand(now.image, before.image);
    if (!band || band->right - band->left < 6) return;
    const int width = band->right - band->left;
    if (recording_ && width * factor_ < 0.6 * episode_.stick_width_px) return;
    const int rows = now.image.rows;
    const auto end_of = [&](const cv::Mat& image) {
      return FindEdgeEnd(EdgeProfile(image, *band), 0, rows, width);
    };
    const int end_now = end_of(now.upright);
    if (!StandsAbove(EdgeProfile(now.upright, *band), end_now, width)) return;
    // At rest: the end has not moved for a while.
    for (std::size_t i = ring_.size(); i-- > 0 && now.t_s - ring_[i].t_s < 0.2;)
      if (std::abs(end_of(ring_[i].upright) - end_now) > 2) return;
    std::vector<double> t, b, on_way;
    for (const Reduced& r : ring_) {
      t.push_back(r.t_s);
      b.push_back(end_of(r.upright));
      on_way.push_back(
          FindEdgeEnd(EdgeProfileOnWay(r.upright, now.upright, end_now, *band),
                      0,
                      rows,
                      width));
    }
    const double least = end_now + 0.06 * rows;
    const std::optional<double> pool = FindPool(b, least);
    const std::optional<double> left_at = FindPool(on_way, least);
    if (!pool || !left_at) return;
    // What retreats into the stick's end after the break is no stick: the paint
    // it is lifted from does not stand in the upper half of the fall.
    if (recording_ && *pool * factor_ < 0.5 * (episode_.stick_bottom_y_px +
                                               episode_.pool_y_px))
      return;
    StreamEpisode e;
    e.rest_s = now.t_s;
    e.stick_center_x_px =
        (0.5 * (band->left + band->right) + band->ShiftAt(end_now)) * factor_;
    e.stick_width_px = width * factor_;
    e.stick_bottom_y_px = end_now * factor_;
    e.pool_y_px = *pool * factor_;
    FitLift(t, on_way, end_now, *left_at, e);
    if (!e.lift_seen) {
      ++track_.rests_without_lift;
      return;
    }
    EndEpisode();
    Start(frame, e, band->lean);
  }

  // The lower edge's way up is close to a straight line: a robust fit through
  // the middle of it, prolonged to the paint's surface. The upper end of the
  // coat runs ahead on a parallel way and is often the plainer of the two, so
  // of the well-supported lines the last one counts.
  static void FitLift(const std::vector<double>& t,
                      const std::vector<double>& b,
                      double end,
                      double pool,
                      StreamEpisode& e) {
    const double height = pool - end;
    const double tolerance = 0.03 * height + 1.0;
    struct Line {
      double cross_s, slope, score;
      int n;
    };
    std::vector<Line> lines;
    double best = 0.0;
    for (std::size_t i = 0; i < t.size(); ++i) {
      if (b[i] <= end + 0.1 * height || b[i] >= pool - 0.04 * height) continue;
      for (std::size_t j = i + 1; j < t.size(); ++j) {
        if (b[j] <= end + 0.1 * height || b[j] >= pool - 0.04 * height)
          continue;
        const double slope = (b[j] - b[i]) / (t[j] - t[i]);  // rows per second
        if (slope > -0.25 * height) continue;
        Line line{t[i] + (pool - b[i]) / slope, slope, 0.0, 0};
        if (line.cross_s < t.front()) continue;
        double highest = pool;
        for (std::size_t k = 0; k < t.size(); ++k) {
          const double fit = pool + slope * (t[k] - line.cross_s);
          if (fit > pool || fit < end + 0.25 * height) continue;
          const double miss = (b[k] - fit) / tolerance;
          if (std::abs(miss) < 1.0) {
            line.score += 1.0 - miss * miss;
            ++line.n;
            highest = std::min(highest, b[k]);
          } else {
            line.score -= 0.7;
          }
        }
        // Followed a good part of the way, not a step down low.
        if (line.n < 3 || highest > pool - 0.4 * height) continue;
        best = std::max(best, line.score);
        lines.push_back(line);
      }
    }
    if (lines.empty()) {
      FitFewPictures(t, b, end, pool, e);
      return;
    }
    // The mean of the lines of the last group, weighted by their support.
    double last = -1.0;
    for (const Line& l : lines)
      if (l.score > 0.5 * best) last = std::max(last, l.cross_s);
    if (last < 0.0) return;
    double sum = 0.0, weight = 0.0, square = 0.0, slope = 0.0;
    for (const Line& l : lines) {
      if (l.score <= 0.5 * best ||
          l.cross_s < last - 2.0 * tolerance / std::abs(l.slope))
        continue;
      const double w = l.score * l.score;
      sum += w * l.cross_s;
      square += w * l.cross_s * l.cross_s;
      slope += w * std::abs(l.slope);
      weight += w;
    }
    e.lift_seen = true;
    e.lift_s = sum / weight;
    const double spread = square / weight - e.lift_s * e.lift_s;
    e.lift_sd_s =
        std::sqrt(std::max(0.0, spread)) + 1.0 / (slope / weight);  // one row
  }

  // A quick lift before a slow camera: a way up of two or three pictures. It
  // counts where their straight line leaves the paint about when the end was
  // last seen there, give or take a picture.
  static void FitFewPictures(const std::vector<double>& t,
                             const std::vector<double>& b,
                             double end,
                             double pool,
                             StreamEpisode& e) {
    const double height = pool - end;
    std::size_t last = b.size();
    while (last > 0 && b[last - 1] < pool - 0.04 * height) --last;
    std::size_t up = last;
    while (up < b.size() && b[up] > end + 0.1 * height) ++up;
    if (last == 0 || up < last + 2) return;
    // Up without a halt, and no way back.
    for (std::size_t i = last; i < up; ++i)
      if (b[i] > b[i - 1] - 0.04 * height) return;
    for (std::size_t i = up; i < b.size(); ++i)
      if (b[i] > end + 0.1 * height) return;
    const double slope = (b[up - 1] - b[up - 2]) / (t[up - 1] - t[up - 2]);
    const double cross_s = t[up - 1] + (pool - b[up - 1]) / slope;
    const double picture_s = t[last] - t[last - 1];
    if (cross_s < t[last - 1] - picture_s || cross_s > t[last] + picture_s)
      return;
    e.lift_seen = true;
    e.lift_s = std::clamp(cross_s, t[last - 1], t[last]);
    e.lift_sd_s = picture_s;
  }

  void Start(const Frame& frame,
             const StreamEpisode& episode,
             double stick_lean) {
    episode_ = episode;
    recording_ = true;
    strips_.clear();
    StripGeometry& g = geometry_;
    g.half_width_px =
        std::clamp(static_cast<int>(0.45 * episode.stick_width_px), 14, 48);
    g.cols = 2 * g.half_width_px + 1;
    const double height = episode.pool_y_px - episode.stick_bottom_y_px;
    g.first_row_px = std::max(
        0, static_cast<int>(episode.stick_bottom_y_px - 0.05 * height));
    const int end = std::min(
        frame.luma.rows, static_cast<int>(episode.pool_y_px + 0.05 * height));
    g.row_height_px =
        std::max(1, (end - g.first_row_px + kStripRows - 1) / kStripRows);
    g.rows = (end - g.first_row_px) / g.row_height_px;
    FindStream(frame.luma, stick_lean);
    reference_ = StickProfile(frame.luma);
    episode_.edge_width_px = EdgeWidth(reference_);
    shift_px_ = 0.0;
    coat_ = StickCoat(episode_, stick_lean, frame.luma.size());
  }

  void EndEpisode() {
    if (!recording_) return;
    recording_ = false;
    if (strips_.empty()) return;
    FindSecondStream();
    StripAnalysis(strips_, geometry_, episode_).Run();
    coat_.FollowEdges(episode_);
    if (episode_.num_pieces > 0) track_.episodes.push_back(std::move(episode_));
    episode_ = {};
    strips_.clear();
  }

  // Where the stream falls: the strongest narrow line under the stick. It leans
  // with the stick if the camera is held askew, else it is plumb.
  void FindStream(const cv::Mat& luma, double stick_lean) {
    // Under the stick, not beside it.
    const auto margin =
        static_cast<std::ptrdiff_t>(2.4 * episode_.stick_width_px);
    float most = 0.0F;
    const auto look = [&](double lean) {
      const std::vector<float> power = LinePower(luma, lean);
      const auto best =
          std::max_element(power.begin() + margin, power.end() - margin);
      if (*best < most) return;
      most = *best;
      episode_.stream_x_px =
          LinePowerLeft() + static_cast<double>(best - power.begin());
      episode_.stream_lean = lean;
    };
    look(0.0);
    if (stick_lean != 0.0) look(stick_lean);
  }

  int LinePowerLeft() const {
    return static_cast<int>(episode_.stick_center_x_px -
                            3.0 * episode_.stick_width_px);
  }

  // Strength of a narrow line that leans this much, by its column at the
  // stick's end.
  std::vector<float> LinePower(const cv::Mat& luma, double lean) const {
    const int y0 = static_cast<int>(
        episode_.stick_bottom_y_px +
        0.1 * (episode_.pool_y_px - episode_.stick_bottom_y_px));
    const int y1 = static_cast<int>(episode_.pool_y_px);
    const int x0 = LinePowerLeft();
    const int count = static_cast<int>(6.0 * episode_.stick_width_px);
    const int line = LineWidth();
    const auto aside = [&](int y) {
      return static_cast<int>(
          std::lround(lean * (y - episode_.stick_bottom_y_px)));
    };
    const int reach = 3 * line + std::abs(aside(y1));
    std::vector<float> power(static_cast<std::size_t>(count), 0.0F);
    for (int i = 0; i < count; ++i) {
      const int x = x0 + i;
      if (x - reach < 0 || x + reach >= luma.cols) continue;
      int sum = 0;
      for (int y = y0; y < y1; y += 2) {
        const auto* p = luma.ptr<std::uint8_t>(y) + x + aside(y);
        int middle = 0, sides = 0;
        for (int k = -line / 2; k <= line / 2; ++k) {
          middle += 2 * p[k];
          sides += p[k - 2 * line] + p[k + 2 * line];
        }
        sum += std::abs(middle - sides);
      }
      power[static_cast<std::size_t>(i)] = static_cast<float>(sum);
    }
    return power;
  }

  int LineWidth() const {
    return std::max(2, static_cast<int>(episode_.stick_width_px / 12));
  }

  // Lines that stood beside the stream at first and are gone at the end.
  void FindSecondStream() {
    std::vector<float> lost(first_lines_.size());
    for (std::size_t i = 0; i < lost.size(); ++i)
      lost[i] = first_lines_[i] - last_lines_[i];
    const auto main = std::max_element(lost.begin(), lost.end());
    if (main == lost.end() || *main <= 0.0F) return;
    const auto apart = static_cast<std::ptrdiff_t>(4 * LineWidth());
    float second = 0.0F;
    for (auto i = lost.begin() + 1; i + 1 < lost.end(); ++i)
      if (std::abs(i - main) > apart && *i >= i[-1] && *i >= i[1])
        second = std::max(second, *i);
    episode_.second_stream = second / *main;
  }

  std::vector<float> StickProfile(const cv::Mat& luma) const {
    const double w = episode_.stick_width_px;
    const int y0 =
        std::max(0, static_cast<int>(episode_.stick_bottom_y_px - 0.9 * w));
    const int y1 = std::max(
        y0 + 4, static_cast<int>(episode_.stick_bottom_y_px - 0.15 * w));
    const int x0 =
        std::max(0, static_cast<int>(episode_.stick_center_x_px - w));
    const int x1 =
        std::min(luma.cols, static_cast<int>(episode_.stick_center_x_px + w));
    cv::Mat profile;
    cv::reduce(luma(cv::Range(y0, y1), cv::Range(x0, x1)),
               profile,
               0,
               cv::REDUCE_AVG,
               CV_32F);
    std::vector<float> g(static_cast<std::size_t>(profile.cols), 0.0F);
    for (int x = 1; x + 1 < profile.cols; ++x)
      g[static_cast<std::size_t>(x)] =
          profile.at<float>(x + 1) - profile.at<float>(x - 1);
    return g;
  }

  // Change across an edge over its steepest slope, the softer of the two.
  static double EdgeWidth(const std::vector<float>& gradient) {
    const auto half =
        gradient.begin() + static_cast<std::ptrdiff_t>(gradient.size() / 2);
    const auto width = [](auto from, auto to) {
      float sum = 0.0F, steepest = 0.0F;
      for (auto g = from; g != to; ++g)
        steepest = std::max(steepest, std::abs(*g));
      // The edge itself, not the wood's grain beside it.
      for (auto g = from; g != to; ++g)
        if (std::abs(*g) > 0.25F * steepest) sum += std::abs(*g);
      return steepest > 0.0F ? sum / steepest : 0.0F;
    };
    return std::max(width(gradient.begin(), half), width(half, gradient.end()));
  }

  // None where the best place is the last one tried: too faint an edge.
  std::optional<double> EdgeShift(const std::vector<float>& now,
                                  int from,
                                  int to) const {
    const int reach = 6;
    const int around = static_cast<int>(std::lround(shift_px_));
    std::array<double, 2 * reach + 1> miss{};
    for (int d = -reach; d <= reach; ++d) {
      double sum = 0.0;
      int count = 0;
      for (int x = from; x < to; ++x) {
        const int xx = x + d + around;
        if (xx < 0 || xx >= static_cast<int>(now.size())) continue;
        const double m = now[static_cast<std::size_t>(xx)] -
                         reference_[static_cast<std::size_t>(x)];
        sum += std::min(m * m, 400.0);
        ++count;
      }
      miss[static_cast<std::size_t>(d + reach)] =
          count > 0 ? sum / count : 400.0;
    }
    const auto best = std::min_element(miss.begin(), miss.end());
    if (best == miss.begin() || best + 1 == miss.end()) return std::nullopt;
    double shift = static_cast<double>(best - miss.begin());
    const double curve = best[-1] - 2 * best[0] + best[1];
    if (curve > 0) shift += 0.5 * (best[-1] - best[1]) / curve;
    return shift - reach + around;
  }

  void Record(const Frame& frame) {
    // Sideways shift of the stick: the mean of its two edges, so that a coat
    // that drains and narrows does not count.
    const std::vector<float> now = StickProfile(frame.luma);
    const int n = static_cast<int>(std::min(now.size(), reference_.size()));
    const auto left = EdgeShift(now, 0, n / 2);
    const auto right = EdgeShift(now, n / 2, n);
    if (left && right) shift_px_ = 0.5 * (*left + *right);
    const double t_s = frame.TimeS();
    coat_.Add(frame.luma, t_s, shift_px_);
    if (!strips_.empty() &&
        t_s - strips_.back().t_s < (t_s - episode_.lift_s) / kSamplesPerEFold)
      return;
    if (strips_.size() % 8 == 0) {
      const std::vector<float> lines =
          LinePower(frame.luma, episode_.stream_lean);
      if (strips_.empty()) first_lines_ = last_lines_ = lines;
      for (std::size_t i = 0; i < lines.size(); ++i)
        last_lines_[i] += 0.4F * (lines[i] - last_lines_[i]);
    }
    Strip strip{t_s, std::round(shift_px_), change_, {}};
    const StripGeometry& g = geometry_;
    strip.pixels.resize(static_cast<std::size_t>(g.rows * g.cols));
    const int x0 =
        static_cast<int>(std::lround(episode_.stream_x_px + shift_px_)) -
        g.half_width_px;
    std::vector<int> sum(static_cast<std::size_t>(g.cols));
    for (int r = 0; r < g.rows; ++r) {
      std::fill(sum.begin(), sum.end(), 0);
      for (int k = 0; k < g.row_height_px; ++k) {
        const int y = g.first_row_px + r * g.row_height_px + k;
        const int x = x0 + static_cast<int>(std::lround(episode_.AsidePx(y)));
        const auto* p = frame.luma.ptr<std::uint8_t>(y);
        for (int c = 0; c < g.cols; ++c)
          sum[static_cast<std::size_t>(c)] +=
              p[std::clamp(x + c, 0, frame.luma.cols - 1)];
      }
      for (int c = 0; c < g.cols; ++c)
        strip.pixels[static_cast<std::size_t>(r * g.cols + c)] =
            static_cast<std::uint8_t>(
                (sum[static_cast<std::size_t>(c)] + g.row_height_px / 2) /
                g.row_height_px);
    }
    strips_.push_back(std::move(strip));
  }

  StreamTrackerOptions options_;
  StreamTrack track_;
  int factor_ = 1;
  int looks_ = 0, checks_ = 0;
  double change_ = 0.0;
  bool recording_ = false;
  double next_check_s_ = 0.0;
  std::deque<Reduced> ring_;
  StreamEpisode episode_;
  StripGeometry geometry_;
  std::vector<Strip> strips_;
  StickCoat coat_;
  double shift_px_ = 0.0;
  std::vector<float> reference_;
  std::vector<float> first_lines_, last_lines_;
};

StreamTracker::StreamTracker(const StreamTrackerOptions& options)
    : impl_(std::make_unique<Impl>(options)) {}
StreamTracker::~StreamTracker() = default;
StreamTracker::StreamTracker(const StreamTracker& other)
    : impl_(std::make_unique<Impl>(*other.impl_)) {}
StreamTracker::StreamTracker(StreamTracker&&) noexcept = default;
StreamTracker& StreamTracker::operator=(StreamTracker&&) noexcept = default;
void StreamTracker::Add(const Frame& frame) { impl_->Add(frame); }
std::optional<StreamPlace> StreamTracker::Place() const {
  return impl_->Place();
}
StreamTrack StreamTracker::Finish() { return impl_->Finish(); }

}  // namespace flowkin
