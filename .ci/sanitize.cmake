# cmake -C .ci/sanitize.cmake -S . -B build/sanitize
#
# -O1 keeps the vision loops bearable under the sanitizers and the stack traces
# readable; -g1 gives line numbers without the cost of full debug information.
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O1 -g1" CACHE STRING "")
set(CMAKE_CXX_FLAGS "-D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(FLOWKIN_SANITIZE "address,undefined" CACHE STRING "")
set(FLOWKIN_WERROR OFF CACHE BOOL "")
# Without the window: Qt, GStreamer and fontconfig keep memory at their end that
# the leak checker would report; all arithmetic lies below the window.
set(FLOWKIN_GUI OFF CACHE BOOL "")
set(FLOWKIN_UNITY ON CACHE BOOL "")
