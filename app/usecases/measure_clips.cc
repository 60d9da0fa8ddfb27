#include "app/usecases/measure_clips.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <numeric>
#include <optional>
#include <thread>
#include <utility>

#include "core/base/check.h"

namespace flowkin {

Result<void> CheckDistinct(const std::vector<std::string>& clips) {
  for (std::size_t i = 0; i < clips.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (IsSameFile(clips[i], clips[j])) {
        return Error{ErrorCode::kInvalidArgument,
                     "The clip '" + clips[i] +
                         "' is given twice; one film counts once, so film "
                         "the test again for another repeat."};
      }
    }
  }
  return {};
}

Result<std::vector<MeasuredClip>> MeasureClips(
    const std::vector<std::string>& clips,
    const MeasureClipOptions& options,
    int workers,
    const ProgressCallback& progress,
    std::stop_token stop) {
  FLOWKIN_CHECK(workers >= 1);
  MeasureClipOptions each = options;
  each.overlay_path.reset();
  each.trace_path.reset();
  const auto used = std::min(clips.size(), static_cast<std::size_t>(workers));
  if (used > 1) each.decoder_threads = 1;

  std::vector<std::optional<Result<MeasuredClip>>> results(clips.size());
  std::vector<double> shares(clips.size(), 0.0);
  std::mutex progress_mutex;
  std::atomic<std::size_t> next{0};
  std::atomic<bool> failed{false};
  const auto work = [&] {
    const MeasureClip measure(each);
    for (std::size_t i = next++; i < clips.size() && !failed; i = next++) {
      const auto report = [&, i](double share) {
        const std::scoped_lock lock(progress_mutex);
        shares[i] = share;
        progress(std::accumulate(shares.begin(), shares.end(), 0.0) /
                 static_cast<double>(shares.size()));
      };
      results[i] = measure.Run(
          clips[i], progress ? ProgressCallback(report) : nullptr, stop);
      if (!*results[i]) failed = true;
    }
  };
  {
    std::vector<std::jthread> threads;
    for (std::size_t t = 1; t < used; ++t) threads.emplace_back(work);
    work();
  }

  std::vector<MeasuredClip> measured;
  for (auto& result : results) {
    // Clips are started in order, so one that was never started stands behind
    // the one that failed.
    FLOWKIN_CHECK(result.has_value());
    if (!*result) return result->error();
    measured.push_back(std::move(**result));
  }
  return measured;
}

}  // namespace flowkin
