# SPDX-License-Identifier: GPL-3.0-or-later
# The languages of screen and print. English has only its plurals; its texts stand in the source.
find_package(Qt6 6.4 REQUIRED COMPONENTS LinguistTools)
find_package(Python3 REQUIRED COMPONENTS Interpreter)

set(translations_folder ${PROJECT_SOURCE_DIR}/resources/translations)
set(translated_files)
foreach(language de en fr)
    set(made ${PROJECT_BINARY_DIR}/translations/lastrivet_${language}.qm)
    add_custom_command(OUTPUT ${made}
        COMMAND ${CMAKE_COMMAND} -E make_directory ${PROJECT_BINARY_DIR}/translations
        COMMAND Qt6::lrelease -silent -nounfinished ${translations_folder}/lastrivet_${language}.ts -qm ${made}
        DEPENDS ${translations_folder}/lastrivet_${language}.ts
        VERBATIM)
    list(APPEND translated_files ${made})
endforeach()

# `cmake --build build/dev --target translations` brings the .ts files up to date with the sources;
# DEVELOPERS.md says how they are then filled.
add_custom_target(translations
    COMMAND ${CMAKE_COMMAND} -E env LUPDATE=$<TARGET_FILE:Qt6::lupdate>
        ${Python3_EXECUTABLE} ${translations_folder}/refresh.py ${PROJECT_SOURCE_DIR}
    VERBATIM)
