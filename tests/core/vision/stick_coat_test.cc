#include "core/vision/stick_coat.h"

#include <gtest/gtest.h>

#include <cmath>
#include <opencv2/imgproc.hpp>
#include <random>

namespace flowkin {
namespace {

/// Light background, darker stick whose two sides stand at these columns, from
/// the top down to row 200.
cv::Mat Draw(double left_px, double right_px, double noise, cv::RNG& random) {
  constexpr int kFine = 16;
  cv::Mat fine(1, 320 * kFine, CV_8U, cv::Scalar(150));
  // Pixel c covers [c - 0.5, c + 0.5].
  for (int x = 0; x < fine.cols; ++x) {
    const double at_px = (x + 0.5) / kFine - 0.5;
    if (at_px > left_px && at_px < right_px) fine.at<std::uint8_t>(x) = 90;
  }
  cv::GaussianBlur(fine, fine, {0, 0}, 0.8 * kFine);
  cv::Mat row;
  cv::resize(fine, row, {320, 1}, 0, 0, cv::INTER_AREA);
  cv::Mat picture(240, 320, CV_8U, cv::Scalar(150));
  for (int y = 0; y < 200; ++y) row.copyTo(picture.row(y));
  cv::Mat grain(picture.size(), CV_16S);
  random.fill(grain, cv::RNG::NORMAL, 0.0, noise);
  cv::add(picture, grain, picture, cv::noArray(), CV_8U);
  return picture;
}

TEST(StickCoat, FollowsBothSidesToATenthOfAPixel) {
  StreamEpisode episode;
  episode.lift_s = 0.0;
  episode.stick_center_x_px = 160.0;
  episode.stick_bottom_y_px = 200.0;
  episode.stick_width_px = 60.0;
  StickCoat coat(episode, 0.0, {320, 240});
  cv::RNG random(8);
  std::vector<double> left, right;
  for (double t_s = 0.5; t_s < 5.0; t_s += 1.0 / 30.0) {
    const double sway_px = 2.0 * std::sin(3.0 * t_s);
    const double half_px = 30.0 + 3.0 / std::sqrt(t_s);
    left.push_back(160.0 + sway_px - half_px);
    right.push_back(160.0 + sway_px + half_px);
    // The tracker knows the sway to a pixel or so.
    coat.Add(Draw(left.back(), right.back(), 4.0, random), t_s, sway_px + 0.6);
  }
  coat.FollowEdges(episode);
  ASSERT_EQ(episode.coat_t_s.size(), left.size());
  int lowest = 0;
  for (const CoatEdge& edge : episode.coat_edges) {
    ASSERT_EQ(edge.x_px.size(), left.size());
    EXPECT_LT(edge.width_px, 4.0);
    lowest += edge.band == 0;
    for (std::size_t i = 0; i < left.size(); ++i) {
      ASSERT_TRUE(std::isfinite(edge.x_px[i])) << edge.band << " " << i;
      EXPECT_NEAR(edge.x_px[i], edge.side < 0 ? left[i] : right[i], 0.35);
    }
    double mean = 0.0;
    for (std::size_t i = 0; i < left.size(); ++i)
      mean += edge.x_px[i] - (edge.side < 0 ? left[i] : right[i]);
    EXPECT_NEAR(mean / static_cast<double>(left.size()), 0.0, 0.1);
  }
  EXPECT_EQ(lowest, 2);
}

// Grain is no edge; a picture too low for a band gives none.
TEST(StickCoat, FindsNothingWhereNothingStands) {
  StreamEpisode episode;
  episode.stick_center_x_px = 160.0;
  episode.stick_bottom_y_px = 200.0;
  episode.stick_width_px = 60.0;
  cv::RNG random(9);
  StickCoat coat(episode, 0.0, {320, 240});
  for (double t_s = 0.5; t_s < 3.0; t_s += 1.0 / 30.0)
    coat.Add(Draw(400.0, 400.0, 4.0, random), t_s, 0.0);
  coat.FollowEdges(episode);
  EXPECT_TRUE(episode.coat_edges.empty());
  episode.stick_bottom_y_px = 20.0;
  StickCoat low(episode, 0.0, {320, 240});
  for (double t_s = 0.5; t_s < 3.0; t_s += 1.0 / 30.0)
    low.Add(Draw(130.0, 190.0, 4.0, random), t_s, 0.0);
  low.FollowEdges(episode);
  EXPECT_TRUE(episode.coat_edges.empty());
}

}  // namespace
}  // namespace flowkin
