#include "tests/support/test_clip.h"

#include <unistd.h>

#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace flowkin::testing_support {
namespace {

constexpr int kCells = 4;  // a side: 8 bits of the number and their opposites
constexpr std::uint8_t kDark = 40;
constexpr std::uint8_t kLight = 200;

[[noreturn]] void Stop(const std::string& message) {
  std::fprintf(stderr, "%s\n", message.c_str());
  std::exit(1);
}

std::string UniquePath(const std::string& ending) {
  static std::atomic<int> counter{0};
  const std::filesystem::path folder = FLOWKIN_SCRATCH_DIR;
  std::filesystem::create_directories(folder);
  return (folder / (std::to_string(getpid()) + "-" + std::to_string(counter++) +
                    "-" + ending))
      .string();
}

bool CellIsLight(int number, int cell) {
  const bool bit = ((number >> (cell % 8)) & 1) != 0;
  return cell < 8 ? bit : !bit;
}

}  // namespace

ScratchPath::ScratchPath(const std::string& ending)
    : path_(UniquePath(ending)) {}

ScratchPath::~ScratchPath() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

void RunFfmpeg(const std::string& arguments) {
  const std::string command =
      "ffmpeg -nostdin -hide_banner -loglevel error -y -threads 1 " + arguments;
  if (std::system(command.c_str()) != 0) Stop("failed: " + command);
}

cv::Mat TestPictureI420(int number, int width_px, int height_px) {
  cv::Mat out(height_px * 3 / 2, width_px, CV_8UC1);
  for (int y = 0; y < height_px; ++y) {
    for (int x = 0; x < width_px; ++x) {
      const int cell =
          (y * kCells / height_px) * kCells + x * kCells / width_px;
      out.at<std::uint8_t>(y, x) = CellIsLight(number, cell) ? kLight : kDark;
    }
  }
  // Each corner of the chroma planes has its own pair of values.
  const int half_width = width_px / 2;
  const int half_height = height_px / 2;
  std::uint8_t* cb = out.ptr(height_px);
  std::uint8_t* cr = cb + half_width * half_height;
  for (int y = 0; y < half_height; ++y) {
    for (int x = 0; x < half_width; ++x) {
      *cb++ = x < half_width / 2 ? 90 : 160;
      *cr++ = y < half_height / 2 ? 100 : 150;
    }
  }
  return out;
}

int ReadPictureNumber(const cv::Mat& luma) {
  int bits[2] = {0, 0};
  for (int cell = 0; cell < kCells * kCells; ++cell) {
    const cv::Rect inner((4 * (cell % kCells) + 1) * luma.cols / (4 * kCells),
                         (4 * (cell / kCells) + 1) * luma.rows / (4 * kCells),
                         luma.cols / (2 * kCells),
                         luma.rows / (2 * kCells));
    const double mean = cv::mean(luma(inner))[0];
    if (mean > (kDark + kLight) / 2.0) bits[cell / 8] |= 1 << (cell % 8);
  }
  return bits[0] == (bits[1] ^ 0xff) ? bits[0] : -1;
}

TestClip::TestClip(const TestClipSpec& spec) : path_(UniquePath(spec.name)) {
  const ScratchPath raw("raw.yuv");
  {
    std::ofstream stream(raw.path(), std::ios::binary);
    for (int i = 0; i < spec.pictures; ++i) {
      const cv::Mat picture = TestPictureI420(i, spec.width_px, spec.height_px);
      stream.write(reinterpret_cast<const char*>(picture.data),
                   static_cast<std::streamsize>(picture.total()));
    }
    if (!stream) Stop("cannot write " + raw.path());
  }
  const std::string base = "1/" + std::to_string(spec.ticks_per_second);
  RunFfmpeg("-f rawvideo -pix_fmt yuv420p -s " + std::to_string(spec.width_px) +
            "x" + std::to_string(spec.height_px) + " -r 30 -i '" + raw.path() +
            "' -vf 'settb=" + base + ",setpts=" + spec.ticks_expression +
            "' -fps_mode passthrough -enc_time_base " + base + " " +
            spec.encoder + " '" + path_ + "'");
}

TestClip::~TestClip() {
  std::error_code ignored;
  std::filesystem::remove(path_, ignored);
}

std::vector<std::uint8_t> ReadBytes(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream),
          std::istreambuf_iterator<char>()};
}

void WriteBytes(const std::string& path,
                const std::vector<std::uint8_t>& bytes) {
  std::ofstream stream(path, std::ios::binary);
  stream.write(reinterpret_cast<const char*>(bytes.data()),
               static_cast<std::streamsize>(bytes.size()));
  if (!stream) Stop("cannot write " + path);
}

}  // namespace flowkin::testing_support
