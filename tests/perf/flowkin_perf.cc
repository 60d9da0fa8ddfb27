// Times the bare decode loop and the full measurement of the same 1080p30
// H.264 clips in one process and one run, and says how peak memory depends on
// the length of the clip:
//
//   flowkin_perf [--benchmark_filter=stream] [other Google Benchmark options]
//
// The clips are sample clips enlarged to 1920 x 1080, stretched in time to 10
// and 120 s and given sensor noise, at the 17 Mbit/s of a phone; they are made
// once with the ffmpeg command and kept in the build folder.

#include <benchmark/benchmark.h>
#include <malloc.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <limits>
#include <map>
#include <opencv2/core.hpp>
#include <string>
#include <utility>
#include <vector>

#include "app/usecases/measure_clip.h"
#include "core/video/file_frame_source.h"
#include "core/video/prefetch.h"

namespace flowkin {
namespace {

constexpr int kDecoderThreads = 2;
// Targets of the project: measurement over decoding, and growth of peak memory
// from the short to the long clip that still counts as none (the allocator's
// own slack).
constexpr double kTargetRatio = 1.30;
constexpr double kTargetGrowthMb = 30.0;
constexpr int kShortS = 10;
constexpr int kLongS = 120;

struct Kind {
  TestKind test;
  const char* sample;
  double sample_s;  // length of the sample clip
};

const std::vector<Kind>& Kinds() {
  static const std::vector<Kind> kKinds = {
      {TestKind::kStream, "stream/base-a.mp4", 7.5},
      {TestKind::kLevel, "level/base-a.mp4", 4.8},
      {TestKind::kPuddle, "puddle/base-a.mp4", 11.0},
  };
  return kKinds;
}

std::string ClipPath(const Kind& kind, int length_s) {
  return std::string(FLOWKIN_PERF_DIR) + "/" + TestKindName(kind.test) + "-" +
         std::to_string(length_s) + "s.mp4";
}

void MakeClip(const Kind& kind, int length_s) {
  const std::string path = ClipPath(kind, length_s);
  if (std::filesystem::exists(path)) return;
  std::filesystem::create_directories(FLOWKIN_PERF_DIR);
  std::fprintf(stderr, "making %s\n", path.c_str());
  const std::string part = path + ".part.mp4";
  const std::string command =
      "ffmpeg -nostdin -hide_banner -loglevel error -y -i '" +
      std::string(FLOWKIN_SOURCE_DIR) + "/sample-clips/" + kind.sample +
      "' -vf 'setpts=PTS*" + std::to_string(length_s / kind.sample_s) +
      ",fps=30,scale=1920:1080:flags=bicubic,noise=alls=5:allf=t' -t " +
      std::to_string(length_s) +
      " -an -c:v libx264 -preset veryfast -bf 0 -b:v 17M '" + part + "'";
  if (std::system(command.c_str()) != 0) {
    std::fprintf(stderr, "failed: %s\n", command.c_str());
    std::exit(1);
  }
  std::filesystem::rename(part, path);
}

// Peak resident memory since the last reset, MB; Linux keeps and resets it
// (proc(5): VmHWM, clear_refs). What earlier runs freed is given back first.
void ResetPeakMemory() {
  malloc_trim(0);
  std::ofstream("/proc/self/clear_refs") << "5";
}

double PeakMemoryMb() {
  std::ifstream status("/proc/self/status");
  std::string word;
  double kb = 0.0;
  while (status >> word) {
    if (word == "VmHWM:") status >> kb;
  }
  return kb / 1024.0;
}

FileFrameSourceOptions ReaderOptions() {
  FileFrameSourceOptions options;
  options.threads = kDecoderThreads;
  return options;
}

void Decode(benchmark::State& state, const Kind& kind, int length_s) {
  MakeClip(kind, length_s);
  std::int64_t frames = 0;
  for (auto _ : state) {
    auto source = OpenClip(ClipPath(kind, length_s), ReaderOptions());
    if (!source) return state.SkipWithError(source.error().message.c_str());
    while (true) {
      auto frame = (*source)->Next();
      if (!frame) return state.SkipWithError(frame.error().message.c_str());
      if (!*frame) break;
      benchmark::DoNotOptimize((*frame)->luma.data);
      ++frames;
    }
  }
  state.SetItemsProcessed(frames);
}

void Measure(benchmark::State& state, const Kind& kind, int length_s) {
  std::int64_t frames = 0;
  std::string label;
  MakeClip(kind, length_s);
  ResetPeakMemory();
  for (auto _ : state) {
    auto source = OpenClip(ClipPath(kind, length_s), ReaderOptions());
    if (!source) return state.SkipWithError(source.error().message.c_str());
    ClipTestOptions options;
    options.kind = kind.test;
    const auto test = MakeClipTest(options);
    const auto ahead = Prefetch(std::move(*source));
    const auto measured = MeasureFrames(*ahead, *test);
    if (!measured) return state.SkipWithError(measured.error().message.c_str());
    frames += measured->info.frame_count;
    label = measured->measurement.outcome == Outcome::kMeasured
                ? "measured"
                : "refused: " + measured->measurement.reason;
  }
  state.SetItemsProcessed(frames);
  state.SetLabel(label);
  state.counters["peak_MB"] = PeakMemoryMb();
}

// Keeps the best of every benchmark's repetitions beside the usual table.
class Collector final : public benchmark::ConsoleReporter {
 public:
  struct Best {
    double wall_s = std::numeric_limits<double>::infinity();
    double cpu_s = std::numeric_limits<double>::infinity();
    double peak_mb = 0.0;
  };

  Collector() : ConsoleReporter(OO_Tabular) {}

  void ReportRuns(const std::vector<Run>& runs) override {
    for (const Run& run : runs) {
      if (run.run_type != Run::RT_Iteration || run.error_occurred) continue;
      Best& best = best_[run.run_name.function_name];
      best.wall_s = std::min(best.wall_s, run.real_accumulated_time);
      best.cpu_s = std::min(best.cpu_s, run.cpu_accumulated_time);
      const auto peak = run.counters.find("peak_MB");
      if (peak != run.counters.end()) {
        best.peak_mb = std::max(best.peak_mb, peak->second.value);
      }
    }
    ConsoleReporter::ReportRuns(runs);
  }

  // The summary; false if a target is missed.
  bool Summarise() const {
    bool good = true;
    std::printf("\nbest of the repetitions, %d decoder threads\n",
                kDecoderThreads);
    for (const Kind& kind : Kinds()) {
      const std::string name = TestKindName(kind.test);
      for (int length_s : {kShortS, kLongS}) {
        const std::string tail = name + "/" + std::to_string(length_s) + "s";
        const auto decode = best_.find("decode/" + tail);
        const auto measure = best_.find("measure/" + tail);
        if (decode == best_.end() || measure == best_.end()) continue;
        const double ratio = measure->second.wall_s / decode->second.wall_s;
        const double frames = 30.0 * length_s;
        good &= ratio <= kTargetRatio;
        std::printf(
            "%-7s %3d s: decode %6.1f frames/s (%4.1f ms CPU a frame), "
            "measure %6.1f frames/s (%4.1f ms), ratio %.2f (target %.2f, by "
            "CPU time %.2f)%s\n",
            name.c_str(),
            length_s,
            frames / decode->second.wall_s,
            1e3 * decode->second.cpu_s / frames,
            frames / measure->second.wall_s,
            1e3 * measure->second.cpu_s / frames,
            ratio,
            kTargetRatio,
            measure->second.cpu_s / decode->second.cpu_s,
            ratio <= kTargetRatio ? "" : "  MISSED");
      }
      const auto brief = best_.find("measure/" + name + "/10s");
      const auto lengthy = best_.find("measure/" + name + "/120s");
      if (brief == best_.end() || lengthy == best_.end()) continue;
      const double growth = lengthy->second.peak_mb - brief->second.peak_mb;
      good &= growth <= kTargetGrowthMb;
      std::printf("%-7s peak memory %.0f MB at 10 s, %.0f MB at 120 s%s\n",
                  name.c_str(),
                  brief->second.peak_mb,
                  lengthy->second.peak_mb,
                  growth <= kTargetGrowthMb ? "" : "  GROWS");
    }
    return good;
  }

 private:
  std::map<std::string, Best> best_;
};

}  // namespace
}  // namespace flowkin

int main(int argc, char** argv) {
  cv::setNumThreads(1);
  std::vector<char*> arguments(argv, argv + argc);
  // Decoding and measuring take turns, so that a busy machine disturbs both.
  std::string interleave = "--benchmark_enable_random_interleaving=true";
  arguments.insert(arguments.begin() + 1, interleave.data());
  int count = static_cast<int>(arguments.size());
  benchmark::Initialize(&count, arguments.data());
  if (benchmark::ReportUnrecognizedArguments(count, arguments.data())) return 2;

  for (const flowkin::Kind& kind : flowkin::Kinds()) {
    for (int length_s : {flowkin::kShortS, flowkin::kLongS}) {
      const std::string tail = std::string(flowkin::TestKindName(kind.test)) +
                               "/" + std::to_string(length_s) + "s";
      const auto add = [&](const std::string& name, auto function) {
        benchmark::RegisterBenchmark(
            (name + tail).c_str(), function, kind, length_s)
            ->Unit(benchmark::kMillisecond)
            ->UseRealTime()
            ->MeasureProcessCPUTime()
            ->Iterations(1)
            ->Repetitions(length_s == flowkin::kShortS ? 5 : 1);
      };
      add("decode/", flowkin::Decode);
      add("measure/", flowkin::Measure);
    }
  }
  flowkin::Collector collector;
  benchmark::RunSpecifiedBenchmarks(&collector);
  return collector.Summarise() ? 0 : 1;
}
