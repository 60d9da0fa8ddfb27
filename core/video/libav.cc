#include "core/video/libav.h"

#include <array>
#include <filesystem>
#include <mutex>

namespace flowkin::libav {

void Silence() {
  static std::once_flag once;
  std::call_once(once, [] {
    av_log_set_callback([](void*, int, const char*, va_list) {});
  });
}

std::string ErrorText(int error) {
  std::array<char, AV_ERROR_MAX_STRING_SIZE> text{};
  av_strerror(error, text.data(), text.size());
  return text.data();
}

std::string FileName(const std::string& path) {
  std::string name = std::filesystem::path(path).filename().string();
  return name.empty() ? path : name;
}

}  // namespace flowkin::libav
