#pragma once

#include <csignal>

namespace flowkin {

/// While one lives, the first SIGINT or SIGTERM (Ctrl-C, kill) only asks, so
/// that files in the making can be removed; the second ends the program as
/// usual. One at a time.
class InterruptWatch {
 public:
  InterruptWatch();
  ~InterruptWatch();
  InterruptWatch(const InterruptWatch&) = delete;
  InterruptWatch& operator=(const InterruptWatch&) = delete;

  /// The signal that came, or 0.
  int Signal() const;

 private:
  struct sigaction old_int_ {};
  struct sigaction old_term_ {};
};

/// Ends the program by `signal`, so that the shell that started it sees why.
void EndBySignal(int signal);

}  // namespace flowkin
