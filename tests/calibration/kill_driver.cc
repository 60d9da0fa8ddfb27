// Kills the real commands that write the brand book at random moments and
// looks whether anything that was confirmed is gone.
//   kill_driver FLOWKIN [kills] [seed]
// Ends with 0 when every confirmed cup is in the book, readers could read after
// every kill, and the file is intact.

#include <fcntl.h>
#include <spawn.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>
#include <string>
#include <thread>
#include <vector>

#include "core/base/random.h"

namespace {

namespace fs = std::filesystem;

struct Ended {
  bool killed = false;
  int status = -1;  ///< of a program that ended by itself
};

/// Starts the program and kills it after `life`, if it lives that long; never
/// where that is negative.
Ended Run(const std::string& program,
          const std::vector<std::string>& arguments,
          const std::string& input,
          std::chrono::microseconds life) {
  std::vector<char*> argv = {const_cast<char*>(program.c_str())};
  for (const std::string& argument : arguments) {
    argv.push_back(const_cast<char*>(argument.c_str()));
  }
  argv.push_back(nullptr);
  posix_spawn_file_actions_t files;
  posix_spawn_file_actions_init(&files);
  posix_spawn_file_actions_addopen(
      &files, STDIN_FILENO, input.c_str(), O_RDONLY, 0);
  posix_spawn_file_actions_addopen(
      &files, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  pid_t child = 0;
  const int failed = ::posix_spawn(
      &child, program.c_str(), &files, nullptr, argv.data(), environ);
  posix_spawn_file_actions_destroy(&files);
  Ended ended;
  if (failed != 0) return ended;
  if (life.count() >= 0) {
    std::this_thread::sleep_for(life);
    // Dead or not, it is still ours until it is waited for.
    ::kill(child, SIGKILL);
  }
  int state = 0;
  ::waitpid(child, &state, 0);
  if (WIFSIGNALED(state)) ended.killed = true;
  if (WIFEXITED(state)) ended.status = WEXITSTATUS(state);
  return ended;
}

/// Every cup is known by the ratio of its first test, in millionths.
std::string Cup(std::int64_t name) {
  char text[320];
  std::snprintf(text,
                sizeof(text),
                R"({"brand": "Brand %lld", "volume_ml": 120, "history": [
  {"added_ml": 0, "ratio": %.6f, "rel_sd": 0.04},
  {"added_ml": 3, "ratio": 1.3, "rel_sd": 0.04},
  {"added_ml": 6, "ratio": 1.02, "rel_sd": 0.04}]})",
                static_cast<long long>(name / 20),
                1.5 + 1e-6 * static_cast<double>(name));
  return text;
}

void Write(const std::string& path, const std::string& text) {
  std::ofstream(path) << text;
}

/// The names of the cups in the book, and whether SQLite calls the file whole.
bool Look(const std::string& path, std::set<std::int64_t>& names) {
  sqlite3* database = nullptr;
  std::string answer;
  int code =
      sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READWRITE, nullptr);
  if (code == SQLITE_OK) {
    code = sqlite3_exec(
        database,
        "PRAGMA integrity_check",
        [](void* to, int, char** values, char**) {
          *static_cast<std::string*>(to) += values[0];
          return 0;
        },
        &answer,
        nullptr);
  }
  if (code == SQLITE_OK) {
    // A book whose making was cut short has no tables yet.
    sqlite3_exec(
        database,
        "SELECT cast(round((ratio - 1.5) * 1e6) AS INTEGER) FROM test"
        " WHERE ordinal = 0",
        [](void* to, int, char** values, char**) {
          static_cast<std::set<std::int64_t>*>(to)->insert(
              std::atoll(values[0]));
          return 0;
        },
        &names,
        nullptr);
  }
  sqlite3_close(database);
  return code == SQLITE_OK && answer == "ok";
}

}  // namespace

int main(int argc, char** argv) {
  if (argc < 2) {
    std::fprintf(stderr, "usage: kill_driver FLOWKIN [kills] [seed]\n");
    return 2;
  }
  const std::string program = argv[1];
  const int kills = argc > 2 ? std::atoi(argv[2]) : 40;
  const std::uint64_t seed =
      argc > 3 ? static_cast<std::uint64_t>(std::atoll(argv[3])) : 1;
  std::string folder = (fs::temp_directory_path() / "flowkin-kill-").string() +
                       std::string(6, 'X');
  if (::mkdtemp(folder.data()) == nullptr) return 1;
  const std::string book = folder + "/brands.db";
  const std::string input = folder + "/in.json";
  constexpr int kImported = 5;  // cups of one import

  flowkin::Random random(seed);
  std::set<std::int64_t> confirmed;
  std::int64_t next = 0;
  int killed = 0;
  int finished = 0;
  int fresh = 0;
  int wrong = 0;
  // Lives are drawn up to a half longer than the command takes when left alone.
  double alone_us[2] = {0.0, 0.0};
  for (int round = 0; round < 6; ++round) {
    const bool import = round % 2 == 1;
    std::string text = Cup(900000 + round);
    if (import) {
      text = R"({"format": "flowkin brand book", "version": 1, "cups": [)" +
             text + "]}";
    }
    Write(input, text);
    const auto start = std::chrono::steady_clock::now();
    Run(program,
        {import ? "import" : "learn", "--store", folder + "/trial.db"},
        input,
        std::chrono::microseconds(-1));
    const std::chrono::duration<double, std::micro> took =
        std::chrono::steady_clock::now() - start;
    alone_us[import ? 1 : 0] = std::max(alone_us[import ? 1 : 0], took.count());
  }
  for (int run = 0; killed < kills && run < 20 * kills && wrong == 0; ++run) {
    // A book that is only just being made must survive as well.
    if (run % 25 == 24) {
      fs::remove(book);
      fs::remove(book + "-journal");
      confirmed.clear();
      ++fresh;
    }
    const bool import = run % 2 == 1;
    std::vector<std::int64_t> names;
    std::string text;
    if (import) {
      text = R"({"format": "flowkin brand book", "version": 1, "cups": [)";
      for (int k = 0; k < kImported; ++k) {
        names.push_back(next++);
        text += (k > 0 ? ",\n" : "\n") + Cup(names.back());
      }
      text += "]}";
    } else {
      names.push_back(next++);
      text = Cup(names.back());
    }
    Write(input, text);
    const auto life = static_cast<std::int64_t>(random.Uniform(0.0, 1.5) *
                                                alone_us[import ? 1 : 0]);
    const Ended ended = Run(program,
                            {import ? "import" : "learn", "--store", book},
                            input,
                            std::chrono::microseconds(life));
    if (ended.killed) {
      ++killed;
    } else if (ended.status == 0) {
      ++finished;
      confirmed.insert(names.begin(), names.end());
    } else {
      std::fprintf(stderr, "run %d ended with %d\n", run, ended.status);
      ++wrong;
    }
    if (!fs::exists(book)) {
      if (!confirmed.empty()) {
        std::fprintf(stderr, "run %d: the book is gone\n", run);
        ++wrong;
      }
      continue;
    }
    // First the way a reader comes, then without the program.
    if (!confirmed.empty() && Run(program,
                                  {"brands", "--store", book},
                                  "/dev/null",
                                  std::chrono::microseconds(-1))
                                      .status != 0) {
      std::fprintf(stderr, "run %d: it cannot be read\n", run);
      ++wrong;
    }
    std::set<std::int64_t> kept;
    if (!Look(book, kept)) {
      std::fprintf(stderr, "run %d: the file is damaged\n", run);
      ++wrong;
    }
    for (const std::int64_t name : confirmed) {
      if (kept.count(name) == 0) {
        std::fprintf(stderr,
                     "run %d: cup %lld is lost\n",
                     run,
                     static_cast<long long>(name));
        ++wrong;
      }
    }
    // An import is there whole or not at all.
    const auto there =
        std::count_if(names.begin(), names.end(), [&](std::int64_t name) {
          return kept.count(name) > 0;
        });
    if (there != 0 && there != static_cast<std::ptrdiff_t>(names.size())) {
      std::fprintf(stderr, "run %d: half an entry is kept\n", run);
      ++wrong;
    }
  }
  std::printf(
      "%d killed, %d finished, %d books begun anew, %zu cups confirmed in the "
      "last: %s\n",
      killed,
      finished,
      fresh,
      confirmed.size(),
      wrong == 0 ? "nothing lost" : "WRONG");
  std::error_code ignored;
  fs::remove_all(folder, ignored);
  return wrong == 0 && killed >= kills && finished > 0 ? 0 : 1;
}
