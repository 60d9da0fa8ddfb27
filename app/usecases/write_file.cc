#include "app/usecases/write_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <system_error>

namespace flowkin {

Result<void> WriteWhole(const std::string& path, const std::string& bytes) {
  const auto failure = [&](int error) {
    return Error{ErrorCode::kInternal,
                 "'" + path + "' cannot be written (" + std::strerror(error) +
                     "); check the folder and the room on the disk."};
  };
  const std::string draft = path + ".part" + std::to_string(::getpid());
  const int file =
      ::open(draft.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0666);
  if (file < 0) return failure(errno);
  int error = 0;
  for (std::size_t done = 0; done < bytes.size() && error == 0;) {
    const ssize_t count =
        ::write(file, bytes.data() + done, bytes.size() - done);
    if (count < 0 && errno != EINTR) error = errno;
    if (count > 0) done += static_cast<std::size_t>(count);
  }
  if (error == 0 && ::fsync(file) != 0) error = errno;
  ::close(file);
  if (error == 0 && std::rename(draft.c_str(), path.c_str()) != 0) {
    error = errno;
  }
  if (error != 0) {
    std::error_code ignored;
    std::filesystem::remove(draft, ignored);
    return failure(error);
  }
  return {};
}

}  // namespace flowkin
