#include "core/video/clip_timing.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <cstdio>
#include <string_view>

namespace flowkin {
namespace {

// A rate within 2 % of the playing rate is the same rate: 29.97 and 30, or a
// clock that runs a little off.
constexpr double kSameRate = 0.02;
// Least factor at which a tag is taken for slow motion or time lapse; real ones
// start at 2 (60 played at 30).
constexpr double kTaggedFactor = 1.9;
// No camera films paint faster than this; a larger number is damage.
constexpr double kMaxRateHz = 100000.0;
constexpr double kMaxScale = 1000.0;
// Slow motion starts at 120 frames a second on phones; a lower tag over a
// slower clip may also be a plain clip filmed in poor light.
constexpr double kSureSlowMotionHz = 90.0;

std::string Number(double value) {
  char text[32];
  std::snprintf(text, sizeof(text), "%.4g", value);
  return text;
}

}  // namespace

std::optional<double> PlayingRateHz(std::vector<std::int64_t> ticks,
                                    double ticks_per_second) {
  std::sort(ticks.begin(), ticks.end());
  std::vector<double> intervals;
  for (std::size_t i = 1; i < ticks.size(); ++i) {
    const double interval =
        static_cast<double>(ticks[i]) - static_cast<double>(ticks[i - 1]);
    if (interval > 0.0) intervals.push_back(interval);
  }
  if (intervals.empty()) return std::nullopt;
  const auto middle =
      intervals.begin() + static_cast<std::ptrdiff_t>(intervals.size() / 2);
  std::nth_element(intervals.begin(), middle, intervals.end());
  const double median = *middle;
  double sum = 0.0;
  double count = 0.0;
  for (double interval : intervals) {
    if (std::abs(interval - median) <= 0.5 * median) {
      sum += interval;
      count += 1.0;
    }
  }
  return count * ticks_per_second / sum;
}

std::optional<double> CaptureRateFromTag(const std::string& key,
                                         const std::string& value) {
  std::string name;
  for (char c : key) {
    const int lower = std::tolower(static_cast<unsigned char>(c));
    name += c == '-' || c == '_' ? '.' : static_cast<char>(lower);
  }
  constexpr std::string_view kEnding = "capture.fps";
  if (name.size() < kEnding.size() ||
      name.compare(name.size() - kEnding.size(), kEnding.size(), kEnding) !=
          0) {
    return std::nullopt;
  }
  double rate = 0.0;
  const char* begin = value.data();
  const char* end = begin + value.size();
  while (begin != end && *begin == ' ') ++begin;
  if (std::from_chars(begin, end, rate).ec != std::errc()) return std::nullopt;
  if (!std::isfinite(rate) || rate <= 0.0 || rate > kMaxRateHz) {
    return std::nullopt;
  }
  return rate;
}

Result<TimeScale> FindTimeScale(double playing_hz,
                                std::optional<double> shot_hz,
                                std::optional<double> tagged_hz) {
  TimeScale scale;
  if (shot_hz) {
    if (!std::isfinite(*shot_hz) || *shot_hz <= 0.0) {
      return Error{ErrorCode::kInvalidArgument,
                   "The rate the clip was shot at must be a number above 0 "
                   "frames per second."};
    }
    scale.value = playing_hz / *shot_hz;
    if (scale.value < 1.0 / kMaxScale || scale.value > kMaxScale) {
      return Error{ErrorCode::kInvalidArgument,
                   "The clip plays at " + Number(playing_hz) +
                       " frames per second and cannot have been shot at " +
                       Number(*shot_hz) + ": check the rate you gave."};
    }
    if (std::abs(scale.value - 1.0) <= kSameRate) {
      scale.value = 1.0;
    } else if (tagged_hz && std::abs(*tagged_hz / *shot_hz - 1.0) > kSameRate) {
      scale.warning = "The file says it was shot at " + Number(*tagged_hz) +
                      " frames per second; the " + Number(*shot_hz) +
                      " you gave was used.";
    }
    return scale;
  }
  if (!tagged_hz) return scale;

  const double value = playing_hz / *tagged_hz;
  if (std::abs(value - 1.0) <= kSameRate) return scale;
  const bool slow = value <= 1.0 / kTaggedFactor;
  const bool fast = value >= kTaggedFactor;
  if (!slow && !fast) {
    scale.warning = "The file says it was shot at " + Number(*tagged_hz) +
                    " frames per second but plays at " + Number(playing_hz) +
                    "; its times were taken as real. If it was slow motion, "
                    "give the rate it was shot at.";
    return scale;
  }
  if (value < 1.0 / kMaxScale || value > kMaxScale) {
    scale.warning = "The file says it was shot at " + Number(*tagged_hz) +
                    " frames per second, which cannot be; its times were "
                    "taken as real.";
    return scale;
  }
  scale.value = value;
  if (fast || *tagged_hz < kSureSlowMotionHz) {
    scale.warning = "The file says it was shot at " + Number(*tagged_hz) +
                    " frames per second and plays at " + Number(playing_hz) +
                    "; it was taken as " +
                    (fast ? "a time lapse" : "slow motion") +
                    ". If it was not, give the rate it was shot at.";
  }
  return scale;
}

}  // namespace flowkin
