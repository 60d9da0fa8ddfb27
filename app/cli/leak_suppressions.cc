// fontconfig keeps what it read about the fonts until the process ends, behind
// pointers that the leak checker cannot follow.
// NOLINTBEGIN(readability-identifier-naming): the checker looks for these.
extern "C" {
const char* __lsan_default_suppressions();
const char* __lsan_default_options();

const char* __lsan_default_suppressions() { return "leak:libfontconfig\n"; }

// Standard error is for the program's own one sentence.
const char* __lsan_default_options() { return "print_suppressions=0"; }
}
// NOLINTEND(readability-identifier-naming)
