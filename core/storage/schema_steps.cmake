# SPDX-License-Identifier: GPL-3.0-or-later
# Compiles the numbered schema files into the program, so that it needs no files to run.
set(schema_steps 001 002 003)
set(schema_step_list "")
foreach(step IN LISTS schema_steps)
    set(file "${PROJECT_SOURCE_DIR}/resources/schema/${step}.sql")
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${file}")
    file(READ "${file}" statements)
    math(EXPR number "1${step} - 1000")
    string(APPEND schema_step_list "    {${number}, R\"sql(${statements})sql\"},\n")
endforeach()
file(CONFIGURE OUTPUT "${CMAKE_CURRENT_BINARY_DIR}/SchemaSteps.cpp" @ONLY CONTENT
"#include \"core/storage/SchemaSteps.h\"

namespace lastrivet::storage {

std::span<const SchemaStep> schemaSteps()
{
    static constexpr SchemaStep steps[]{
@schema_step_list@    };
    return steps;
}

} // namespace lastrivet::storage
")
