#pragma once

#include <string>
#include <vector>

namespace flowkin::testing {

/// What one run of the built program said.
struct FlowkinRun {
  int status = -1;  ///< exit status; 128 + signal where one ended it
  std::string out;
  std::string err;
};

/// Runs the built `flowkin` with `arguments` and `input` on standard input,
/// without a terminal.
FlowkinRun RunFlowkin(const std::vector<std::string>& arguments,
                      const std::string& input = "");

/// A fresh, empty folder of the running test's own.
std::string ScratchFolder();

/// Path of a clip in sample-clips/.
std::string SampleClip(const std::string& name);

std::string ReadFile(const std::string& path);
void WriteFile(const std::string& path, const std::string& content);

/// True when `err` is one line that opens with the program's name, names what
/// is wrong and ends as a sentence does.
bool IsOneSentence(const std::string& err);

/// A call that must fail: with `status`, one sentence and nothing printed.
struct BadCall {
  const char* name;
  std::vector<std::string> arguments;
  std::string input;
  int status;
};
void ExpectFails(const BadCall& call);

}  // namespace flowkin::testing
