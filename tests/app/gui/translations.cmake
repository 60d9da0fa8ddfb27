# Fails where a translation is unfinished, or where the sources hold a text that
# app/gui/i18n does not. Refresh with: cmake --build BUILD -t translations
file(MAKE_DIRECTORY ${SCRATCH})
foreach(language de fr)
  set(kept ${SOURCE_DIR}/app/gui/i18n/flowkin_${language}.ts)
  set(fresh ${SCRATCH}/flowkin_${language}.ts)
  file(COPY_FILE ${kept} ${fresh})
  execute_process(
    COMMAND ${LUPDATE} -silent -no-obsolete -locations none
      -tr-function-alias translate+=Phrase -I ${SOURCE_DIR}
      ${SOURCE_DIR}/app/gui ${SOURCE_DIR}/app/qml
      ${SOURCE_DIR}/app/usecases/paper.cc
      ${SOURCE_DIR}/app/usecases/print_day.cc
      ${SOURCE_DIR}/app/usecases/words.cc -ts ${fresh}
    RESULT_VARIABLE failed)
  if(failed)
    message(FATAL_ERROR "lupdate failed")
  endif()
  file(READ ${fresh} text)
  string(REGEX MATCHALL "type=\"unfinished\"" unfinished "${text}")
  list(LENGTH unfinished count)
  if(count GREATER 0)
    message(FATAL_ERROR
      "${count} texts are not translated in flowkin_${language}.ts")
  endif()
  string(REGEX MATCHALL "<message" messages "${text}")
  list(LENGTH messages total)
  if(total LESS 100)
    message(FATAL_ERROR "only ${total} texts found: were the sources read?")
  endif()
  message(STATUS "${language}: ${total} texts, all translated")
endforeach()
