# Plants one breach of each rule in a scratch tree and expects it to be found.
#   cmake -DSOURCE_DIR=… -DSCRATCH_DIR=… -P tests/lint/house_selftest.cmake

cmake_minimum_required(VERSION 3.25)
set(tree ${SCRATCH_DIR}/house)

function(expect_breach name file content pattern)
  file(REMOVE_RECURSE ${tree})
  file(WRITE ${tree}/CMakeLists.txt "")
  file(WRITE ${tree}/core/base/a.h "#pragma once\n")
  file(WRITE ${tree}/core/vision/v.h "#include \"core/base/a.h\"\n")
  file(WRITE ${tree}/app/usecases/u.h "#include \"core/base/a.h\"\n")
  file(WRITE ${tree}/app/cli/c.cc
    "#include \"app/usecases/u.h\"\n#include \"core/base/a.h\"\n")
  file(WRITE ${tree}/app/gui/g.cc "#include <QString>\n")
  if(file)
    file(WRITE ${tree}/${file} "${content}")
  endif()
  execute_process(
    COMMAND ${CMAKE_COMMAND} -DSOURCE_DIR=${tree}
      -P ${SOURCE_DIR}/tests/lint/house.cmake
    RESULT_VARIABLE status OUTPUT_VARIABLE output ERROR_VARIABLE output)
  if(pattern)
    if(status EQUAL 0 OR NOT output MATCHES "${pattern}")
      message(SEND_ERROR "${name}: breach not found\n${output}")
    endif()
  elseif(NOT status EQUAL 0)
    message(SEND_ERROR "${name}: a clean tree was refused\n${output}")
  endif()
endfunction()

expect_breach("clean tree" "" "" "")
expect_breach("upward include" core/base/b.h
  "#include \"core/vision/v.h\"\n" "core/base may not include core/vision")
expect_breach("vision meets flow" core/flow/f.cc
  "#include \"core/vision/v.h\"\n" "core/flow may not include core/vision")
expect_breach("front end past the use-cases" app/cli/d.cc
  "#include \"core/vision/v.h\"\n" "app/cli may not include core/vision")
expect_breach("relative include" core/base/b.h "#include \"a.h\"\n"
  "not written from the top")
expect_breach("unknown part" core/misc/m.h "#pragma once\n" "core/misc is not")
expect_breach("Qt below the window" core/base/q.h "#include <QtCore>\n"
  "only app/gui may include Qt")
expect_breach("printing core" core/base/p.cc "void F() { std::cout << 1; }\n"
  "neither prints")
expect_breach("clock in core" core/base/p.cc
  "auto t = std::chrono::steady_clock::now();\n" "neither prints")
expect_breach("stray file" notes.txt "x\n" "top level")
expect_breach("machine path" tests/x.cc "// see /ho${empty}me/someone/clip.mp4\n"
  "path of one machine")
expect_breach("left undone" core/base/t.h "// TO${empty}DO: later\n"
  "left undone")
file(REMOVE_RECURSE ${tree})
