// fontconfig keeps what it read about the fonts until the process ends, behind
// pointers that the leak checker cannot follow.
extern "C" const char* __lsan_default_suppressions();

extern "C" const char* __lsan_default_suppressions() {
  return "leak:libfontconfig\n";
}
