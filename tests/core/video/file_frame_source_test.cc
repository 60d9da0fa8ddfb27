#include "core/video/file_frame_source.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <filesystem>
#include <limits>
#include <opencv2/imgproc.hpp>
#include <random>
#include <string>
#include <vector>

#include "tests/support/test_clip.h"

namespace flowkin {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing_support::ReadBytes;
using testing_support::ReadPictureNumber;
using testing_support::RunFfmpeg;
using testing_support::ScratchPath;
using testing_support::TestClip;
using testing_support::TestClipSpec;
using testing_support::WriteBytes;

// Times go through one rounding to whole nanoseconds.
constexpr double kNanosecondS = 1.0e-9;
// Matroska keeps whole milliseconds, so any time is off by up to half of one,
// and so is the first that is taken off.
constexpr double kMillisecondClockS = 1.0e-3;

// A mean of whole numbers, times the reciprocal of their count.
constexpr double kMeanRounding = 1.0e-9;

// Unevenly spaced, with a pause before picture 20.
const char kUneven[] = "N*3000+500*mod(N\\,3)+45000*gte(N\\,20)";
double UnevenS(int n) {
  return (n * 3000 + 500 * (n % 3) + (n >= 20 ? 45000 : 0)) / 90000.0;
}

struct Seen {
  std::vector<double> times_s;
  std::vector<int> numbers;  // read from the pictures
  std::vector<std::int64_t> indices;
  int damaged = 0;
  bool full_range = false;
  ClipInfo info;
  ClipInfo promised;
  std::string error;
  ErrorCode code = ErrorCode::kInternal;
};

Seen Read(Result<std::unique_ptr<FrameSource>> source) {
  Seen seen;
  if (!source) {
    seen.error = source.error().message;
    seen.code = source.error().code;
    return seen;
  }
  seen.promised = (*source)->Info();
  while (true) {
    Result<std::optional<Frame>> next = (*source)->Next();
    if (!next) {
      seen.error = next.error().message;
      return seen;
    }
    if (!*next) break;
    const Frame& frame = **next;
    EXPECT_EQ(frame.luma.cols, seen.promised.width_px);
    EXPECT_EQ(frame.luma.rows, seen.promised.height_px);
    EXPECT_EQ(frame.cb.cols, (frame.luma.cols + 1) / 2);
    EXPECT_EQ(frame.cr.rows, (frame.luma.rows + 1) / 2);
    EXPECT_TRUE(seen.times_s.empty() || frame.TimeS() > seen.times_s.back());
    seen.times_s.push_back(frame.TimeS());
    seen.numbers.push_back(ReadPictureNumber(frame.luma));
    seen.indices.push_back(frame.index);
    seen.damaged += frame.damaged ? 1 : 0;
    seen.full_range = frame.full_range;
  }
  EXPECT_FALSE((*source)->Next().value().has_value()) << "after the end";
  seen.info = (*source)->Info();
  EXPECT_EQ(seen.info.frame_count,
            static_cast<std::int64_t>(seen.times_s.size()));
  EXPECT_DOUBLE_EQ(seen.info.duration_s, seen.times_s.back());
  return seen;
}

Seen Read(const std::string& path, const FileFrameSourceOptions& options = {}) {
  return Read(OpenClip(path, options));
}

// Pictures first … last - 1 in order, each at the time the generator gave it.
template <typename TimeOf>
void ExpectPictures(const Seen& seen,
                    int first,
                    int last,
                    TimeOf time_of,
                    double tolerance_s = kNanosecondS) {
  ASSERT_EQ(seen.error, "");
  ASSERT_EQ(seen.times_s.size(), static_cast<std::size_t>(last - first));
  for (int n = first; n < last; ++n) {
    const auto i = static_cast<std::size_t>(n - first);
    ASSERT_EQ(seen.numbers[i], n);
    ASSERT_EQ(seen.indices[i], n - first);
    ASSERT_NEAR(seen.times_s[i], time_of(n) - time_of(first), tolerance_s)
        << "picture " << n;
  }
}

struct CodecCase {
  const char* label;
  const char* name;
  const char* encoder;
  double tolerance_s;
  bool full_range;
};

class Codec : public testing::TestWithParam<CodecCase> {};

TEST_P(Codec, GivesEveryPictureItsOwnTime) {
  const CodecCase& p = GetParam();
  TestClipSpec spec;
  spec.name = p.name;
  spec.encoder = p.encoder;
  spec.ticks_expression = kUneven;
  const TestClip clip(spec);
  for (int threads : {1, 2, 3}) {
    FileFrameSourceOptions options;
    options.threads = threads;
    const Seen seen = Read(clip.path(), options);
    ExpectPictures(seen, 0, spec.pictures, UnevenS, p.tolerance_s);
    EXPECT_EQ(seen.full_range, p.full_range);
    EXPECT_THAT(seen.info.warnings, IsEmpty());
    EXPECT_EQ(seen.info.timestamps, TimestampOrigin::kContainer);
    EXPECT_EQ(seen.info.time_scale, 1.0);
    EXPECT_EQ(seen.info.rotation_deg, 0);
  }
}

INSTANTIATE_TEST_SUITE_P(
    All,
    Codec,
    testing::Values(
        CodecCase{"H264Mp4",
                  "a.mp4",
                  "-c:v libx264 -bf 3 -video_track_timescale 90000",
                  kNanosecondS,
                  false},
        CodecCase{"H264MovIndexFirst",
                  "a.mov",
                  "-c:v libx264 -bf 3 -movflags +faststart "
                  "-video_track_timescale 90000",
                  kNanosecondS,
                  false},
        CodecCase{"H264Fragmented",
                  "f.mp4",
                  "-c:v libx264 -bf 2 -g 12 -movflags "
                  "frag_keyframe+empty_moov -video_track_timescale 90000",
                  kNanosecondS,
                  false},
        CodecCase{"H264NoBFrames",
                  "b.mp4",
                  "-c:v libx264 -bf 0 -video_track_timescale 90000",
                  kNanosecondS,
                  false},
        CodecCase{"H264TransportStream",
                  "a.ts",
                  "-c:v libx264 -bf 2",
                  kNanosecondS,
                  false},
        CodecCase{"H264Matroska",
                  "a.mkv",
                  "-c:v libx264 -bf 2",
                  kMillisecondClockS,
                  false},
        CodecCase{"H264Of422",
                  "c.mp4",
                  "-c:v libx264 -pix_fmt yuv422p -video_track_timescale 90000",
                  kNanosecondS,
                  false},
        CodecCase{"H264Of444TenBit",
                  "d.mp4",
                  "-c:v libx264 -pix_fmt yuv444p10le -video_track_timescale "
                  "90000",
                  kNanosecondS,
                  false},
        CodecCase{"Hevc",
                  "e.mp4",
                  "-c:v libx265 -tag:v hvc1 -x265-params "
                  "log-level=none:pools=1 -video_track_timescale 90000",
                  kNanosecondS,
                  false},
        CodecCase{"HevcTenBit",
                  "e.mov",
                  "-c:v libx265 -pix_fmt yuv420p10le -tag:v hvc1 -x265-params "
                  "log-level=none:pools=1 -video_track_timescale 90000",
                  kNanosecondS,
                  false},
        CodecCase{"MotionJpeg",
                  "g.mov",
                  "-c:v mjpeg -q:v 2 -pix_fmt yuvj420p -video_track_timescale "
                  "90000",
                  kNanosecondS,
                  true},
        CodecCase{"MotionJpegOf422",
                  "h.mov",
                  "-c:v mjpeg -q:v 2 -pix_fmt yuvj422p -video_track_timescale "
                  "90000",
                  kNanosecondS,
                  true},
        CodecCase{"Vp9WebM",
                  "i.webm",
                  "-c:v libvpx-vp9 -deadline realtime -cpu-used 8 -b:v 1M",
                  kMillisecondClockS,
                  false},
        CodecCase{"Vp9Matroska",
                  "j.mkv",
                  "-c:v libvpx-vp9 -deadline good -cpu-used 5 "
                  "-auto-alt-ref 1 -lag-in-frames 12 -b:v 1M",
                  kMillisecondClockS,
                  false}),
    [](const auto& case_info) { return case_info.param.label; });

TEST(OpenClip, AviHasOneRateAndSaysSo) {
  TestClipSpec spec;
  spec.name = "a.avi";
  spec.encoder = "-c:v mjpeg -q:v 2 -pix_fmt yuvj420p";
  spec.ticks_expression = "N";
  spec.ticks_per_second = 25;
  const TestClip clip(spec);
  const Seen seen = Read(clip.path());
  ExpectPictures(seen, 0, spec.pictures, [](int n) { return n / 25.0; });
  EXPECT_EQ(seen.info.timestamps, TimestampOrigin::kNominalRate);
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr("AVI")));
}

TEST(OpenClip, PromisesWhatTheContainerSays) {
  const TestClip clip({});
  const Seen seen = Read(clip.path());
  EXPECT_EQ(seen.promised.frame_count, 45);
  EXPECT_DOUBLE_EQ(seen.promised.duration_s, 1.5);
  EXPECT_DOUBLE_EQ(seen.promised.frame_rate_hz, 30.0);
  EXPECT_EQ(seen.promised.width_px, 320);
}

TEST(OpenClip, FirstFrameIsTimeZeroWhateverTheStart) {
  TestClipSpec spec;
  spec.encoder +=
      " -video_track_timescale 90000 -output_ts_offset 1.5 -use_editlist 0";
  spec.ticks_expression = kUneven;
  for (const char* name : {"a.mp4", "a.ts"}) {
    spec.name = name;
    const TestClip clip(spec);
    ExpectPictures(Read(clip.path()), 0, spec.pictures, UnevenS);
  }
}

TEST(OpenClip, EditListCutsTheStart) {
  TestClipSpec spec;
  spec.encoder = "-c:v libx264 -bf 2 -g 250 -video_track_timescale 90000";
  spec.ticks_expression = kUneven;
  const TestClip clip(spec);
  const ScratchPath cut("cut.mp4");
  // Starts between pictures 10 and 11; the key frame before stays in the file.
  RunFfmpeg("-ss 0.36 -i '" + clip.path() + "' -c copy '" + cut.path() + "'");
  const Seen seen = Read(cut.path());
  ASSERT_EQ(seen.error, "");
  const int first = seen.numbers.front();
  EXPECT_GE(first, 10);
  EXPECT_LE(first, 11);
  ExpectPictures(seen, first, spec.pictures, UnevenS);
  EXPECT_THAT(seen.info.warnings, IsEmpty());
}

// Phones trim a clip by shortening its edit: segment_duration of the first
// entry, ISO/IEC 14496-12, 8.6.6, in ticks of the movie (1000 a second here).
TEST(OpenClip, EditListCutsTheEnd) {
  TestClipSpec spec;
  spec.encoder = "-c:v libx264 -bf 2 -video_track_timescale 90000";
  const TestClip clip(spec);
  std::vector<std::uint8_t> file = ReadBytes(clip.path());
  const char kBox[] = {'e', 'l', 's', 't'};
  const auto box =
      std::search(file.begin(), file.end(), std::begin(kBox), std::end(kBox));
  ASSERT_NE(box, file.end());
  box[12] = 0;
  box[13] = 0;
  box[14] = 990 >> 8;
  box[15] = 990 & 0xff;
  const ScratchPath trimmed("trimmed.mp4");
  WriteBytes(trimmed.path(), file);
  const Seen seen = Read(trimmed.path());
  ExpectPictures(seen, 0, 30, [](int n) { return n / 30.0; });
  EXPECT_THAT(seen.info.warnings, IsEmpty());
}

TEST(OpenClip, SoundBesideThePicturesDoesNoHarm) {
  const TestClip clip({});
  for (const char* name : {"s.mp4", "s.mkv"}) {
    const ScratchPath with(name);
    RunFfmpeg("-i '" + clip.path() +
              "' -f lavfi -i sine=d=4 -map 0:v -map 1:a -c:v copy -c:a aac '" +
              with.path() + "'");
    const Seen seen = Read(with.path());
    ExpectPictures(
        seen, 0, 45, [](int n) { return n / 30.0; }, kMillisecondClockS);
    EXPECT_THAT(seen.info.warnings, IsEmpty()) << name;
  }
}

// The matrix of the track header, ISO/IEC 14496-12, 8.3.2 (version 0 box).
std::vector<std::uint8_t> WithMatrix(std::vector<std::uint8_t> file,
                                     const std::vector<int>& abcd) {
  const char kBox[] = {'t', 'k', 'h', 'd'};
  const auto box =
      std::search(file.begin(), file.end(), std::begin(kBox), std::end(kBox));
  EXPECT_NE(box, file.end());
  const auto start = static_cast<std::size_t>(box - file.begin()) + 44;
  const std::int32_t matrix[9] = {abcd[0] * 65536,
                                  abcd[1] * 65536,
                                  0,
                                  abcd[2] * 65536,
                                  abcd[3] * 65536,
                                  0,
                                  0,
                                  0,
                                  1 << 30};
  for (std::size_t i = 0; i < 9; ++i) {
    for (std::size_t byte = 0; byte < 4; ++byte) {
      file[start + 4 * i + byte] = static_cast<std::uint8_t>(
          static_cast<std::uint32_t>(matrix[i]) >> (24 - 8 * byte));
    }
  }
  return file;
}

TEST(OpenClip, TurnsPicturesUpright) {
  TestClipSpec spec;
  spec.pictures = 3;
  spec.encoder = "-c:v libx264 -qp 0 -preset ultrafast";
  const TestClip clip(spec);
  const std::vector<std::uint8_t> file = ReadBytes(clip.path());
  const cv::Mat stored =
      testing_support::TestPictureI420(1, 320, 240).rowRange(0, 240);
  struct Case {
    std::vector<int> abcd;
    int rotate_flag;  // cv::RotateFlags
    int degrees;
  };
  for (const Case& c :
       {Case{{0, 1, -1, 0}, cv::ROTATE_90_CLOCKWISE, 90},
        Case{{-1, 0, 0, -1}, cv::ROTATE_180, 180},
        Case{{0, -1, 1, 0}, cv::ROTATE_90_COUNTERCLOCKWISE, 270}}) {
    const ScratchPath turned("turned.mp4");
    WriteBytes(turned.path(), WithMatrix(file, c.abcd));
    auto source = OpenClip(turned.path());
    ASSERT_TRUE(source);
    EXPECT_EQ((*source)->Info().rotation_deg, c.degrees);
    cv::Mat expected;
    cv::rotate(stored, expected, c.rotate_flag);
    EXPECT_EQ((*source)->Info().width_px, expected.cols);
    ASSERT_TRUE((*source)->Next().value().has_value());
    const std::optional<Frame> second = (*source)->Next().value();
    ASSERT_TRUE(second);
    EXPECT_EQ(cv::norm(second->luma, expected, cv::NORM_INF), 0.0);
    // The chroma's bright half follows: right -> bottom, left, top.
    const cv::Mat& cb = second->cb;
    const double top = cv::mean(cb.rowRange(0, cb.rows / 2))[0];
    const double left = cv::mean(cb.colRange(0, cb.cols / 2))[0];
    EXPECT_NEAR(top,
                c.degrees == 90    ? 90.0
                : c.degrees == 270 ? 160.0
                                   : 125.0,
                kMeanRounding);
    EXPECT_NEAR(left, c.degrees == 180 ? 160.0 : 125.0, kMeanRounding);
  }
}

TEST(OpenClip, UndoesMirroring) {
  TestClipSpec spec;
  spec.pictures = 3;
  spec.encoder = "-c:v libx264 -qp 0 -preset ultrafast";
  const TestClip clip(spec);
  const ScratchPath mirrored("mirrored.mp4");
  WriteBytes(mirrored.path(),
             WithMatrix(ReadBytes(clip.path()), {-1, 0, 0, 1}));
  auto source = OpenClip(mirrored.path());
  ASSERT_TRUE(source);
  const std::optional<Frame> first = (*source)->Next().value();
  ASSERT_TRUE(first);
  cv::Mat expected;
  cv::flip(testing_support::TestPictureI420(0, 320, 240).rowRange(0, 240),
           expected,
           1);
  EXPECT_EQ(cv::norm(first->luma, expected, cv::NORM_INF), 0.0);
}

TEST(OpenClip, SlantedMatrixWarns) {
  TestClipSpec spec;
  spec.pictures = 3;
  const TestClip clip(spec);
  const ScratchPath slanted("slanted.mp4");
  WriteBytes(slanted.path(), WithMatrix(ReadBytes(clip.path()), {1, 1, -1, 1}));
  const Seen seen = Read(slanted.path());
  EXPECT_EQ(seen.numbers, (std::vector<int>{0, 1, 2}));
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr("slant")));
}

std::string TagArguments(const std::string& key, const std::string& value) {
  return " -movflags use_metadata_tags -metadata " + key + "=" + value;
}

TEST(SlowMotion, TagAsText) {
  for (const char* name : {"slow.mp4", "slow.mov"}) {
    TestClipSpec spec;
    spec.name = name;
    spec.encoder += TagArguments("com.android.capture.fps", "240.000000");
    const TestClip clip(spec);
    const Seen seen = Read(clip.path());
    EXPECT_EQ(seen.info.time_scale, 0.125);
    EXPECT_DOUBLE_EQ(seen.info.frame_rate_hz, 240.0);
    ExpectPictures(seen, 0, 45, [](int n) { return n / 240.0; });
    EXPECT_THAT(seen.info.warnings, IsEmpty());
  }
}

// Phones store the rate as a big-endian float: value type 23 of the QuickTime
// file format's metadata item ('data' atom).
TEST(SlowMotion, TagAsFloat) {
  TestClipSpec spec;
  spec.name = "slow.mp4";
  spec.encoder += TagArguments("com.android.capture.fps", "QQQQ");
  const TestClip clip(spec);
  std::vector<std::uint8_t> file = ReadBytes(clip.path());
  const std::uint8_t text[] = {
      'd', 'a', 't', 'a', 0, 0, 0, 1, 0, 0, 0, 0, 'Q', 'Q', 'Q', 'Q'};
  const auto item =
      std::search(file.begin(), file.end(), std::begin(text), std::end(text));
  ASSERT_NE(item, file.end());
  item[7] = 23;
  const std::uint8_t number[] = {0x43, 0x70, 0, 0};  // IEEE 754: 240
  std::copy(std::begin(number), std::end(number), item + 12);
  const ScratchPath patched("float.mp4");
  WriteBytes(patched.path(), file);
  const Seen seen = Read(patched.path());
  EXPECT_EQ(seen.info.time_scale, 0.125);
  ExpectPictures(seen, 0, 45, [](int n) { return n / 240.0; });
}

TEST(SlowMotion, OtherFamilysTag) {
  TestClipSpec spec;
  spec.name = "slow.mov";
  spec.encoder += TagArguments("com.example.quicktime.capture-fps", "120");
  const TestClip clip(spec);
  const Seen seen = Read(clip.path());
  EXPECT_EQ(seen.info.time_scale, 0.25);
  ExpectPictures(seen, 0, 45, [](int n) { return n / 120.0; });
}

TEST(SlowMotion, FileThatPlaysAtCaptureRateIsRealTime) {
  TestClipSpec spec;
  spec.name = "fast.mov";
  // Three lost pictures do not turn it into slow motion.
  spec.ticks_expression = "375*(N+3*gte(N\\,20))";
  spec.encoder += " -video_track_timescale 90000" +
                  TagArguments("com.android.capture.fps", "240");
  const TestClip clip(spec);
  const Seen seen = Read(clip.path());
  EXPECT_EQ(seen.info.time_scale, 1.0);
  ExpectPictures(
      seen, 0, 45, [](int n) { return (n + (n >= 20 ? 3 : 0)) / 240.0; });
}

TEST(SlowMotion, ByOptionWithoutATag) {
  TestClipSpec spec;
  spec.ticks_expression = kUneven;
  spec.encoder += " -video_track_timescale 90000";
  const TestClip clip(spec);
  FileFrameSourceOptions options;
  options.shot_fps = 240.0;
  const Seen seen = Read(clip.path(), options);
  // Uneven intervals of 3500, 3500 and 2000 ticks; the pause is left out of
  // the rate. 45 pictures have 44 intervals.
  const double ticks =
      (UnevenS(44) - 0.5) * 90000.0 - (UnevenS(20) - UnevenS(19) - 0.5) * 90000;
  const double playing_hz = 43.0 * 90000.0 / ticks;
  EXPECT_NEAR(seen.info.time_scale, playing_hz / 240.0, 1e-12);
  const double scale = seen.info.time_scale;
  ExpectPictures(seen, 0, 45, [scale](int n) { return UnevenS(n) * scale; });
}

TEST(SlowMotion, OptionOverridesTheTag) {
  TestClipSpec spec;
  spec.encoder += TagArguments("com.android.capture.fps", "240");
  const TestClip clip(spec);
  FileFrameSourceOptions options;
  options.shot_fps = 30.0;
  EXPECT_EQ(Read(clip.path(), options).info.time_scale, 1.0);
  options.shot_fps = 120.0;
  const Seen seen = Read(clip.path(), options);
  EXPECT_EQ(seen.info.time_scale, 0.25);
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr("240")));
}

TEST(OpenClip, RefusesOptionsOutOfRange) {
  const TestClip clip({});
  FileFrameSourceOptions options;
  for (double shot_fps : {0.0, -5.0, 1e9, std::nan("")}) {
    options.shot_fps = shot_fps;
    const Seen seen = Read(clip.path(), options);
    EXPECT_NE(seen.error, "");
    EXPECT_EQ(seen.code, ErrorCode::kInvalidArgument);
  }
  options.shot_fps.reset();
  options.threads = 0;
  EXPECT_EQ(Read(clip.path(), options).code, ErrorCode::kInvalidArgument);
}

void ExpectUnreadable(const std::string& path, const std::string& part) {
  const Seen seen = Read(path);
  EXPECT_EQ(seen.code, ErrorCode::kUnreadable) << path;
  EXPECT_THAT(seen.error, HasSubstr(part));
  // One message, each sentence ended.
  EXPECT_THAT(seen.error, testing::EndsWith("."));
  EXPECT_EQ(seen.error.find('\n'), std::string::npos);
}

TEST(Unreadable, ThingsThatAreNoFilm) {
  const ScratchPath folder("folder");
  std::filesystem::create_directory(folder.path());
  ExpectUnreadable(folder.path(), "folder");
  ExpectUnreadable(folder.path() + "/none.mp4", "no file");

  const ScratchPath text("text.mp4");
  WriteBytes(text.path(), std::vector<std::uint8_t>(2000, 'a'));
  ExpectUnreadable(text.path(), "not a video");

  const ScratchPath empty("empty.mp4");
  WriteBytes(empty.path(), {});
  ExpectUnreadable(empty.path(), "empty");

  const ScratchPath pipe("pipe.mp4");
  ASSERT_EQ(mkfifo(pipe.path().c_str(), 0600), 0);
  ExpectUnreadable(pipe.path(), "not a plain file");

  const ScratchPath list("list.m3u8");
  const std::string lines =
      "#EXTM3U\n#EXT-X-TARGETDURATION:1\n#EXTINF:1,\na.ts\n#EXT-X-ENDLIST\n";
  WriteBytes(list.path(), {lines.begin(), lines.end()});
  ExpectUnreadable(list.path(), "not a video");

  std::mt19937 random(7);
  std::vector<std::uint8_t> noise(100000);
  for (std::uint8_t& byte : noise) byte = static_cast<std::uint8_t>(random());
  const ScratchPath rubbish("noise.mp4");
  WriteBytes(rubbish.path(), noise);
  ExpectUnreadable(rubbish.path(), "Give");
}

TEST(Unreadable, SoundAndStillPictures) {
  const ScratchPath sound("sound.m4a");
  RunFfmpeg("-f lavfi -i sine=d=1 -c:a aac '" + sound.path() + "'");
  ExpectUnreadable(sound.path(), "sound but no pictures");

  for (const char* name : {"still.png", "still.jpg", "still.gif"}) {
    const ScratchPath still(name);
    RunFfmpeg("-f lavfi -i testsrc=s=320x240:d=1 -frames:v 1 -update 1 '" +
              still.path() + "'");
    ExpectUnreadable(still.path(), "picture");
  }
  const ScratchPath one("one.mp4");
  RunFfmpeg("-f lavfi -i testsrc=s=320x240:d=1 -frames:v 1 '" + one.path() +
            "'");
  ExpectUnreadable(one.path(), "single picture");

  const ScratchPath cover("cover.png");
  RunFfmpeg("-f lavfi -i testsrc=s=320x240:d=1 -frames:v 1 -update 1 '" +
            cover.path() + "'");
  const ScratchPath covered("covered.m4a");
  RunFfmpeg("-i '" + sound.path() + "' -i '" + cover.path() +
            "' -map 0 -map 1 -c copy -disposition:v attached_pic '" +
            covered.path() + "'");
  ExpectUnreadable(covered.path(), "sound but no pictures");
}

TEST(Unreadable, StreamsWithoutTimes) {
  const TestClip clip({});
  const ScratchPath bare("bare.h264");
  RunFfmpeg("-i '" + clip.path() + "' -c copy '" + bare.path() + "'");
  ExpectUnreadable(bare.path(), "no times");
}

TEST(Unreadable, PicturesTooSmallOrTooLarge) {
  const ScratchPath small("small.mov");
  RunFfmpeg("-f lavfi -i testsrc=s=8x8:d=1 -c:v mjpeg -pix_fmt yuvj420p '" +
            small.path() + "'");
  ExpectUnreadable(small.path(), "8 x 8");
  const ScratchPath large("large.mkv");
  RunFfmpeg(
      "-f lavfi -i color=s=12000x9000:r=2:d=1 -c:v mjpeg -pix_fmt "
      "yuvj420p '" +
      large.path() + "'");
  ExpectUnreadable(large.path(), "12000 x 9000");
}

TEST(Damaged, CutClipWithIndexFirst) {
  TestClipSpec spec;
  spec.encoder =
      "-c:v libx264 -qp 20 -movflags +faststart -video_track_timescale 90000";
  const TestClip clip(spec);
  std::vector<std::uint8_t> file = ReadBytes(clip.path());
  file.resize(file.size() * 6 / 10);
  const ScratchPath cut("cut.mp4");
  WriteBytes(cut.path(), file);
  const Seen seen = Read(cut.path());
  ASSERT_EQ(seen.error, "");
  EXPECT_GT(seen.times_s.size(), 10U);
  EXPECT_LT(seen.times_s.size(), 45U);
  // All but the torn last one are right.
  for (std::size_t i = 0; i + 3 < seen.numbers.size(); ++i) {
    EXPECT_EQ(seen.numbers[i], static_cast<int>(i));
  }
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr("ends early: ")));
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr(" of 1.5 s")));
}

TEST(Damaged, CutClipWithIndexLast) {
  const TestClip clip({});
  std::vector<std::uint8_t> file = ReadBytes(clip.path());
  file.resize(file.size() * 6 / 10);
  const ScratchPath cut("cut.mp4");
  WriteBytes(cut.path(), file);
  ExpectUnreadable(cut.path(), "cut off");
}

TEST(Damaged, CutMatroskaAndFragments) {
  for (const char* name : {"cut.mkv", "cut.webm", "cut.mp4"}) {
    TestClipSpec spec;
    spec.name = name;
    spec.encoder = std::string(name) == "cut.webm"
                       ? "-c:v libvpx-vp9 -deadline realtime -cpu-used 8"
                       : "-c:v libx264 -g 10";
    if (std::string(name) == "cut.mp4") {
      spec.encoder += " -movflags frag_keyframe+empty_moov";
    }
    const TestClip clip(spec);
    std::vector<std::uint8_t> file = ReadBytes(clip.path());
    file.resize(file.size() / 2);
    const ScratchPath cut(name);
    WriteBytes(cut.path(), file);
    const Seen seen = Read(cut.path());
    ASSERT_EQ(seen.error, "") << name;
    EXPECT_GT(seen.times_s.size(), 5U);
    EXPECT_LT(seen.times_s.size(), 45U);
    // A clip in fragments does not say beforehand how long it is.
    EXPECT_THAT(seen.info.warnings,
                Contains(testing::AnyOf(HasSubstr("ends early"),
                                        HasSubstr("cut off after"))));
  }
}

TEST(Damaged, FlippedBytesAreTold) {
  TestClipSpec spec;
  spec.encoder =
      "-c:v libx264 -qp 20 -g 15 -movflags +faststart -video_track_timescale "
      "90000";
  const TestClip clip(spec);
  std::vector<std::uint8_t> file = ReadBytes(clip.path());
  const char kBox[] = {'m', 'd', 'a', 't'};
  const auto data =
      std::search(file.begin(), file.end(), std::begin(kBox), std::end(kBox)) -
      file.begin();
  std::mt19937 random(3);
  const std::size_t length = file.size() - static_cast<std::size_t>(data);
  for (int i = 0; i < 40; ++i) {
    const std::size_t at =
        static_cast<std::size_t>(data) + 800 + random() % (length - 1000);
    file[at] = static_cast<std::uint8_t>(file[at] ^ (1U << (random() % 8)));
  }
  const ScratchPath flipped("flipped.mp4");
  WriteBytes(flipped.path(), file);
  const Seen seen = Read(flipped.path());
  ASSERT_EQ(seen.error, "");
  EXPECT_GT(seen.times_s.size(), 20U);
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr("damaged")));
  for (std::size_t i = 0; i < seen.times_s.size(); ++i) {
    // Times come from the index, which is whole.
    const double frames = seen.times_s[i] * 30.0;
    EXPECT_NEAR(frames, std::round(frames), 1e-6);
  }
}

TEST(Damaged, TimesThatJumpByHoursAreLeftOut) {
  TestClipSpec spec;
  spec.name = "jump.mkv";
  spec.ticks_expression = "N*3000+eq(N\\,20)*90000*7200";
  // The muxer itself refuses falling times, so only one picture is off and it
  // is the last of its group.
  spec.encoder = "-c:v mjpeg -pix_fmt yuvj420p";
  spec.pictures = 21;
  const TestClip clip(spec);
  const Seen seen = Read(clip.path());
  ExpectPictures(
      seen, 0, 20, [](int n) { return n / 30.0; }, kMillisecondClockS);
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr("times")));
}

TEST(Damaged, SizeChangeEndsTheClip) {
  TestClipSpec spec;
  spec.name = "a.ts";
  const TestClip first(spec);
  spec.width_px = 160;
  spec.height_px = 128;
  const TestClip second(spec);
  std::vector<std::uint8_t> file = ReadBytes(first.path());
  const std::vector<std::uint8_t> rest = ReadBytes(second.path());
  file.insert(file.end(), rest.begin(), rest.end());
  const ScratchPath spliced("spliced.ts");
  WriteBytes(spliced.path(), file);
  const Seen seen = Read(spliced.path());
  ASSERT_EQ(seen.error, "");
  EXPECT_GE(seen.times_s.size(), 43U);
  EXPECT_LE(seen.times_s.size(), 45U);
  EXPECT_THAT(seen.info.warnings, Contains(HasSubstr("changes its size")));
}

TEST(OpenClipFromMemory, ReadsTheSameAsAFile) {
  TestClipSpec spec;
  spec.ticks_expression = kUneven;
  spec.encoder += " -video_track_timescale 90000";
  const TestClip clip(spec);
  const std::vector<std::uint8_t> file = ReadBytes(clip.path());
  ExpectPictures(Read(OpenClipFromMemory(file.data(), file.size(), "m", {})),
                 0,
                 45,
                 UnevenS);
  EXPECT_EQ(Read(OpenClipFromMemory(file.data(), 0, "m", {})).code,
            ErrorCode::kUnreadable);
}

TEST(OpenClip, OddNamesAreJustNames) {
  const TestClip clip({});
  for (const char* name : {"a b.mp4",
                           "per%dcent%.mp4",
                           "http:colon.mp4",
                           "umlaut-\xc3\xbc.mp4",
                           "quote'.mp4"}) {
    const ScratchPath odd(name);
    std::filesystem::copy_file(clip.path(), odd.path());
    EXPECT_EQ(Read(odd.path()).times_s.size(), 45U) << name;
  }
}

TEST(OpenClip, FramesMayOutliveTheSource) {
  const TestClip clip({});
  std::vector<Frame> kept;
  {
    auto source = OpenClip(clip.path());
    ASSERT_TRUE(source);
    while (std::optional<Frame> frame = (*source)->Next().value()) {
      kept.push_back(*frame);
    }
  }
  ASSERT_EQ(kept.size(), 45U);
  for (std::size_t i = 0; i < kept.size(); ++i) {
    EXPECT_EQ(ReadPictureNumber(kept[i].luma), static_cast<int>(i));
  }
}

}  // namespace
}  // namespace flowkin
