#include "app/usecases/read_file.h"

#include <filesystem>
#include <system_error>

namespace flowkin {

Result<std::ifstream> OpenToRead(const std::string& path) {
  std::error_code failed;
  if (std::filesystem::is_directory(path, failed)) {
    return Error{ErrorCode::kUnreadable,
                 "'" + path + "' is a folder; name a file in it."};
  }
  std::ifstream file(path, std::ios::binary);
  if (!file) {
    return Error{ErrorCode::kUnreadable,
                 "'" + path + "' cannot be read; check its name and rights."};
  }
  return file;
}

}  // namespace flowkin
