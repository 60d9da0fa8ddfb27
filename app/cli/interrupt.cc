#include "app/cli/interrupt.h"

namespace flowkin {
namespace {

// The only thing a handler may write to besides lock-free atomics (C++
// standard, [support.signal]).
volatile std::sig_atomic_t came = 0;

extern "C" void Note(int signal) { came = signal; }

}  // namespace

InterruptWatch::InterruptWatch() {
  came = 0;
  struct sigaction once {};
  once.sa_handler = Note;
  // SA_RESTART: reads and writes under way go on.
  once.sa_flags = static_cast<int>(SA_RESETHAND | SA_RESTART);
  sigemptyset(&once.sa_mask);
  ::sigaction(SIGINT, &once, &old_int_);
  ::sigaction(SIGTERM, &once, &old_term_);
  // What was ignored (a job in the background) stays so.
  if (old_int_.sa_handler == SIG_IGN) ::sigaction(SIGINT, &old_int_, nullptr);
  if (old_term_.sa_handler == SIG_IGN) {
    ::sigaction(SIGTERM, &old_term_, nullptr);
  }
}

InterruptWatch::~InterruptWatch() {
  ::sigaction(SIGINT, &old_int_, nullptr);
  ::sigaction(SIGTERM, &old_term_, nullptr);
}

int InterruptWatch::Signal() const { return came; }

void EndBySignal(int signal) {
  std::signal(signal, SIG_DFL);
  std::raise(signal);
}

}  // namespace flowkin
