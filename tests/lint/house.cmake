# House rules that a compiler does not check.
#   cmake -DSOURCE_DIR=… -P tests/lint/house.cmake
# Lists every breach, then fails. The rules are told in DEVELOPERS.md.

cmake_minimum_required(VERSION 3.25)
set(breaches "")
macro(breach text)
  list(APPEND breaches "${text}")
endmacro()

# 1. Who may include whom. A part may always include itself.
set(may_core/base "")
set(may_core/fit core/base)
set(may_core/video core/base)
set(may_core/track core/base)
set(may_core/vision core/base core/video core/track)
set(may_core/flow core/base core/fit core/track)
set(may_core/session core/base core/flow)
set(may_core/dosing core/base core/flow core/session)
set(may_core/planning core/base)
set(engine core/base core/fit core/video core/track core/vision core/flow
  core/session core/dosing core/planning)
set(may_calibration/curve ${engine} calibration/store)
set(may_calibration/store ${engine} calibration/curve)
set(may_calibration/defaults ${engine} calibration/curve)
set(book calibration/curve calibration/defaults calibration/store)
set(may_app/usecases ${engine} ${book})
set(may_app/gui app/usecases)
set(may_app/cli app/usecases)

# A front end may also include what the headers of the use-cases show.
set(shown "")
file(GLOB pending RELATIVE ${SOURCE_DIR} ${SOURCE_DIR}/app/usecases/*.h)
while(pending)
  list(POP_FRONT pending header)
  file(STRINGS ${SOURCE_DIR}/${header} lines REGEX "^#include \"")
  foreach(line IN LISTS lines)
    string(REGEX REPLACE "^#include \"([^\"]*)\".*" "\\1" target "${line}")
    if(NOT target IN_LIST shown AND EXISTS ${SOURCE_DIR}/${target})
      list(APPEND shown ${target})
      list(APPEND pending ${target})
    endif()
  endforeach()
endwhile()

file(GLOB_RECURSE sources RELATIVE ${SOURCE_DIR}
  ${SOURCE_DIR}/core/*.h ${SOURCE_DIR}/core/*.cc
  ${SOURCE_DIR}/calibration/*.h ${SOURCE_DIR}/calibration/*.cc
  ${SOURCE_DIR}/app/*.h ${SOURCE_DIR}/app/*.cc)
foreach(source IN LISTS sources)
  string(REGEX REPLACE "^([^/]*/[^/]*)/.*" "\\1" part "${source}")
  if(NOT DEFINED may_${part})
    breach("${source}: the part ${part} is not in the list of who may include whom")
    continue()
  endif()
  file(STRINGS ${SOURCE_DIR}/${source} lines REGEX "^[ \t]*#[ \t]*include")
  foreach(line IN LISTS lines)
    if(line MATCHES "include[ \t]*\"([^\"]*)\"")
      set(target "${CMAKE_MATCH_1}")
      string(REGEX REPLACE "^([^/]*/[^/]*)/.*" "\\1" target_part "${target}")
      if(NOT EXISTS ${SOURCE_DIR}/${target})
        breach("${source}: \"${target}\" is not written from the top of the repository")
      elseif(NOT target_part STREQUAL part
          AND NOT target_part IN_LIST may_${part}
          AND NOT (part MATCHES "^app/(cli|gui)$" AND target IN_LIST shown))
        breach("${source}: ${part} may not include ${target_part}")
      endif()
    elseif(line MATCHES "include[ \t]*<(Q[A-Z][A-Za-z]*|Qt[A-Z].*)>"
        AND NOT part STREQUAL "app/gui")
      breach("${source}: only app/gui may include Qt")
    endif()
  endforeach()
endforeach()

# 2. The engine reads no wall clock and prints nothing.
foreach(source IN LISTS sources)
  if(NOT source MATCHES "^core/" OR source STREQUAL "core/base/check.h")
    continue()
  endif()
  file(STRINGS ${SOURCE_DIR}/${source} lines REGEX
    "std::(cout|cerr|clog|printf|puts)|[^sn]printf\\(|system_clock|steady_clock|<iostream>|std::time\\(|gettimeofday")
  foreach(line IN LISTS lines)
    if(NOT line MATCHES "^[ \t]*//")
      breach("${source}: core neither prints nor reads a clock:${line}")
    endif()
  endforeach()
endforeach()

# 3. The top level holds only these (hidden files and build folders apart).
file(GLOB entries RELATIVE ${SOURCE_DIR} ${SOURCE_DIR}/*)
foreach(entry IN LISTS entries)
  if(NOT entry MATCHES "^(CMakeLists.txt|README.md|DEVELOPERS.md|LICENSE|app|core|calibration|tests|sample-clips|build.*|\\..*)$")
    breach("${entry}: does not belong at the top level")
  endif()
endforeach()

# 4. Nothing may depend on one person's machine, and nothing is left undone.
file(GLOB_RECURSE texts RELATIVE ${SOURCE_DIR} LIST_DIRECTORIES false
  ${SOURCE_DIR}/core/* ${SOURCE_DIR}/calibration/* ${SOURCE_DIR}/app/*
  ${SOURCE_DIR}/tests/* ${SOURCE_DIR}/sample-clips/*.json
  ${SOURCE_DIR}/sample-clips/*.md ${SOURCE_DIR}/.ci/*)
list(APPEND texts CMakeLists.txt)
foreach(name README.md DEVELOPERS.md)
  if(EXISTS ${SOURCE_DIR}/${name})
    list(APPEND texts ${name})
  endif()
endforeach()
foreach(text IN LISTS texts)
  if(NOT text MATCHES "\\.(h|cc|cmake|md|json|txt|csv|sh)$" AND NOT text MATCHES "^\\.ci/"
      OR text STREQUAL "tests/lint/house.cmake")
    continue()
  endif()
  file(STRINGS ${SOURCE_DIR}/${text} lines REGEX
    "(^|[^A-Za-z0-9_.])/(home|root|tmp|mnt|srv|opt|work)/|[.]/shared/|(TODO|FIXME|XXX|HACK)([^A-Za-z]|$)")
  foreach(line IN LISTS lines)
    breach("${text}: a path of one machine, or work left undone: ${line}")
  endforeach()
endforeach()

# 5. Sample clips stay small enough to fetch.
file(GLOB_RECURSE clips ${SOURCE_DIR}/sample-clips/*)
set(total 0)
foreach(clip IN LISTS clips)
  file(SIZE ${clip} bytes)
  math(EXPR total "${total} + ${bytes}")
endforeach()
if(total GREATER 30000000)
  breach("sample-clips: ${total} bytes, at most 30 MB")
endif()

if(breaches)
  list(JOIN breaches "\n  " text)
  message(FATAL_ERROR "House rules broken:\n  ${text}\n")
endif()
list(LENGTH sources count)
message(STATUS "House rules hold in ${count} source files")
