#include "app/usecases/film_shelf.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <set>
#include <system_error>
#include <utility>

namespace flowkin {
namespace {

namespace fs = std::filesystem;

constexpr const char* kListName = "written-here.txt";

Error CannotWrite(const std::string& path, int error) {
  return {ErrorCode::kInternal,
          "'" + path + "' cannot be written (" + std::strerror(error) +
              "); check the folder and the room on the disk."};
}

/// Held while the list is read and written again; other programs wait.
class Turn {
 public:
  explicit Turn(const std::string& folder)
      : file_(::open(
            (folder + "/.turn").c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600)) {
    if (file_ >= 0) ::flock(file_, LOCK_EX);
  }
  ~Turn() {
    if (file_ >= 0) ::close(file_);
  }
  Turn(const Turn&) = delete;
  Turn& operator=(const Turn&) = delete;
  bool held() const { return file_ >= 0; }

 private:
  int file_;
};

/// One path for one file, whichever way it is named.
std::string Plain(const std::string& path) {
  std::error_code failed;
  const fs::path whole = fs::weakly_canonical(path, failed);
  return failed ? path : whole.string();
}

std::string Tame(const std::string& text) {
  std::string tame = text;
  for (char& c : tame) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                       (c >= '0' && c <= '9') || c == '-' || c == '_';
    if (!plain) c = '_';
  }
  constexpr std::size_t kLongest = 80;
  return tame.empty() ? "film" : tame.substr(0, kLongest);
}

}  // namespace

std::string FilmShelf::DefaultFolder() {
  const char* data = std::getenv("XDG_DATA_HOME");
  if (data != nullptr && data[0] == '/') {
    return std::string(data) + "/flowkin/films";
  }
  const char* home = std::getenv("HOME");
  if (home == nullptr || home[0] == '\0') return {};
  return std::string(home) + "/.local/share/flowkin/films";
}

Result<FilmShelf> FilmShelf::Open(const FilmShelfOptions& options) {
  FilmShelfOptions used = options;
  if (used.folder.empty()) used.folder = DefaultFolder();
  if (used.folder.empty() || used.most_bytes < 1) {
    return Error{ErrorCode::kInvalidArgument,
                 "There is no place for films; name a folder and how much it "
                 "may hold."};
  }
  std::error_code failed;
  fs::create_directories(used.folder, failed);
  if (!fs::is_directory(used.folder, failed) ||
      ::access(used.folder.c_str(), W_OK) != 0) {
    return CannotWrite(used.folder, errno != 0 ? errno : ENOTDIR);
  }
  return FilmShelf(std::move(used));
}

std::string FilmShelf::ListPath() const {
  return options_.folder + "/" + kListName;
}

Result<std::vector<std::string>> FilmShelf::ReadList() const {
  std::vector<std::string> names;
  const std::string list = ListPath();
  std::ifstream in(list);
  std::error_code failed;
  if (!in) {
    if (!fs::exists(list, failed)) return names;
    return Error{ErrorCode::kUnreadable,
                 "'" + list + "' cannot be read; check its rights."};
  }
  for (std::string line; std::getline(in, line);) {
    // A name that leads out of the folder was not written by the shelf.
    if (!line.empty() && line.find('/') == std::string::npos && line != "." &&
        line != ".." && line != kListName) {
      names.push_back(line);
    }
  }
  return names;
}

Result<void> FilmShelf::WriteList(const std::vector<std::string>& names) const {
  const std::string draft = ListPath() + ".part";
  std::string bytes;
  for (const std::string& name : names) bytes += name + '\n';
  const int file =
      ::open(draft.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0666);
  if (file < 0) return CannotWrite(draft, errno);
  int error = 0;
  if (::write(file, bytes.data(), bytes.size()) !=
      static_cast<ssize_t>(bytes.size())) {
    error = errno != 0 ? errno : ENOSPC;
  }
  if (error == 0 && ::fsync(file) != 0) error = errno;
  ::close(file);
  if (error == 0 && std::rename(draft.c_str(), ListPath().c_str()) != 0) {
    error = errno;
  }
  if (error != 0) {
    ::unlink(draft.c_str());
    return CannotWrite(ListPath(), error);
  }
  return {};
}

Result<std::string> FilmShelf::Reserve(const std::string& stem,
                                       const std::string& extension) {
  const Turn turn(options_.folder);
  if (!turn.held()) return CannotWrite(options_.folder, errno);
  auto names = ReadList();
  if (!names) return names.error();
  const std::set<std::string> taken(names->begin(), names->end());
  std::error_code failed;
  for (int number = 1;; ++number) {
    const std::string name =
        Tame(stem) + "-" + std::to_string(number) + "." + Tame(extension);
    const std::string path = options_.folder + "/" + name;
    if (taken.count(name) != 0 || fs::exists(path, failed)) continue;
    names->push_back(name);
    if (auto written = WriteList(*names); !written) return written.error();
    return path;
  }
}

bool FilmShelf::Holds(const std::string& path) const {
  std::error_code failed;
  if (!fs::is_regular_file(path, failed)) return false;
  const auto names = ReadList();
  if (!names) return false;
  return std::any_of(names->begin(), names->end(), [&](const auto& name) {
    return Plain(options_.folder + "/" + name) == Plain(path);
  });
}

void FilmShelf::DropCutOff(const std::vector<std::string>& names) const {
  // A film that is being written grows all the time.
  const auto dead = fs::file_time_type::clock::now() - std::chrono::hours(1);
  std::error_code failed;
  for (const fs::directory_entry& entry :
       fs::directory_iterator(options_.folder, failed)) {
    const std::string file = entry.path().filename().string();
    const std::size_t end = file.rfind(".part-");
    if (end == std::string::npos ||
        std::find(names.begin(), names.end(), file.substr(0, end)) ==
            names.end() ||
        !fs::is_regular_file(entry.symlink_status(failed)) ||
        entry.last_write_time(failed) > dead || failed) {
      continue;
    }
    fs::remove(entry.path(), failed);
  }
}

Result<ShelfReport> FilmShelf::Tidy(const std::vector<std::string>& needed) {
  const Turn turn(options_.folder);
  if (!turn.held()) return CannotWrite(options_.folder, errno);
  const auto names = ReadList();
  if (!names) return names.error();
  DropCutOff(*names);
  std::set<std::string> kept;
  for (const std::string& path : needed) kept.insert(Plain(path));

  struct Film {
    std::string name, path;
    fs::file_time_type at;
    std::int64_t bytes = 0;
  };
  ShelfReport report;
  std::vector<Film> films;
  std::vector<std::string> list;
  for (const std::string& name : *names) {
    Film film{name, options_.folder + "/" + name, {}, 0};
    std::error_code failed;
    // A link could lead to a file of somebody else's.
    if (!fs::is_regular_file(fs::symlink_status(film.path, failed))) {
      // Reserved and not yet begun, or taken away by hand.
      list.push_back(name);
      continue;
    }
    film.bytes = static_cast<std::int64_t>(fs::file_size(film.path, failed));
    film.at = fs::last_write_time(film.path, failed);
    report.bytes += film.bytes;
    films.push_back(std::move(film));
  }
  std::stable_sort(films.begin(),
                   films.end(),
                   [](const Film& a, const Film& b) { return a.at < b.at; });
  for (const Film& film : films) {
    std::error_code failed;
    if (report.bytes > options_.most_bytes &&
        kept.count(Plain(film.path)) == 0 && fs::remove(film.path, failed)) {
      report.bytes -= film.bytes;
      report.dropped.push_back(film.path);
      continue;
    }
    list.push_back(film.name);
  }
  report.over_full = report.bytes > options_.most_bytes;
  if (auto written = WriteList(list); !written) return written.error();
  return report;
}

}  // namespace flowkin
