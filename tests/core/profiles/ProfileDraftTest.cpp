// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileDraft.h"

#include "core/profiles/ProfileLibrary.h"
#include "core/project/Project.h"
#include "core/project/acts/RulesActs.h"
#include "tests/support/FakeClock.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <fstream>

using namespace lastrivet;

namespace {

Profile canada()
{
    return ProfileLibrary::shipped().profile("ca");
}

} // namespace

TEST_CASE("A draft that is not right yet is read back as it was written")
{
    Profile draft = canada();
    draft.documents.emplace_back();
    draft.hold_points.clear();
    draft.sources.front().id.clear();
    draft.name = "Half \"written\"\n";
    draft.late_acceptance_by.clear();
    REQUIRE_FALSE(readProfile(profileJson(draft)));
    Profile read = readDraft(profileJson(draft));
    read.json = draft.json;
    CHECK(read == draft);
    // What is right is read as a profile is.
    for (const std::string &id : ProfileLibrary::shipped().ids()) {
        const Profile whole = ProfileLibrary::shipped().profile(id);
        CHECK(profileJson(readDraft(whole.json)) == whole.json);
    }
}

TEST_CASE("What is no draft at all is an empty one")
{
    for (const char *text : {"", "[]", "{\"documents\": 3, \"name\": 4, \"words\": []}", "{\"a"})
        CHECK(readDraft(text) == Profile{});
}

TEST_CASE("A copy has an id, a name and an edition of its own, and can be used as it is")
{
    const Profile copy = copyToEdit(canada(), "Canada, own copy", "2026-03-14");
    CHECK(copy.id == "ca-own");
    CHECK(copy.edition == "2026-03-14");
    CHECK_FALSE(whyNot(copy, ProfileLibrary::shipped()));
}

TEST_CASE("A draft is refused in one sentence that names the place")
{
    Profile draft = canada();
    CHECK_FALSE(whyNot(draft, ProfileLibrary::shipped()));
    draft.late_entry_days = 14;
    auto fault = whyNot(draft, ProfileLibrary::shipped());
    REQUIRE(fault);
    CHECK(fault->pointer == "/id");
    draft.id = "ca-own";
    CHECK_FALSE(whyNot(draft, ProfileLibrary::shipped()));
    draft.documents[2].source = "nobody";
    fault = whyNot(draft, ProfileLibrary::shipped());
    REQUIRE(fault);
    CHECK(english(fault->sentence("Rules")) ==
          "Rules: /documents/2/source \"nobody\" is none of the listed sources.");
}

TEST_CASE("A project goes by other rules in one change, which can be taken back")
{
    const test::TemporaryFolder folder;
    test::FakeClock clock;
    ProjectFacts facts;
    facts.name = "Kestrel Two";
    const auto project =
        Project::create(folder / "P.lastrivet", facts, canada(), {&clock, "Robin"});
    Profile copy = copyToEdit(canada(), "Canada, own copy", "2026-03-14");
    copy.interior_photos = 7;
    const auto result = project->change("Rules", [&](Edit &edit) { acts::useRules(edit, copy); });
    REQUIRE(result);
    CHECK(project->profile().interior_photos == 7);
    CHECK(project->records()->project.profile == "ca-own");
    CHECK(project->records()->profile_copy == profileJson(copy));
    REQUIRE(project->undo());
    CHECK(project->profile().interior_photos == canada().interior_photos);
    CHECK(project->records()->project.profile == "ca");
    REQUIRE(project->redo());
    CHECK(project->profile().interior_photos == 7);
}

TEST_CASE("A person's own profiles stand beside those of the program, and never in their place")
{
    const test::TemporaryFolder folder;
    const char *before = std::getenv("XDG_DATA_HOME");
    const std::string kept = before ? before : "";
    setenv("XDG_DATA_HOME", (folder / "data").c_str(), 1);
    const auto own = ProfileLibrary::ownFolder();
    CHECK(own == folder / "data" / "lastrivet" / "profiles");
    std::filesystem::create_directories(own);
    Profile copy = copyToEdit(canada(), "Own", "2026-03-14");
    std::ofstream(own / "ca-own.json") << profileJson(copy);
    copy.id = "ca";
    std::ofstream(own / "ca.json") << profileJson(copy);
    CHECK(ProfileLibrary::standard().profile("ca-own").name == "Own");
    CHECK(ProfileLibrary::standard().profile("ca").name == "Canada");
    CHECK_FALSE(ProfileLibrary::shipped().find("ca-own"));
    before ? setenv("XDG_DATA_HOME", kept.c_str(), 1) : unsetenv("XDG_DATA_HOME");
}
