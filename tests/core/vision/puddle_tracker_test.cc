// Drawn puddles: a disc of known radius with a soft edge on a plain tile, with
// or without a ruler, in planes as a camera delivers them.

#include "core/vision/puddle_tracker.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>

#include "core/base/random.h"
#include "core/vision/image_scale.h"
#include "core/vision/puddle_outline.h"
#include "core/vision/puddle_picture.h"

namespace flowkin {
namespace {

constexpr double kFps = 15.0;

struct Disc {
  double x, y, r;
  double luma = -1.0;      // of something grey; below 0: the paint
  double ripple_px = 0.0;  // of the rim, on the left side
};

struct Look {
  int width = 640, height = 360;
  double tile[3] = {200, 128, 128};
  double paint[3] = {110, 140, 90};
  double rim = 0.0;      // luma of a dark line on the edge
  double shade = 0.0;    // luma, +- from the lit side to the dark one
  double stripes = 0.0;  // grey stripes over the tile, +- so much luma
  double noise = 1.0;
  double mm_px = 0.0;        // px per mm of a ruler; 0: none
  double ruler_angle = 0.0;  // radians
  int long_every = 10;       // marks; 5 and 10 as on a ruler, 1: all alike
};

// 0..1 across a soft edge of about two px.
double Soft(double d) { return 1.0 / (1.0 + std::exp(-2.2 * d)); }

double RulerInk(const Look& look, double x, double y) {
  if (look.mm_px <= 0.0) return 0.0;
  const double cx = 0.5 * look.width, cy = 0.85 * look.height;
  const double c = std::cos(look.ruler_angle), s = std::sin(look.ruler_angle);
  const double u = (x - cx) * c + (y - cy) * s;
  const double v = -(x - cx) * s + (y - cy) * c;
  const double mark = std::round(u / look.mm_px);
  if (std::abs(mark) > 45) return 0.0;
  const int index = static_cast<int>(mark) + 50;
  double length = 4.0;
  if (look.long_every == 10) {
    length = index % 10 == 0 ? 8.0 : index % 5 == 0 ? 6.0 : 4.0;
  } else if (look.long_every == 2) {
    length = index % 8 == 0   ? 9.0
             : index % 4 == 0 ? 7.0
             : index % 2 == 0 ? 5.5
                              : 4.0;
  }
  const double across = std::abs(u - mark * look.mm_px);
  const double width = 0.15 * look.mm_px;
  return Soft(1.5 * (width + 0.5 - across)) * Soft(v) *
         Soft(length * look.mm_px - v);
}

Frame Draw(const Look& look,
           const std::vector<Disc>& discs,
           double t_s,
           Random& random,
           double dx = 0.0,
           double dy = 0.0) {
  Frame frame;
  frame.timestamp = std::chrono::nanoseconds(std::llround(t_s * 1e9));
  frame.luma.create(look.height, look.width, CV_8UC1);
  frame.cb.create((look.height + 1) / 2, (look.width + 1) / 2, CV_8UC1);
  frame.cr.create(frame.cb.size(), CV_8UC1);
  const auto value = [&](int channel, double x, double y) {
    x -= dx;
    y -= dy;
    double v = look.tile[channel];
    if (channel == 0) {
      v += look.stripes * std::tanh(3.0 * std::sin(0.25 * y + 0.03 * x));
      // Something to hold on to: the table round the tile and a ruler.
      if (x < 30 || y < 16 || x > look.width - 50) {
        v = 120 + 20 * std::sin(0.2 * y) + 10 * std::sin(0.05 * x);
      }
      v -= 150 * RulerInk(look, x, y);
    }
    for (const Disc& d : discs) {
      if (d.r <= 0.0) continue;
      double off = d.r - std::hypot(x - d.x, y - d.y);
      if (x < d.x)
        off += d.ripple_px * std::sin(24 * std::atan2(y - d.y, d.x - x));
      if (off < -8) continue;
      const double in = Soft(off);
      double own = channel == 0 ? d.luma : 128.0;
      if (d.luma < 0.0) own = look.paint[channel];
      if (channel == 0) own += look.shade * std::pow((x - d.x) / d.r, 3);
      v += in * (own - v);
      if (channel == 0) v += look.rim * std::exp(-0.5 * off * off / 1.5);
    }
    return v;
  };
  for (int y = 0; y < look.height; ++y) {
    for (int x = 0; x < look.width; ++x) {
      frame.luma.at<unsigned char>(y, x) = cv::saturate_cast<unsigned char>(
          value(0, x, y) + look.noise * random.Normal());
    }
  }
  for (int y = 0; y < frame.cb.rows; ++y) {
    for (int x = 0; x < frame.cb.cols; ++x) {
      frame.cb.at<unsigned char>(y, x) = cv::saturate_cast<unsigned char>(
          value(1, 2 * x + 0.5, 2 * y + 0.5) + 0.5 * random.Normal());
      frame.cr.at<unsigned char>(y, x) = cv::saturate_cast<unsigned char>(
          value(2, 2 * x + 0.5, 2 * y + 0.5) + 0.5 * random.Normal());
    }
  }
  return frame;
}

// Poured from 1.0 to 1.8 s, then R^8 grows in proportion to time.
double RadiusPx(double t_s) {
  if (t_s <= 1.0) return 0.0;
  if (t_s <= 1.8) return 45.0 * std::sqrt((t_s - 1.0) / 0.8);
  return 45.0 * std::pow((t_s - 1.65) / 0.15, 0.125);
}

FrontTrack Film(
    const Look& look,
    const std::function<std::vector<Disc>(double)>& discs,
    double film_s = 5.0,
    const std::function<std::pair<double, double>(double)>& shake = nullptr) {
  Random random(7);
  PuddleTracker tracker;
  for (int i = 0; i < film_s * kFps; ++i) {
    const double t = i / kFps;
    const auto move = shake ? shake(t) : std::pair<double, double>{0.0, 0.0};
    tracker.Add(Draw(look, discs(t), t, random, move.first, move.second));
  }
  return tracker.Finish();
}

std::vector<Disc> OnePuddle(double t) { return {{330.3, 150.7, RadiusPx(t)}}; }

TEST(PuddleTracker, FollowsTheRadiusToATenthOfAPixel) {
  const FrontTrack track = Film({}, OnePuddle);
  ASSERT_GE(track.samples.size(), 20U);
  // A symmetric edge has no bias: what is left is noise and 8-bit rounding.
  constexpr double kEdge = 0.1;
  for (const FrontSample& s : track.samples) {
    if (s.t_s < 2.0) continue;
    EXPECT_NEAR(s.radius_px, RadiusPx(s.t_s), kEdge) << s.t_s;
    EXPECT_NEAR(s.x_px, 330.3, kEdge);
    EXPECT_NEAR(s.y_px, 150.7, kEdge);
  }
  ASSERT_TRUE(track.start_s);
  EXPECT_NEAR(*track.start_s, 1.0, 2.0 / kFps);  // two frames
  EXPECT_FALSE(track.rim_only);
}

TEST(PuddleTracker, FollowsARimOfTheTilesOwnColour) {
  Look look;
  for (int c = 0; c < 3; ++c) look.paint[c] = look.tile[c];
  look.rim = -45.0;
  const FrontTrack track = Film(look, OnePuddle);
  ASSERT_GE(track.samples.size(), 20U);
  EXPECT_TRUE(track.rim_only);
  // The steepest place of a line lies beside its middle: up to its half width.
  constexpr double kRim = 2.0;
  for (const FrontSample& s : track.samples) {
    if (s.t_s < 2.2) continue;
    EXPECT_NEAR(s.radius_px, RadiusPx(s.t_s), kRim) << s.t_s;
  }
}

TEST(PuddleTracker, FollowsPaintThatDiffersInColourOnly) {
  Look look;
  look.paint[0] = look.tile[0];
  const FrontTrack track = Film(look, OnePuddle);
  ASSERT_GE(track.samples.size(), 20U);
  constexpr double kChromaEdge = 0.3;  // half the resolution
  EXPECT_NEAR(track.samples.back().radius_px,
              RadiusPx(track.samples.back().t_s),
              kChromaEdge);
}

// Stripes as strong as the paint's own step, seen by a hand that sways.
TEST(PuddleTracker, APatternUnderThePaintIsTakenOut) {
  Look look;
  look.tile[0] = 130.0;
  look.stripes = 60.0;
  const auto sway = [](double t) {
    return std::pair<double, double>{0.8 * std::sin(2.0 * t),
                                     0.6 * std::sin(3.0 * t)};
  };
  const FrontTrack track = Film(look, OnePuddle, 5.0, sway);
  ASSERT_GE(track.samples.size(), 20U);
  for (const FrontSample& s : track.samples) {
    if (s.t_s < 2.0) continue;
    // 0.3 px of 50 px are 5 % in viscosity.
    EXPECT_NEAR(s.radius_px, RadiusPx(s.t_s), 0.3) << s.t_s;
    EXPECT_GT(s.visible, 0.9) << s.t_s;
  }
  ASSERT_TRUE(track.start_s);
  EXPECT_NEAR(*track.start_s, 1.0, 2.0 / kFps);  // two frames
}

TEST(PuddleTracker, ACupThatStandsInThePaintsWayHidesNothing) {
  const FrontTrack track = Film({}, [](double t) {
    return std::vector<Disc>{{396.0, 150.7, 40.0, 70.0},
                             {330.3, 150.7, RadiusPx(t)}};
  });
  ASSERT_GE(track.samples.size(), 20U);
  for (const FrontSample& s : track.samples) {
    if (s.t_s < 2.5) continue;
    EXPECT_NEAR(s.radius_px, RadiusPx(s.t_s), 0.2) << s.t_s;
    EXPECT_GT(s.visible, 0.9) << s.t_s;
  }
  EXPECT_EQ(track.other_puddles, 0);
}

// Grain of wood lets the edge be known less well on one side than on the other.
TEST(PuddleTracker, AnEdgeThatIsKnownLessWellIsSeenAllTheSame) {
  const FrontTrack track = Film({}, [](double t) {
    return std::vector<Disc>{{330.3, 150.7, RadiusPx(t), -1.0, 0.8}};
  });
  ASSERT_GE(track.samples.size(), 20U);
  for (const FrontSample& s : track.samples) {
    if (s.t_s < 2.5) continue;
    EXPECT_GT(s.visible, 0.9) << s.t_s;
    EXPECT_NEAR(s.radius_px, RadiusPx(s.t_s), 0.2) << s.t_s;
  }
}

// The lit side of the paint is brighter than the tile, the other one darker:
// its colour alone tells the edge all round.
TEST(PuddleTracker, ALampOnOneSideDoesNotMoveTheEdge) {
  Look look;
  look.tile[0] = 130.0;
  look.shade = 70.0;
  const FrontTrack track = Film(look, OnePuddle);
  ASSERT_GE(track.samples.size(), 20U);
  for (const FrontSample& s : track.samples) {
    if (s.t_s < 2.0) continue;
    constexpr double kChromaEdge = 0.4;  // half the resolution
    EXPECT_NEAR(s.radius_px, RadiusPx(s.t_s), kChromaEdge) << s.t_s;
    EXPECT_GT(s.visible, 0.9) << s.t_s;
  }
}

TEST(PuddleTracker, ShakeMovesTheCentreNotTheRadius) {
  const auto shake = [](double t) {
    return std::pair<double, double>{3.0 * std::sin(5.0 * t),
                                     2.0 * std::cos(7.0 * t) - 2.0};
  };
  Look look;
  look.mm_px = 5.0;
  const FrontTrack track = Film(look, OnePuddle, 5.0, shake);
  ASSERT_GE(track.samples.size(), 20U);
  for (const FrontSample& s : track.samples) {
    if (s.t_s < 2.0) continue;
    constexpr double kEdge = 0.1;
    EXPECT_NEAR(s.radius_px, RadiusPx(s.t_s), kEdge);
    // The first frame's place is the reference; half a pixel keeps the tilt
    // test far from its limit.
    EXPECT_NEAR(s.x_px - s.shift_x_px, 330.3, 0.5);
    EXPECT_NEAR(s.y_px - s.shift_y_px, 150.7, 0.5);
  }
}

TEST(PuddleTracker, CountsASecondPuddle) {
  const FrontTrack track = Film({}, [](double t) {
    return std::vector<Disc>{{180.0, 150.0, RadiusPx(t)},
                             {460.0, 160.0, RadiusPx(t - 0.3)}};
  });
  EXPECT_EQ(track.other_puddles, 1);
}

// The round end of a syringe comes nearer over the first paint, and grows.
TEST(PuddleTracker, TheEndOfASyringeIsNoSecondPuddle) {
  const FrontTrack track = Film(
      {},
      [](double t) {
        std::vector<Disc> discs = {{330.3, 150.7, RadiusPx(t)}};
        if (t > 0.8 && t < 4.5) {
          discs.push_back({375.0, 105.0, 25.0 + 1.5 * t, 50.0});
        }
        return discs;
      },
      8.0);
  ASSERT_GE(track.samples.size(), 20U);
  EXPECT_EQ(track.other_puddles, 0);
  EXPECT_NEAR(track.samples.back().x_px, 330.3, 0.5);
}

// A lamp's reflection grows with the paint, and stands out more than the paint
// does. A hand hides most of the rim at first.
TEST(PuddleTracker, AReflectionIsNotTakenForThePuddle) {
  Look look;
  look.paint[0] = 180.0;
  const FrontTrack track = Film(
      look,
      [](double t) {
        const double r = RadiusPx(t);
        std::vector<Disc> discs = {{330.3, 150.7, r},
                                   {330.3, 150.7 - 0.1 * r, 0.7 * r, 240.0}};
        if (t < 2.6) {
          for (const double a : {0.4, 1.5, 2.6, 3.7, 4.8}) {
            discs.push_back({330.3 + 1.1 * r * std::cos(a),
                             150.7 + 1.1 * r * std::sin(a),
                             0.3 * r,
                             200.0});
          }
        }
        return discs;
      },
      8.0);
  ASSERT_GE(track.samples.size(), 20U);
  EXPECT_NEAR(
      track.samples.back().radius_px, RadiusPx(track.samples.back().t_s), 0.5);
}

// The lip of a cup is round as well; it is followed, leaves, and the paint
// comes later.
TEST(PuddleTracker, FindsThePuddleAfterSomethingElseThatWasRound) {
  const FrontTrack track = Film(
      {},
      [](double t) {
        std::vector<Disc> discs = {{330.3, 150.7, RadiusPx(t - 5.0)}};
        if (t > 0.4 && t < 1.6) discs.push_back({200.0, 200.0, 50.0});
        return discs;
      },
      9.0);
  ASSERT_GE(track.samples.size(), 20U);
  EXPECT_NEAR(track.samples.back().radius_px, RadiusPx(4.0 - 1.0 / kFps), 0.5);
  EXPECT_EQ(track.later_puddles, 0);
}

TEST(PuddleTracker, APuddleFromTheFirstFrameIsSaidSo) {
  const FrontTrack track = Film(
      {}, [](double t) { return OnePuddle(t + 1.7); }, 5.0);
  ASSERT_FALSE(track.samples.empty());
  EXPECT_TRUE(track.there_from_start);
  EXPECT_FALSE(track.start_s);
}

TEST(PuddleTracker, ADiscThatStandsStillDoesNotGrow) {
  const FrontTrack track = Film({}, [](double t) {
    return std::vector<Disc>{{300.0, 150.0, t > 1.0 ? 60.0 : 0.0}};
  });
  for (const FrontSample& s : track.samples) {
    EXPECT_NEAR(s.radius_px, 60.0, 0.1);
  }
}

TEST(PuddleTracker, TinyEmptyAndChangingPicturesAreSurvived) {
  Random random(3);
  PuddleTracker tracker;
  Look look;
  tracker.Add(Frame{});
  for (const int side : {2, 17, 40}) {
    PuddleTracker tiny;
    look.width = side;
    look.height = side;
    for (int i = 0; i < 4; ++i) tiny.Add(Draw(look, {}, 0.1 * i, random));
    EXPECT_TRUE(tiny.Finish().samples.empty());
  }
  look.width = 641;  // odd
  look.height = 359;
  tracker.Add(Draw(look, {}, 0.0, random));
  look.width = 320;
  tracker.Add(Draw(look, {}, 0.1, random));
  const FrontTrack track = tracker.Finish();
  EXPECT_TRUE(track.samples.empty());
  EXPECT_TRUE(track.picture.size_changed);
}

TEST(ReducePicture, TakesTheMeanOfEveryCell) {
  // Sizes that leave odd columns and rows over; factor 6 for luma, 3 for
  // chroma.
  cv::RNG random(7);
  Frame frame;
  frame.luma.create(61, 100, CV_8UC1);
  frame.cb.create(31, 50, CV_8UC1);
  frame.cr.create(31, 50, CV_8UC1);
  for (cv::Mat* plane : {&frame.luma, &frame.cb, &frame.cr}) {
    random.fill(*plane, cv::RNG::UNIFORM, 0, 256);
  }
  const WorkPicture work = ReducePicture(frame, 6);
  ASSERT_EQ(work.y.size(), cv::Size(16, 10));
  ASSERT_EQ(work.cb.size(), work.y.size());
  for (int r = 0; r < work.y.rows; ++r) {
    for (int c = 0; c < work.y.cols; ++c) {
      double luma = 0.0;  // of every second row
      for (int k = 0; k < 6; k += 2) {
        luma += cv::mean(frame.luma(cv::Rect(6 * c, 6 * r + k, 6, 1)))[0] / 3.0;
      }
      // Rounding to whole levels.
      EXPECT_LE(std::abs(work.y.at<unsigned char>(r, c) - luma), 0.5 + 1e-9);
      const double cb = cv::mean(frame.cb(cv::Rect(3 * c, 3 * r, 3, 3)))[0];
      EXPECT_LE(std::abs(work.cb.at<unsigned char>(r, c) - cb), 0.5 + 1e-9);
    }
  }
}

TEST(ShiftFinder, FollowsAShakeAndSeesAKnock) {
  // Blobs of the size of a tile's marks; whole-pixel truth.
  cv::RNG random(3);
  cv::Mat noise(260, 400, CV_8UC1), ground;
  random.fill(noise, cv::RNG::UNIFORM, 0, 256);
  cv::GaussianBlur(noise, ground, {0, 0}, 2.5);
  cv::normalize(ground, ground, 20, 235, cv::NORM_MINMAX);
  const auto view = [&](int x, int y) {
    return ground(cv::Rect(40 - x, 40 - y, 320, 180)).clone();
  };
  ShiftFinder finder(view(0, 0));
  for (int i = 0; i < 60; ++i) {
    const int x = (i < 30 ? 0 : 23) + i % 3 - 1;
    const int y = (i < 30 ? 0 : -14) + i % 2;
    const cv::Point2f shift = finder.Find(view(x, y));
    // A twentieth of a px of the small picture: a third of one in the film.
    EXPECT_NEAR(shift.x, x, 0.05) << i;
    EXPECT_NEAR(shift.y, y, 0.05) << i;
  }
}

TEST(ShiftFinder, FollowsAZoomBesideTheShift) {
  cv::RNG random(4);
  cv::Mat noise(260, 400, CV_8UC1), ground;
  random.fill(noise, cv::RNG::UNIFORM, 0, 256);
  cv::GaussianBlur(noise, ground, {0, 0}, 2.5);
  cv::normalize(ground, ground, 20, 235, cv::NORM_MINMAX);
  const cv::Size size(320, 180);
  const auto view = [&](double zoom, double x, double y) {
    const cv::Matx23d to(
        zoom, 0, x + 159.5 - zoom * 199.5, 0, zoom, y + 89.5 - zoom * 129.5);
    cv::Mat picture;
    cv::warpAffine(ground, picture, to, size, cv::INTER_LINEAR);
    return picture;
  };
  ShiftFinder finder(view(1.0, 0.0, 0.0));
  for (int i = 0; i < 60; ++i) {
    const double zoom = 1.0 + 0.001 * i;
    const double x = 2.0 * std::sin(0.3 * i);
    // Something crosses the picture and covers a fifth of it.
    cv::Mat picture = view(zoom, x, 0.0);
    if (i > 20 && i < 40) picture(cv::Rect(10 * (i - 20), 0, 64, 180)) = 90;
    const cv::Point2f shift = finder.Find(picture);
    // 1e-3 of the radius is 0.8 % in viscosity.
    EXPECT_NEAR(static_cast<double>(finder.zoom()), zoom, 1e-3) << i;
    if (zoom > 1.005) {
      EXPECT_TRUE(finder.zoom_holds()) << i;
    }
    // A zoom below a five-hundredth counts as none: up to 0.3 px at the border.
    EXPECT_NEAR(shift.x, x, 0.3) << i;
  }
}

// A ground without sharp marks, and a puddle that grows over most of it.
TEST(ShiftFinder, PaintOverASoftGroundFeignsNoZoom) {
  cv::RNG random(8);
  cv::Mat ground(270, 360, CV_8UC1);
  random.fill(ground, cv::RNG::UNIFORM, 0, 256);
  cv::GaussianBlur(ground, ground, {0, 0}, 14.0);
  cv::normalize(ground, ground, 90, 150, cv::NORM_MINMAX);
  const auto noisy = [&](const cv::Mat& clean) {
    cv::Mat grain(clean.size(), CV_16SC1), picture;
    random.fill(grain, cv::RNG::NORMAL, 0, 2);
    cv::add(clean, grain, picture, cv::noArray(), CV_8U);
    return picture;
  };
  ShiftFinder finder(noisy(ground));
  for (int i = 0; i < 80; ++i) {
    cv::Mat picture = ground.clone();
    cv::circle(picture, {170, 130}, 40 + i, 160, cv::FILLED, cv::LINE_AA);
    cv::GaussianBlur(picture, picture, {0, 0}, 6.0);  // its shaded rim
    finder.Find(noisy(picture));
    EXPECT_FALSE(finder.zoom_holds()) << i;
  }
}

TEST(ImageScale, ReadsMillimetresOffARuler) {
  Random random(5);
  for (const double angle : {0.0, 0.04, -0.08}) {
    for (const double px : {3.4, 5.3, 7.0}) {
      Look look;
      look.width = px > 6 ? 960 : 640;
      look.mm_px = px;
      look.ruler_angle = angle;
      const Frame frame = Draw(look, {}, 0.0, random);
      const ScaleSearch search =
          FindRulerScale(frame.luma, {320.0, 120.0, 40.0});
      ASSERT_TRUE(search.scale) << px << " at " << angle << search.note;
      constexpr double kPitch = 0.002;  // of the scale; phase over 90 marks
      EXPECT_NEAR(search.scale->mm_per_px * px, 1.0, kPitch) << angle;
      ASSERT_TRUE(search.scale->direction_rad);
      constexpr double kAngle = 0.02;
      EXPECT_NEAR(*search.scale->direction_rad, angle, kAngle);
    }
  }
}

TEST(ImageScale, ReadsAnUprightRuler) {
  Random random(5);
  Look look;
  look.mm_px = 5.3;
  const Frame frame = Draw(look, {}, 0.0, random);
  cv::Mat upright;
  cv::transpose(frame.luma, upright);
  const ScaleSearch search = FindRulerScale(upright, {120.0, 320.0, 40.0});
  ASSERT_TRUE(search.scale) << search.note;
  constexpr double kPitch = 0.002;
  EXPECT_NEAR(search.scale->mm_per_px * 5.3, 1.0, kPitch);
}

TEST(ImageScale, MarksThatDoNotTellTheirDistanceGiveNone) {
  Random random(5);
  for (const int every : {1, 2}) {
    Look look;
    look.mm_px = 6.0;
    look.long_every = every;
    const Frame frame = Draw(look, {}, 0.0, random);
    const ScaleSearch search = FindRulerScale(frame.luma, {320.0, 120.0, 40.0});
    EXPECT_FALSE(search.scale) << every;
    EXPECT_FALSE(search.note.empty());
  }
  const Frame bare = Draw({}, {}, 0.0, random);
  EXPECT_FALSE(FindRulerScale(bare.luma, {320.0, 120.0, 40.0}).scale);
}

TEST(PuddleTrackerOptions, AreChecked) {
  PuddleTrackerOptions options;
  options.mm_per_px = -1.0;
  EXPECT_FALSE(options.Validate().has_value());
  options.mm_per_px = 0.2;
  EXPECT_TRUE(options.Validate().has_value());
}

}  // namespace
}  // namespace flowkin
