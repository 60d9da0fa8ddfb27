# cmake -C .ci/coverage.cmake -S . -B build/coverage, then build, ctest and
# gcovr -r . --filter '(core|calibration|app)/' build/coverage
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g --coverage" CACHE STRING "")
