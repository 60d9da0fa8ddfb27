#pragma once

#include <opencv2/core.hpp>
#include <string>

namespace flowkin::testing_support {

/// A photo of a tile with `across` x `down` square cells of 20 px, 40 px apart,
/// in a frame of 20 px. Written to `path`, which is returned; the ending picks
/// the format.
std::string WriteCellTile(const std::string& path, int across, int down);

/// Two seconds on that photo, then one of the dark, as a clip (.mp4). Each ends
/// the test run where it cannot be written.
void WriteRunDown(const std::string& photo, const std::string& path);

}  // namespace flowkin::testing_support
