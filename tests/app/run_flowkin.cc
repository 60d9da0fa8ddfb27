#include "tests/app/run_flowkin.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace flowkin::testing {

namespace fs = std::filesystem;

std::string ScratchFolder() {
  const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
  const fs::path folder =
      fs::path(::testing::TempDir()) /
      (std::string("flowkin-") + test->test_suite_name() + "-" + test->name() +
       "-" + std::to_string(::getpid()));
  fs::remove_all(folder);
  fs::create_directories(folder);
  return folder.string();
}

std::string ReadFile(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream content;
  content << in.rdbuf();
  return content.str();
}

void WriteFile(const std::string& path, const std::string& content) {
  std::ofstream(path, std::ios::binary) << content;
}

FlowkinRun RunFlowkin(const std::vector<std::string>& arguments,
                      const std::string& input) {
  const std::string folder = (fs::path(::testing::TempDir()) /
                              ("flowkin-run-" + std::to_string(::getpid())))
                                 .string();
  fs::create_directories(folder);
  WriteFile(folder + "/in", input);
  std::vector<char*> argv = {const_cast<char*>(FLOWKIN_BINARY)};
  for (const std::string& argument : arguments) {
    argv.push_back(const_cast<char*>(argument.c_str()));
  }
  argv.push_back(nullptr);
  posix_spawn_file_actions_t files;
  posix_spawn_file_actions_init(&files);
  constexpr int kWrite = O_WRONLY | O_CREAT | O_TRUNC;
  posix_spawn_file_actions_addopen(
      &files, STDIN_FILENO, (folder + "/in").c_str(), O_RDONLY, 0);
  posix_spawn_file_actions_addopen(
      &files, STDOUT_FILENO, (folder + "/out").c_str(), kWrite, 0600);
  posix_spawn_file_actions_addopen(
      &files, STDERR_FILENO, (folder + "/err").c_str(), kWrite, 0600);
  // A test never sees the book of whoever runs it.
  ::setenv("XDG_DATA_HOME", (folder + "/none").c_str(), 0);
  FlowkinRun run;
  pid_t child = 0;
  int state = 0;
  if (::posix_spawn(
          &child, FLOWKIN_BINARY, &files, nullptr, argv.data(), environ) == 0 &&
      ::waitpid(child, &state, 0) == child) {
    run.status = WIFEXITED(state) ? WEXITSTATUS(state) : 128 + WTERMSIG(state);
  }
  posix_spawn_file_actions_destroy(&files);
  run.out = ReadFile(folder + "/out");
  run.err = ReadFile(folder + "/err");
  fs::remove_all(folder);
  return run;
}

std::string SampleClip(const std::string& name) {
  return std::string(FLOWKIN_SOURCE_DIR) + "/sample-clips/" + name;
}

bool IsOneSentence(const std::string& err) {
  const std::string start = "flowkin: ";
  return err.size() > start.size() + 10 && err.rfind(start, 0) == 0 &&
         std::count(err.begin(), err.end(), '\n') == 1 &&
         err.find(".\n") == err.size() - 2;
}

void ExpectFails(const BadCall& call) {
  const FlowkinRun run = RunFlowkin(call.arguments, call.input);
  EXPECT_EQ(run.status, call.status);
  EXPECT_TRUE(IsOneSentence(run.err)) << run.err;
  EXPECT_EQ(run.out, "");
}

}  // namespace flowkin::testing
