// The live path under load, for a quiet machine:
//
//   flowkin_live_perf [seconds]
//
// Plays an enlarged sample clip at 1920 x 1080, 30 frames a second in real
// time, into what the Film screen does with a camera's frame: the analysis
// with its film on the shelf, and the picture in a window. Says how long the
// window took from the start of the program to its first picture, how many
// frames found no room, how late the picture and the marks on it are, and how
// memory grows.

#include <unistd.h>

#include <QApplication>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <opencv2/imgproc.hpp>
#include <string>
#include <thread>
#include <vector>

#include "app/gui/film_stand.h"
#include "app/gui/frame_picture.h"
#include "app/gui/live_picture.h"
#include "app/gui/window.h"
#include "app/usecases/live_test.h"
#include "core/video/file_frame_source.h"

namespace flowkin {
namespace {

using Clock = std::chrono::steady_clock;
constexpr double kFps = 30.0;
constexpr int kShownWidth_px = 960;
/// A grey patch in the corner tells which frame a picture shows.
constexpr int kPatch_px = 64;
constexpr int kPatchSteps = 32;

double SinceProgramStart_s() {
  std::ifstream stat("/proc/self/stat");
  std::string field;
  for (int i = 0; i < 22; ++i) stat >> field;
  timespec now{};
  clock_gettime(CLOCK_BOOTTIME, &now);
  return static_cast<double>(now.tv_sec) +
         static_cast<double>(now.tv_nsec) * 1e-9 -
         std::stod(field) / static_cast<double>(sysconf(_SC_CLK_TCK));
}

double Memory_mb() {
  std::ifstream statm("/proc/self/statm");
  double pages = 0.0;
  double resident = 0.0;
  statm >> pages >> resident;
  return resident * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1048576.0;
}

std::string Clip() {
  const std::string path = std::string(FLOWKIN_PERF_DIR) + "/live.mp4";
  if (std::filesystem::exists(path)) return path;
  std::filesystem::create_directories(FLOWKIN_PERF_DIR);
  const std::string part = path + ".part.mp4";
  const std::string command =
      "ffmpeg -nostdin -v error -y -i '" FLOWKIN_SOURCE_DIR
      "/sample-clips/stream/base-a.mp4' -vf "
      "'tpad=start_duration=3:start_mode=clone:stop_duration=4:"
      "stop_mode=clone,fps=30,scale=1920:1080,noise=alls=4:allf=t' "
      "-c:v libx264 -preset ultrafast -tune fastdecode -crf 20 '" +
      part + "'";
  if (std::system(command.c_str()) != 0) std::exit(1);
  std::filesystem::rename(part, path);
  return path;
}

int Grey(std::int64_t index) {
  return 32 + 6 * static_cast<int>(index % kPatchSteps);
}

/// When each of the last frames was handed over by the "camera".
class Stamps {
 public:
  void Put(std::int64_t index, Clock::time_point at) {
    const std::lock_guard lock(mutex_);
    newest_ = index;
    at_[static_cast<std::size_t>(index % kPatchSteps)] = at;
  }
  /// Of the frame whose patch is `grey`, for luma of limited range.
  Clock::time_point Find(int grey) {
    const std::lock_guard lock(mutex_);
    const int step = std::clamp((grey - 32 + 3) / 6, 0, kPatchSteps - 1);
    return at_[static_cast<std::size_t>(step)];
  }

 private:
  std::mutex mutex_;
  std::int64_t newest_ = -1;
  std::array<Clock::time_point, kPatchSteps> at_{};
};

/// Prints how late something was shown.
void PrintLateness(const char* what, std::vector<double> late_ms) {
  if (late_ms.empty()) return;
  std::sort(late_ms.begin(), late_ms.end());
  const auto at = [&](double share) {
    return late_ms[static_cast<std::size_t>(
        share * static_cast<double>(late_ms.size() - 1))];
  };
  std::printf(
      "%s shown %zu, late by %.0f ms (median), %.0f ms (99 %%), %.0f ms "
      "(most)\n",
      what,
      late_ms.size(),
      at(0.5),
      at(0.99),
      late_ms.back());
}

int Run(int argc, char** argv) {
  qputenv("QT_MEDIA_BACKEND", "gstreamer");
  const QApplication app(argc, argv);
  const double seconds = argc > 1 ? std::atof(argv[1]) : 60.0;
  const QTemporaryDir dir;

  DeskOptions desk;
  desk.store_path = dir.filePath("bench.db");
  desk.settings_path = dir.filePath("settings.ini");
  {
    Window window(desk);
    bool shown = false;
    if (!window.Open()) return 1;
    QObject::connect(
        window.quickWindow(),
        &QQuickWindow::frameSwapped,
        window.quickWindow(),
        [&] { shown = true; },
        Qt::QueuedConnection);
    while (!shown) QApplication::processEvents(QEventLoop::AllEvents, 5);
    std::printf("first picture of the window after %.2f s\n",
                SinceProgramStart_s());
  }

  FilmShelfOptions shelf_options;
  shelf_options.folder = dir.filePath("films").toStdString();
  auto shelf = FilmShelf::Open(shelf_options);
  if (!shelf) return 1;
  std::atomic<int> films{0};
  std::atomic<std::int64_t> dropped{0};
  PictureFeed feed;
  // When the frame was handed over that the marks belong to, s since `start`;
  // of those handed to the feed, fetched by the picture, and shown.
  constexpr double kNoMarks = -1.0;
  std::atomic<double> marks_of_s{kNoMarks};
  double fetched_s = kNoMarks;
  double shown_s = kNoMarks;
  LiveTest live(*std::move(shelf), "live", {}, [&](const LiveStatus& status) {
    dropped = status.dropped;
    // By the window's thread, as in FilmStand.
    QMetaObject::invokeMethod(
        &feed,
        [&, view = status.view] {
          std::vector<PictureMark> marks = MarksOf(view);
          marks_of_s = marks.empty() ? kNoMarks : view.t_s;
          feed.ShowMarks(std::move(marks));
        },
        Qt::QueuedConnection);
    if (status.view.taken) {
      ++films;
      // Room on the disk is not what is measured.
      std::filesystem::remove(status.view.taken->path);
    }
  });

  const auto start = Clock::now();
  QQuickWindow window;
  window.resize(1280, 800);
  LivePicture picture(window.contentItem());
  picture.setSize({1280, 800});
  picture.setFeed(&feed);
  Stamps stamps;
  QObject::connect(
      &feed, &PictureFeed::changed, &feed, [&] { fetched_s = marks_of_s; });
  std::vector<double> late_ms;
  std::vector<double> marks_late_ms;
  QObject::connect(
      &window,
      &QQuickWindow::frameSwapped,
      &window,
      [&] {
        if (fetched_s != shown_s) {
          shown_s = fetched_s;
          const std::chrono::duration<double> now = Clock::now() - start;
          if (shown_s != kNoMarks) {
            marks_late_ms.push_back(1000.0 * (now.count() - shown_s));
          }
        }
        const QImage shown = feed.Picture();
        if (shown.isNull()) return;
        // Back from full range, as ToPicture stretches it.
        const int grey = qGray(shown.pixel(8, 8)) * 219 / 255 + 16;
        const auto since = Clock::now() - stamps.Find(grey);
        late_ms.push_back(
            std::chrono::duration<double, std::milli>(since).count());
      },
      Qt::DirectConnection);
  window.show();

  std::atomic<bool> done{false};
  std::atomic<std::int64_t> handed{0};
  double slowest_add_ms = 0.0;
  std::thread camera([&] {
    const std::string clip = Clip();
    std::unique_ptr<FrameSource> source;
    for (std::int64_t index = 0; !done; ++index) {
      Frame frame;
      while (frame.luma.empty()) {
        if (!source) {
          FileFrameSourceOptions reading;
          reading.threads = 1;
          auto opened = OpenClip(clip, reading);
          if (!opened) return;
          source = std::move(*opened);
        }
        auto next = source->Next();
        if (!next) return;
        if (next->has_value()) {
          frame = **next;
        } else {
          source.reset();
        }
      }
      // A camera's planes are a copy of its own as well.
      frame.luma = frame.luma.clone();
      frame.luma(cv::Rect(0, 0, kPatch_px, kPatch_px)) =
          cv::Scalar(Grey(index));
      frame.cb = frame.cb.clone();
      frame.cr = frame.cr.clone();
      frame.cb(cv::Rect(0, 0, kPatch_px / 2, kPatch_px / 2)) = cv::Scalar(128);
      frame.cr(cv::Rect(0, 0, kPatch_px / 2, kPatch_px / 2)) = cv::Scalar(128);
      const auto due =
          start +
          std::chrono::duration_cast<Clock::duration>(
              std::chrono::duration<double>(static_cast<double>(index) / kFps));
      std::this_thread::sleep_until(due);
      const auto now = Clock::now();
      frame.timestamp = now - start;
      frame.index = index;
      stamps.Put(index, now);
      live.Add(frame);
      const std::chrono::duration<double, std::milli> add = Clock::now() - now;
      slowest_add_ms = std::max(slowest_add_ms, add.count());
      feed.Show(ToPicture(frame, kShownWidth_px), feed.Marks());
      ++handed;
    }
  });

  std::vector<double> memory_mb;
  const auto begin = Clock::now();
  timespec cpu_before{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &cpu_before);
  QTimer every_second;
  QObject::connect(&every_second, &QTimer::timeout, [&] {
    memory_mb.push_back(Memory_mb());
    if (std::chrono::duration<double>(Clock::now() - begin).count() > seconds) {
      QApplication::quit();
    }
  });
  every_second.start(1000);
  QApplication::exec();
  done = true;
  camera.join();
  timespec cpu_after{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &cpu_after);
  const double took_s =
      std::chrono::duration<double>(Clock::now() - begin).count();

  std::printf("frames %lld, a second %.1f, no room for %lld, films %d\n",
              static_cast<long long>(handed),
              static_cast<double>(handed) / took_s,
              static_cast<long long>(dropped),
              films.load());
  std::printf(
      "cores in use %.2f, longest hand-over %.2f ms\n",
      (static_cast<double>(cpu_after.tv_sec - cpu_before.tv_sec) +
       static_cast<double>(cpu_after.tv_nsec - cpu_before.tv_nsec) * 1e-9) /
          took_s,
      slowest_add_ms);
  PrintLateness("pictures", std::move(late_ms));
  PrintLateness("marks", std::move(marks_late_ms));
  // Peaks of thirds: a film that is being made holds its pictures.
  const std::size_t third = memory_mb.size() / 3;
  if (third > 0) {
    for (std::size_t i = 0; i < 3; ++i) {
      const auto from =
          memory_mb.begin() + static_cast<std::ptrdiff_t>(i * third);
      std::printf(
          "memory at most %.0f MB in third %zu\n",
          *std::max_element(from, from + static_cast<std::ptrdiff_t>(third)),
          i + 1);
    }
  }
  return 0;
}

}  // namespace
}  // namespace flowkin

int main(int argc, char** argv) { return flowkin::Run(argc, argv); }
