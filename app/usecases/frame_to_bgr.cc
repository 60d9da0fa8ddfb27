#include "app/usecases/frame_to_bgr.h"

#include <opencv2/imgproc.hpp>
#include <vector>

namespace flowkin {

cv::Mat FrameToBgr(const Frame& frame, cv::Size size) {
  if (size.empty()) size = frame.luma.size();
  cv::Mat luma = frame.luma;
  if (size != luma.size()) {
    cv::resize(frame.luma, luma, size, 0, 0, cv::INTER_AREA);
  }
  cv::Mat cb;
  cv::Mat cr;
  cv::resize(frame.cb, cb, size, 0, 0, cv::INTER_LINEAR);
  cv::resize(frame.cr, cr, size, 0, 0, cv::INTER_LINEAR);
  if (!frame.full_range) {
    // 16..235 and 16..240 to full range, as OpenCV's YCrCb expects. The frame's
    // own planes may be the decoder's reference pictures: never converted in
    // place.
    cv::Mat stretched;
    luma.convertTo(stretched, CV_8U, 255.0 / 219.0, -16.0 * 255.0 / 219.0);
    luma = stretched;
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
