#include "app/usecases/frame_to_bgr.h"

#include <opencv2/imgproc.hpp>
#include <vector>

namespace flowkin {

cv::Mat FrameToBgr(const Frame& frame) {
  cv::Mat cb;
  cv::Mat cr;
  cv::resize(frame.cb, cb, frame.luma.size(), 0, 0, cv::INTER_LINEAR);
  cv::resize(frame.cr, cr, frame.luma.size(), 0, 0, cv::INTER_LINEAR);
  // The frame's own planes may be the decoder's reference pictures: never
  // converted in place.
  cv::Mat luma;
  if (frame.full_range) {
    luma = frame.luma;
  } else {
    // 16..235 and 16..240 to full range, as OpenCV's YCrCb expects.
    frame.luma.convertTo(luma, CV_8U, 255.0 / 219.0, -16.0 * 255.0 / 219.0);
    cb.convertTo(cb, CV_8U, 255.0 / 224.0, 128.0 - 128.0 * 255.0 / 224.0);
    cr.convertTo(cr, CV_8U, 255.0 / 224.0, 128.0 - 128.0 * 255.0 / 224.0);
  }
  cv::Mat joined;
  cv::merge(std::vector<cv::Mat>{luma, cr, cb}, joined);
  cv::Mat bgr;
  cv::cvtColor(joined, bgr, cv::COLOR_YCrCb2BGR);
  return bgr;
}

}  // namespace flowkin
