#include "app/usecases/labels_on_photo.h"

#define ZX_USE_UTF8  // else its header warns of text that we do not ask for
#include <ZXing/ReadBarcode.h>

#include <opencv2/imgproc.hpp>
#include <sstream>

#include "app/usecases/label_document.h"
#include "app/usecases/read_picture.h"

namespace flowkin {

Result<LabelsOnPhoto> ReadLabelsOnPhoto(const std::string& path) {
  const Result<cv::Mat> picture = ReadPicture(path);
  if (!picture) return picture.error();
  cv::Mat grey;
  cv::cvtColor(*picture, grey, cv::COLOR_BGR2GRAY);
  ZXing::DecodeHints hints;
  hints.setFormats(ZXing::BarcodeFormat::QRCode);
  hints.setTryHarder(true);
  hints.setTryRotate(true);
  const ZXing::Results codes =
      ZXing::ReadBarcodes({grey.data,
                           grey.cols,
                           grey.rows,
                           ZXing::ImageFormat::Lum,
                           static_cast<int>(grey.step)},
                          hints);
  LabelsOnPhoto found;
  bool foreign = false;
  for (const ZXing::Result& code : codes) {
    if (!code.isValid()) continue;
    std::istringstream text(
        std::string(code.bytes().begin(), code.bytes().end()));
    const Result<std::vector<BatchLabel>> labels = ReadLabels({}, text);
    if (!labels) {
      foreign = true;
      continue;
    }
    found.labels.insert(found.labels.end(), labels->begin(), labels->end());
  }
  if (found.labels.empty()) {
    found.refused =
        foreign ? "The code on this photo is not that of a label of this "
                  "program; photograph the label that was printed for the jar."
                : "No code of a label can be read on this photo; take it "
                  "again from closer, straight on and sharp, with the whole "
                  "code and its white rim in the picture.";
  }
  return found;
}

}  // namespace flowkin
