// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Verification.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <cstdlib>

using namespace lastrivet;

// Leaves its database where the environment says, for a script that computes the chain on its own.
TEST_CASE("A journal with every kind of row that a single copy writes holds together")
{
    test::TestProject project;
    const auto wing = project.part("Wing – “left”, with ünïcode");
    project.person("Alex", ChangeKind::Automatic);
    REQUIRE(project->undo());
    REQUIRE(project->redo());
    project.change(
        "Import",
        [&](Edit &edit) {
            for (int i = 0; i < 700; ++i) {
                Step step;
                step.component_id = wing;
                step.title = "Step " + std::to_string(i);
                edit.put(step);
            }
        },
        ChangeKind::Import);
    project->notePrinted("Packet");
    project.change("Empty label follows", [&](Edit &edit) {
        edit.update(wing, [](Component &part) { part.zone = "A"; });
    });
    project.change(
        "", [&](Edit &edit) { edit.update(wing, [](Component &part) { part.zone = "B"; }); });
    project.close();
    CHECK(verify(project.folder()).isFaultless());
    if (const char *keep = std::getenv("LASTRIVET_JOURNAL_DATABASE"))
        std::filesystem::copy_file(project.database(), keep,
                                   std::filesystem::copy_options::overwrite_existing);
}
