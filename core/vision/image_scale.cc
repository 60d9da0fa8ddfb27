#include "core/vision/image_scale.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <cstdio>
#include <numeric>
#include <vector>

namespace flowkin {
namespace {

constexpr double kTwoPi = 6.283185307179586;
constexpr double kLeastPitchPx = 2.6;
constexpr double kLeastCorrelation = 0.35;
constexpr int kLeastMarks = 20;
// A camera set up over the tile by eye is square to it within about two
// degrees (standard deviation; our assumption, no source) and sees about as
// far as its picture is long (a phone's main lens, common practice).
constexpr double kCameraTiltSd = 0.03;
constexpr double kFocalLengths = 0.9;
// Print, thickness and lie of the ruler (common practice, no source).
constexpr double kRulerRelSd = 0.002;

struct Comb {
  int row = 0;
  int begin = 0, end = 0;  // columns
  double pitch = 0.0;
  double strength = 0.0;
};

struct FoundRuler {
  double pitch_px = 0.0;      // along the rows' direction, at the target
  double pitch_rel_sd = 0.0;  // of the fit
  double angle_rad = 0.0;     // of the ruler against the rows
  double x0 = 0.0, x1 = 0.0;  // ends
  double row = 0.0;
  double marks = 0.0;
  int hierarchy = 0;  // 10: millimetres; 2: halves; 0: marks alike
  double score = 0.0;
};

// Row minus its mean over about `width` px.
void HighPass(const unsigned char* row, int n, int width, float* out) {
  std::vector<double> sum(static_cast<std::size_t>(n) + 1, 0.0);
  for (int i = 0; i < n; ++i) {
    sum[static_cast<std::size_t>(i) + 1] =
        sum[static_cast<std::size_t>(i)] + row[i];
  }
  for (int i = 0; i < n; ++i) {
    const int a = std::max(0, i - width / 2),
              b = std::min(n, i + width / 2 + 1);
    const double mean =
        (sum[static_cast<std::size_t>(b)] - sum[static_cast<std::size_t>(a)]) /
        (b - a);
    out[i] = static_cast<float>(row[i] - mean);
  }
}

// Smallest lag at which the piece repeats; 0 if it does not.
double PitchOf(const std::vector<float>& piece, double* strength) {
  const int n = static_cast<int>(piece.size());
  // Half a grey level of noise everywhere is no comb.
  if (std::inner_product(piece.begin(), piece.end(), piece.begin(), 0.0F) <
      1.0F * static_cast<float>(n)) {
    return 0.0;
  }
  const int m = cv::getOptimalDFTSize(2 * n);
  cv::Mat padded(1, m, CV_32F, cv::Scalar(0));
  std::copy(piece.begin(), piece.end(), padded.ptr<float>(0));
  cv::Mat spectrum;
  cv::dft(padded, spectrum);
  cv::mulSpectrums(spectrum, spectrum, spectrum, 0, true);
  cv::Mat correlation;
  cv::dft(spectrum, correlation, cv::DFT_INVERSE | cv::DFT_SCALE);
  const float* c = correlation.ptr<float>(0);
  // Unbiased for the shrinking overlap.
  const auto rho = [&](int lag) {
    return static_cast<double>(c[lag]) / c[0] * n / (n - lag);
  };
  const int longest = n / 4;
  for (int lag = 2; lag < longest; ++lag) {
    const double here = rho(lag);
    if (here < kLeastCorrelation || here < rho(lag - 1) ||
        here <= rho(lag + 1)) {
      continue;
    }
    const auto vertex = [&](int at) {
      const double a = rho(at - 1), b = rho(at), d = rho(at + 1);
      const double bend = a - 2 * b + d;
      return at + (bend < 0 ? std::clamp(0.5 * (a - d) / bend, -0.5, 0.5) : 0);
    };
    double pitch = vertex(lag);
    if (pitch < kLeastPitchPx) continue;
    // Follow the multiples: each one sharpens the pitch.
    double weakest = here;
    int multiple = 1;
    bool holds = true;
    for (int k = 2; k <= 8 && k * pitch < longest; ++k) {
      const int guess = static_cast<int>(std::lround(k * pitch));
      int top = guess;
      for (int d = -1; d <= 1; ++d) {
        if (rho(guess + d) > rho(top)) top = guess + d;
      }
      if (rho(top) < 0.6 * here) {
        holds = false;
        break;
      }
      weakest = std::min(weakest, rho(top));
      pitch = vertex(top) / k;
      multiple = k;
    }
    if (!holds || multiple < 3) continue;
    *strength = weakest;
    return pitch;
  }
  return 0.0;
}

// Lengths of the marks tell what they stand for.
int HierarchyOf(const std::vector<double>& length) {
  const std::size_t n = length.size();
  if (n < static_cast<std::size_t>(kLeastMarks)) return 0;
  // Variance explained by marks that are longer at every k-th line.
  double mean = std::accumulate(length.begin(), length.end(), 0.0) /
                static_cast<double>(n);
  double total = 0.0;
  for (const double v : length) total += (v - mean) * (v - mean);
  if (total <= 0.0) return 0;
  const auto explained = [&](std::size_t k, std::size_t* offset) {
    double best = 0.0;
    for (std::size_t o = 0; o < k; ++o) {
      double in = 0.0, count = 0.0;
      for (std::size_t j = o; j < n; j += k) {
        in += length[j];
        count += 1.0;
      }
      if (count < 2.0) continue;
      const double rest = static_cast<double>(n) - count;
      const double gap =
          in / count - (mean * static_cast<double>(n) - in) / rest;
      if (gap <= 0.0) continue;
      const double share =
          gap * gap * count * rest / static_cast<double>(n) / total;
      if (share > best) {
        best = share;
        *offset = o;
      }
    }
    return best;
  };
  std::size_t o10 = 0, o5 = 0, o = 0;
  const double ten = explained(10, &o10);
  const double five = explained(5, &o5);
  double halves = 0.0;
  for (const std::size_t k : {2U, 4U, 8U, 16U}) {
    halves = std::max(halves, explained(k, &o));
  }
  // Chance: a random pattern gives about ln(k) * 2 / n.
  const double chance = 8.0 / static_cast<double>(n);
  const double metric = std::max(ten, five);
  if (metric > std::max(chance, 0.3) && metric > 1.5 * halves) {
    return ten > 0.15 && o10 % 5 == o5 % 5 ? 10 : 5;
  }
  if (halves > std::max(chance, 0.3) && halves > 1.5 * metric) return 2;
  return 0;
}

// The comb of one group of rows, measured along its whole length.
std::optional<FoundRuler> MeasureComb(const cv::Mat& luma,
                                      const std::vector<Comb>& group,
                                      double target_x) {
  int top = luma.rows, bottom = 0, begin = luma.cols, end = 0;
  std::vector<double> pitches;
  for (const Comb& c : group) {
    top = std::min(top, c.row);
    bottom = std::max(bottom, c.row);
    begin = std::min(begin, c.begin);
    end = std::max(end, c.end);
    pitches.push_back(c.pitch);
  }
  std::nth_element(
      pitches.begin(),
      pitches.begin() + static_cast<std::ptrdiff_t>(pitches.size() / 2),
      pitches.end());
  double pitch = pitches[pitches.size() / 2];
  const int reach = static_cast<int>(20 * pitch);
  begin = std::max(0, begin - reach);
  end = std::min(luma.cols, end + reach);
  const int n = end - begin;
  const int width = std::max(5, static_cast<int>(std::lround(4 * pitch)));

  std::vector<std::vector<float>> rows;
  for (int r = top; r <= bottom; ++r) {
    rows.emplace_back(static_cast<std::size_t>(n));
    HighPass(luma.ptr<unsigned char>(r) + begin, n, width, rows.back().data());
  }
  // Phase of the comb in windows of ten marks, every two marks.
  using Complex = std::complex<double>;
  const double step = 2 * pitch, half = 5 * pitch;
  const int windows = static_cast<int>((n - 2 * half) / step);
  if (windows < 4) return std::nullopt;
  const double f0 = 1.0 / pitch;
  std::vector<Complex> carrier(static_cast<std::size_t>(n));
  for (int i = 0; i < n; ++i) {
    carrier[static_cast<std::size_t>(i)] = std::polar(1.0, -kTwoPi * f0 * i);
  }
  const auto demodulate = [&](const std::vector<float>& row, int w) {
    const double centre = half + w * step;
    Complex z = 0.0;
    double norm = 0.0;
    for (int i = static_cast<int>(centre - half);
         i <= static_cast<int>(centre + half);
         ++i) {
      if (i < 0 || i >= n) continue;
      const double u = (i - centre) / half;
      const double g = 0.5 + 0.5 * std::cos(u * kTwoPi / 2);
      z += g * row[static_cast<std::size_t>(i)] *
           carrier[static_cast<std::size_t>(i)];
      norm += g;
    }
    return z / norm;
  };
  // Turn between neighbouring rows = slant of the marks.
  Complex turn = 0.0;
  std::vector<std::vector<Complex>> field;
  for (const auto& row : rows) {
    field.emplace_back();
    for (int w = 0; w < windows; ++w) {
      field.back().push_back(demodulate(row, w));
    }
    if (field.size() > 1) {
      const auto& a = field[field.size() - 2];
      const auto& b = field.back();
      for (std::size_t w = 0; w < a.size(); ++w) turn += b[w] * std::conj(a[w]);
    }
  }
  const double slant = std::arg(turn);  // radians of phase per row
  std::vector<Complex> sum(static_cast<std::size_t>(windows), 0.0);
  const double mid_row = 0.5 * static_cast<double>(rows.size() - 1);
  for (std::size_t r = 0; r < field.size(); ++r) {
    const Complex back =
        std::polar(1.0, -slant * (static_cast<double>(r) - mid_row));
    for (std::size_t w = 0; w < sum.size(); ++w) sum[w] += field[r][w] * back;
  }
  double most = 0.0;
  std::size_t peak = 0;
  for (std::size_t w = 0; w < sum.size(); ++w) {
    if (std::abs(sum[w]) > most) {
      most = std::abs(sum[w]);
      peak = w;
    }
  }
  // The middle of the strong part may not be the very peak; both ends where
  // the comb is weaker than 0.3 of it.
  std::size_t a = peak, b = peak;
  while (a > 0 && std::abs(sum[a - 1]) > 0.3 * most) --a;
  while (b + 1 < sum.size() && std::abs(sum[b + 1]) > 0.3 * most) ++b;
  if (b - a < 4) return std::nullopt;
  // Phase along the ruler: straight, or bent by perspective.
  std::vector<double> x, phase;
  double last = 0.0;
  for (std::size_t w = a; w <= b; ++w) {
    double p = std::arg(sum[w]);
    if (!phase.empty()) p += kTwoPi * std::round((last - p) / kTwoPi);
    last = p;
    phase.push_back(p);
    x.push_back(half + static_cast<double>(w) * step + begin);
  }
  const double centre = 0.5 * (x.front() + x.back());
  const double span = 0.5 * (x.back() - x.front());
  cv::Mat design(static_cast<int>(x.size()), 3, CV_64F);
  cv::Mat rhs(static_cast<int>(x.size()), 1, CV_64F);
  for (int i = 0; i < design.rows; ++i) {
    const double u = (x[static_cast<std::size_t>(i)] - centre) / span;
    design.at<double>(i, 0) = 1.0;
    design.at<double>(i, 1) = u;
    design.at<double>(i, 2) = u * u;
    rhs.at<double>(i) = phase[static_cast<std::size_t>(i)];
  }
  cv::Mat solution;
  cv::solve(design, rhs, solution, cv::DECOMP_QR);
  const cv::Mat residual = rhs - design * solution;
  const double rms =
      std::sqrt(residual.dot(residual) / std::max(1, design.rows - 3));
  if (rms > 0.6) return std::nullopt;
  const cv::Mat normal = (design.t() * design).inv();
  const double u_target = std::clamp((target_x - centre) / span, -1.5, 1.5);
  const double k =
      kTwoPi * f0 +
      (solution.at<double>(1) + 2.0 * u_target * solution.at<double>(2)) / span;
  if (!(k > 0.0)) return std::nullopt;
  const double variance =
      rms * rms *
      (normal.at<double>(1, 1) + 4 * u_target * normal.at<double>(1, 2) +
       4 * u_target * u_target * normal.at<double>(2, 2)) /
      (span * span);
  FoundRuler found;
  // The windows overlap five-fold: the residuals are not independent.
  found.pitch_rel_sd = std::sqrt(5.0 * variance) / k;
  // Lines of equal phase lean by the ruler's angle; the pitch is the distance
  // across them.
  found.angle_rad = std::atan2(slant, k);
  if (std::abs(found.angle_rad) > 0.3) return std::nullopt;
  found.pitch_px = kTwoPi / std::hypot(k, slant);
  found.x0 = x.front() - half;
  found.x1 = x.back() + half;
  found.row = 0.5 * (top + bottom);
  found.marks = (found.x1 - found.x0) / pitch;
  found.score = most / static_cast<double>(rows.size()) * found.marks;

  // Where each mark is, and how far it reaches across the ruler.
  const auto position = [&](double index) {
    // phase(x) + 2 pi f0 (x - begin) = 2 pi index: a few Newton steps.
    double at =
        centre +
        (index - (solution.at<double>(0) / kTwoPi + f0 * (centre - begin))) *
            pitch;
    for (int i = 0; i < 4; ++i) {
      const double u = (at - centre) / span;
      const double value = solution.at<double>(0) + solution.at<double>(1) * u +
                           solution.at<double>(2) * u * u +
                           kTwoPi * f0 * (at - begin);
      at += (kTwoPi * index - value) / k;
    }
    return at;
  };
  // Phase zero of a high-passed comb: bright crest; dark marks sit half a
  // period on. Which of the two are the marks is told by which is darker.
  const double first_index = std::ceil(
      (solution.at<double>(0) - solution.at<double>(1) +
       solution.at<double>(2) + kTwoPi * f0 * (centre - span - begin)) /
      kTwoPi);
  const int count = static_cast<int>((x.back() - x.front()) / pitch) - 1;
  const int margin = static_cast<int>(std::lround(14 * pitch));
  std::vector<double> length(static_cast<std::size_t>(std::max(0, count)), 0.0);
  const auto value_at = [&](double px, int r) {
    const int xi = static_cast<int>(std::floor(px));
    if (xi < 0 || xi + 1 >= luma.cols) return 0.0;
    const unsigned char* row = luma.ptr<unsigned char>(r);
    return row[xi] + (px - xi) * (static_cast<int>(row[xi + 1]) - row[xi]);
  };
  for (int r = std::max(0, top - margin);
       r < std::min(luma.rows, bottom + margin + 1);
       ++r) {
    const double lean = -slant * (r - found.row) / k;
    for (int j = 0; j < count; ++j) {
      const double at = position(first_index + j + 0.5) + lean;
      const double between =
          0.5 * (value_at(at - 0.5 * pitch, r) + value_at(at + 0.5 * pitch, r));
      const double depth = std::abs(value_at(at, r) - between);
      // Counted softly against the marks' own depth in the band.
      length[static_cast<std::size_t>(j)] += std::min(
          1.0,
          depth / std::max(4.0, 1.0 * most / static_cast<double>(rows.size())));
    }
  }
  found.hierarchy = HierarchyOf(length);
  return found;
}

std::vector<FoundRuler> FindAlongRows(const cv::Mat& luma,
                                      const PixelCircle& target) {
  const int n = luma.cols;
  const int piece = n / 3;
  std::vector<Comb> combs;
  if (piece < 64) return {};
  const int row_step = luma.rows > 800 ? 2 : 1;
  std::vector<float> high(static_cast<std::size_t>(n));
  for (int r = 0; r < luma.rows; r += row_step) {
    HighPass(luma.ptr<unsigned char>(r), n, n / 6, high.data());
    for (int part = 0; part < 5; ++part) {
      const int begin = part * piece / 2;
      const int end = std::min(n, begin + piece);
      // Not through the paint.
      if (std::abs(r - target.y) < 1.05 * target.r &&
          end > target.x - 1.05 * target.r &&
          begin < target.x + 1.05 * target.r) {
        continue;
      }
      // A comb of fine marks on uneven ground: a second look with the slow
      // part taken out more narrowly.
      const std::vector<float> signal(high.begin() + begin, high.begin() + end);
      double strength = 0.0;
      double pitch = PitchOf(signal, &strength);
      if (pitch > 0.0) combs.push_back({r, begin, end, pitch, strength});
      std::vector<float> fine(signal.size());
      HighPass(luma.ptr<unsigned char>(r) + begin,
               static_cast<int>(fine.size()),
               13 * std::max(1, n / 640),
               fine.data());
      pitch = PitchOf(fine, &strength);
      if (pitch > 0.0) combs.push_back({r, begin, end, pitch, strength});
    }
  }
  // Groups of equal pitch in neighbouring rows.
  std::vector<std::vector<Comb>> groups;
  std::sort(combs.begin(), combs.end(), [](const Comb& a, const Comb& b) {
    return a.row < b.row;
  });
  for (const Comb& c : combs) {
    std::vector<Comb>* home = nullptr;
    for (auto& g : groups) {
      if (c.row - g.back().row <= 3 * row_step &&
          std::abs(c.pitch / g.front().pitch - 1.0) < 0.03) {
        home = &g;
      }
    }
    if (home == nullptr) {
      groups.push_back({c});
    } else {
      home->push_back(c);
    }
  }
  std::vector<FoundRuler> rulers;
  std::sort(groups.begin(), groups.end(), [](const auto& a, const auto& b) {
    return a.size() > b.size();
  });
  for (std::size_t i = 0; i < groups.size() && i < 8; ++i) {
    const auto& g = groups[i];
    if (g.back().row - g.front().row < 2) continue;
    const auto ruler = MeasureComb(luma, g, target.x);
    if (ruler && ruler->marks >= kLeastMarks) rulers.push_back(*ruler);
  }
  return rulers;
}

std::string Text(const char* format, double a, double b) {
  std::array<char, 256> buffer{};
  std::snprintf(buffer.data(), buffer.size(), format, a, b);
  return buffer.data();
}

}  // namespace

ScaleSearch FindRulerScale(const cv::Mat& luma, const PixelCircle& target) {
  ScaleSearch search;
  cv::Mat turned;
  cv::transpose(luma, turned);
  std::optional<FoundRuler> best;
  bool best_turned = false;
  for (const bool columns : {false, true}) {
    const PixelCircle at =
        columns ? PixelCircle{target.y, target.x, target.r} : target;
    for (const FoundRuler& r : FindAlongRows(columns ? turned : luma, at)) {
      const auto rank = [](const FoundRuler& f) {
        return f.score * (f.hierarchy >= 5 ? 10.0 : 1.0);
      };
      if (!best || rank(r) > rank(*best)) {
        best = r;
        best_turned = columns;
      }
    }
  }
  if (!best) {
    search.note =
        "No ruler marks were found in the picture; give the scale to get "
        "millimetres.";
    return search;
  }
  if (best->hierarchy < 5) {
    search.note =
        best->hierarchy == 2
            ? "The marks in the picture halve from length to length, as on an "
              "inch scale; give the scale to get millimetres."
            : Text(
                  "There are even marks every %.3g px in the picture, but "
                  "nothing tells how far apart they are; if they are "
                  "millimetres the scale is %.4g mm per px.",
                  best->pitch_px,
                  1.0 / best->pitch_px);
    return search;
  }
  ImageScale scale;
  scale.mm_per_px = 1.0 / best->pitch_px;
  scale.method = "ruler";
  const double tx = best_turned ? target.y : target.x;
  const double ty = best_turned ? target.x : target.y;
  const double middle = 0.5 * (best->x0 + best->x1);
  const double across = ty - best->row - (tx - middle) * best->angle_rad;
  const double focal = kFocalLengths * std::max(luma.cols, luma.rows);
  scale.rel_sd =
      std::sqrt(std::pow(best->pitch_rel_sd, 2) + std::pow(kRulerRelSd, 2) +
                std::pow(kCameraTiltSd * across / focal, 2));
  const double half = 0.5 * (best->x1 - best->x0);
  const double y0 = best->row - half * best->angle_rad;
  const double y1 = best->row + half * best->angle_rad;
  if (best_turned) {
    scale.direction_rad = kTwoPi / 4 - best->angle_rad;
    scale.line_px = {y0, best->x0, y1, best->x1};
  } else {
    scale.direction_rad = best->angle_rad;
    scale.line_px = {best->x0, y0, best->x1, y1};
  }
  search.scale = scale;
  return search;
}

}  // namespace flowkin
