// Reads many damaged variants of clips, each in a process of its own, and
// counts crashes, hangs and broken promises. Same seed, same variants.
//
//   flowkin_damage_sweep [--variants N] [--first I] [--seed S] [--keep FOLDER]
//                        [--measure yes] [CLIP...]
//
// With --measure yes each readable variant is also measured, as the test whose
// name ("stream", "level", "puddle") stands in the clip's path.
//
// Without CLIP it makes short ones in several codecs. Build with
// FLOWKIN_SANITIZE=address,undefined to see more than crashes.

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <csignal>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <map>
#include <memory>
#include <opencv2/core.hpp>
#include <optional>
#include <random>
#include <string>
#include <thread>
#include <vector>

#include "tests/fuzz/measure_all.h"
#include "tests/fuzz/read_all.h"
#include "tests/support/test_clip.h"

namespace {

using flowkin::TestKind;
using flowkin::testing_support::MeasureAll;
using flowkin::testing_support::ReadAll;
using flowkin::testing_support::ReadBytes;
using flowkin::testing_support::TestClip;
using flowkin::testing_support::TestClipSpec;
using flowkin::testing_support::WriteBytes;
using Bytes = std::vector<std::uint8_t>;
using Random = std::mt19937_64;

// A file may take this much processor time; sleeping counts after longer.
constexpr rlim_t kProcessorLimitS = 10;
constexpr double kWallLimitS = 60.0;
constexpr long kMemoryLimitKb = 1500L * 1024L;
constexpr int kBrokenPromise = 90;

std::size_t Below(Random& random, std::size_t limit) {
  return limit == 0 ? 0 : static_cast<std::size_t>(random() % limit);
}

std::uint8_t Byte(Random& random) {
  return static_cast<std::uint8_t>(random());
}

// A length from 1 to `limit`, short ones as likely as long ones.
std::size_t Length(Random& random, std::size_t limit) {
  const double top =
      std::log(static_cast<double>(std::max<std::size_t>(limit, 1)));
  const double share = std::uniform_real_distribution<double>(0, 1)(random);
  return std::max<std::size_t>(
      1, std::min(limit, static_cast<std::size_t>(std::exp(top * share))));
}

const char* Damage(Bytes& file, const std::vector<Bytes>& all, Random& random) {
  const std::size_t size = file.size();
  // Indexes lie at the ends of a file.
  const std::size_t ends = std::min<std::size_t>(size, 4096);
  const bool at_front = random() % 2 == 0;
  const auto at = static_cast<std::ptrdiff_t>(Below(random, size));
  switch (random() % 10) {
    case 0:
      file.resize(Below(random, size));
      return "cut off";
    case 1:
      file.erase(file.begin(), file.begin() + at);
      return "start missing";
    case 2: {
      const std::size_t count = Length(random, 2000);
      for (std::size_t i = 0; i < count; ++i) {
        file[Below(random, size)] ^=
            static_cast<std::uint8_t>(1U << (random() % 8));
      }
      return "bits flipped";
    }
    case 3: {
      const std::size_t count = Length(random, 40);
      for (std::size_t i = 0; i < count; ++i) {
        const std::size_t offset = Below(random, ends);
        file[at_front ? offset : size - 1 - offset] ^=
            static_cast<std::uint8_t>(1U << (random() % 8));
      }
      return "index flipped";
    }
    case 4: {
      const std::size_t run =
          Length(random, size - static_cast<std::size_t>(at));
      const bool zeros = random() % 2 == 0;
      for (std::size_t i = 0; i < run; ++i) {
        file[static_cast<std::size_t>(at) + i] = zeros ? 0 : Byte(random);
      }
      return "run overwritten";
    }
    case 5: {
      const std::size_t run =
          Length(random, size - static_cast<std::size_t>(at));
      file.erase(file.begin() + at,
                 file.begin() + at + static_cast<std::ptrdiff_t>(run));
      return "run missing";
    }
    case 6: {
      const std::size_t run =
          Length(random, size - static_cast<std::size_t>(at));
      const Bytes copy(file.begin() + at,
                       file.begin() + at + static_cast<std::ptrdiff_t>(run));
      file.insert(
          file.begin() + static_cast<std::ptrdiff_t>(Below(random, size)),
          copy.begin(),
          copy.end());
      return "run doubled";
    }
    case 7: {
      const Bytes& other = all[Below(random, all.size())];
      file.resize(static_cast<std::size_t>(at));
      file.insert(file.end(),
                  other.begin() +
                      static_cast<std::ptrdiff_t>(Below(random, other.size())),
                  other.end());
      return "spliced";
    }
    case 8: {
      const std::uint32_t extremes[] = {
          0, 1, 0x7fffffff, 0x80000000, 0xffffffff, 0xfffffffe, 0x00010000};
      const std::size_t count = Length(random, 8);
      for (std::size_t i = 0; i < count && ends >= 4; ++i) {
        const std::uint32_t value = extremes[random() % 7];
        const std::size_t offset = Below(random, ends - 3);
        std::memcpy(file.data() + (at_front ? offset : size - ends + offset),
                    &value,
                    4);
      }
      return "extreme numbers";
    }
    default: {
      const std::size_t count = Length(random, 200);
      for (std::size_t i = 0; i < count; ++i) {
        std::swap(file[Below(random, size)], file[Below(random, size)]);
      }
      return "bytes swapped";
    }
  }
}

std::vector<Bytes> MadeClips() {
  struct Kind {
    const char* name;
    const char* encoder;
  };
  const Kind kinds[] = {
      {"a.mp4", "-c:v libx264 -preset ultrafast -bf 2"},
      {"b.mp4", "-c:v libx264 -preset fast -g 12 -movflags +faststart"},
      {"c.mp4", "-c:v libx264 -g 10 -movflags frag_keyframe+empty_moov"},
      {"d.mkv", "-c:v libx264 -preset fast"},
      {"e.ts", "-c:v libx264 -preset fast -g 12"},
      {"f.mov",
       "-c:v libx265 -pix_fmt yuv420p10le -tag:v hvc1 -x265-params "
       "log-level=none:pools=1"},
      {"g.mp4", "-c:v libx265 -x265-params log-level=none:pools=1"},
      {"h.avi", "-c:v mjpeg -q:v 4 -pix_fmt yuvj420p"},
      {"i.mov", "-c:v mjpeg -q:v 4 -pix_fmt yuvj422p"},
      {"j.webm", "-c:v libvpx-vp9 -deadline realtime -cpu-used 8"},
      {"k.mp4",
       "-c:v libx264 -movflags use_metadata_tags -metadata "
       "com.android.capture.fps=240"},
  };
  std::vector<Bytes> clips;
  for (const Kind& kind : kinds) {
    TestClipSpec spec;
    spec.name = kind.name;
    spec.encoder = kind.encoder;
    spec.width_px = 176;
    spec.height_px = 144;
    clips.push_back(ReadBytes(TestClip(spec).path()));
  }
  return clips;
}

struct Sweep {
  std::uint64_t variants = 60;
  std::uint64_t first = 0;
  std::uint64_t seed = 1;
  std::string keep;
  bool measures = false;
  std::vector<Bytes> clips;
  std::vector<TestKind> kinds;  // of the clips
};

TestKind KindOf(const std::string& path) {
  if (path.find("level") != std::string::npos) return TestKind::kLevel;
  if (path.find("puddle") != std::string::npos) return TestKind::kPuddle;
  return TestKind::kStream;
}

bool IsSound(const std::string& outcome) {
  return outcome == "read" || outcome == "measured" || outcome == "refused";
}

struct Verdict {
  std::string outcome;  // "read", "measured", "refused", or what is wrong
  double processor_s = 0.0;
  long memory_kb = 0;
};

Verdict RunVariant(const Bytes& file, std::optional<TestKind> kind) {
  int pipe_ends[2];
  if (pipe(pipe_ends) != 0) std::abort();
  const pid_t child = fork();
  if (child == 0) {
    const rlimit limit{kProcessorLimitS, kProcessorLimitS + 2};
    setrlimit(RLIMIT_CPU, &limit);
    const std::string outcome =
        kind ? MeasureAll(file.data(), file.size(), *kind, 2)
             : ReadAll(file.data(), file.size(), 2, 100000);
    const auto written = write(pipe_ends[1], outcome.data(), outcome.size());
    _exit(IsSound(outcome) && written > 0 ? 0 : kBrokenPromise);
  }
  close(pipe_ends[1]);
  int status = 0;
  rusage usage{};
  const auto start = std::chrono::steady_clock::now();
  Verdict verdict;
  while (wait4(child, &status, WNOHANG, &usage) == 0) {
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
    const std::chrono::duration<double> waited =
        std::chrono::steady_clock::now() - start;
    if (waited.count() > kWallLimitS) {
      kill(child, SIGKILL);
      wait4(child, &status, 0, &usage);
      break;
    }
  }
  char text[200] = {};
  const auto length = read(pipe_ends[0], text, sizeof(text) - 1);
  close(pipe_ends[0]);
  if (length > 0) verdict.outcome = text;
  verdict.processor_s =
      static_cast<double>(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec) +
      static_cast<double>(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec) *
          1e-6;
  verdict.memory_kb = usage.ru_maxrss;
  if (WIFSIGNALED(status)) {
    const int signal = WTERMSIG(status);
    verdict.outcome = signal == SIGXCPU || signal == SIGKILL
                          ? "HANG"
                          : "CRASH by signal " + std::to_string(signal);
  } else if (WEXITSTATUS(status) == kBrokenPromise) {
    verdict.outcome = "BROKEN: " + verdict.outcome;
  } else if (WEXITSTATUS(status) != 0) {
    verdict.outcome = "CRASH, status " + std::to_string(WEXITSTATUS(status));
  } else if (verdict.memory_kb > kMemoryLimitKb) {
    verdict.outcome =
        "MEMORY: " + std::to_string(verdict.memory_kb / 1024) + " MB";
  }
  return verdict;
}

int Usage() {
  std::fprintf(stderr,
               "usage: flowkin_damage_sweep [--variants N] [--first I] "
               "[--seed S] [--keep FOLDER] [--measure yes] [CLIP...]\n");
  return 2;
}

}  // namespace

int main(int argc, char** argv) {
  cv::setNumThreads(1);
  Sweep sweep;
  for (int i = 1; i < argc; ++i) {
    const std::string word = argv[i];
    if (word.rfind("--", 0) != 0) {
      sweep.clips.push_back(ReadBytes(word));
      sweep.kinds.push_back(KindOf(word));
      if (sweep.clips.back().empty()) {
        std::fprintf(stderr, "%s cannot be read\n", argv[i]);
        return 2;
      }
      continue;
    }
    if (++i >= argc) return Usage();
    if (word == "--variants") {
      sweep.variants = std::strtoull(argv[i], nullptr, 10);
    } else if (word == "--first") {
      sweep.first = std::strtoull(argv[i], nullptr, 10);
    } else if (word == "--seed") {
      sweep.seed = std::strtoull(argv[i], nullptr, 10);
    } else if (word == "--keep") {
      sweep.keep = argv[i];
    } else if (word == "--measure") {
      sweep.measures = std::string(argv[i]) == "yes";
    } else {
      return Usage();
    }
  }
  if (sweep.clips.empty()) {
    sweep.clips = MadeClips();
    sweep.kinds.assign(sweep.clips.size(), TestKind::kStream);
  }

  std::map<std::string, std::map<std::string, int>> table;
  int bad = 0;
  double slowest_s = 0.0;
  long largest_kb = 0;
  for (std::uint64_t i = 0; i < sweep.variants; ++i) {
    const std::uint64_t variant = sweep.first + i;
    Random random(sweep.seed * 1000003 + variant);
    const auto which = static_cast<std::size_t>(variant % sweep.clips.size());
    Bytes file = sweep.clips[which];
    std::string damage = Damage(file, sweep.clips, random);
    if (!file.empty() && random() % 4 == 0) {
      Damage(file, sweep.clips, random);
      damage = "two of these";
    }
    const Verdict verdict =
        RunVariant(file,
                   sweep.measures ? std::optional<TestKind>(sweep.kinds[which])
                                  : std::nullopt);
    slowest_s = std::max(slowest_s, verdict.processor_s);
    largest_kb = std::max(largest_kb, verdict.memory_kb);
    const bool sound = IsSound(verdict.outcome);
    ++table[damage][sound ? verdict.outcome : "BAD"];
    if (!sound) {
      ++bad;
      std::printf("variant %llu (clip %zu, %s): %s\n",
                  static_cast<unsigned long long>(variant),
                  which,
                  damage.c_str(),
                  verdict.outcome.c_str());
      std::fflush(stdout);
      if (!sweep.keep.empty()) {
        WriteBytes(sweep.keep + "/variant-" + std::to_string(variant), file);
      }
    }
    if (i % 100 == 99) {
      std::fprintf(stderr,
                   "%llu of %llu\n",
                   static_cast<unsigned long long>(i + 1),
                   static_cast<unsigned long long>(sweep.variants));
    }
  }
  const char* const good = sweep.measures ? "measured" : "read";
  std::printf("%-18s %8s %8s %5s\n", "damage", good, "refused", "bad");
  for (auto& [damage, outcomes] : table) {
    std::printf("%-18s %8d %8d %5d\n",
                damage.c_str(),
                outcomes[good],
                outcomes["refused"],
                outcomes["BAD"]);
  }
  std::printf(
      "%llu variants of %zu clips, %d bad; slowest %.2f s of processor time, "
      "largest %ld MB\n",
      static_cast<unsigned long long>(sweep.variants),
      sweep.clips.size(),
      bad,
      slowest_s,
      largest_kb / 1024);
  return bad == 0 ? 0 : 1;
}
