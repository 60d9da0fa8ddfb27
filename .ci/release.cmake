# cmake -C .ci/release.cmake -S . -B build/release
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(FLOWKIN_WERROR ON CACHE BOOL "")
