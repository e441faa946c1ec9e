// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Verification.h"

#include "core/base/Error.h"
#include "core/base/Sha256.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <fstream>
#include <string>
#include <vector>

using namespace lastrivet;
namespace fs = std::filesystem;

namespace {

/// A project with a part, a step, and a photo that is on disk.
struct Fixture {
    Fixture()
    {
        wing = project.part("Wing");
        photo = addPhoto("photos/wing.jpg", "a picture of a wing");
    }

    Id<Media> addPhoto(const std::string &file, std::string_view content)
    {
        std::ofstream(project.folder() / file, std::ios::binary) << content;
        Sha256 sum;
        sum.add(content);
        Media media;
        media.file = file;
        media.sha256 = hex(sum.digest());
        Id<Media> id;
        project.change("Photo", [&](Edit &edit) { id = edit.put(media); });
        return id;
    }

    std::vector<Finding> findings() { return verify(project.folder()).findings; }

    test::TestProject project;
    Id<Component> wing;
    Id<Media> photo;
};

const Finding *find(const std::vector<Finding> &findings, std::string_view what,
                    std::string_view words)
{
    const auto found = std::find_if(findings.begin(), findings.end(), [&](const Finding &finding) {
        return finding.what == what && finding.text.find(words) != std::string::npos;
    });
    return found == findings.end() ? nullptr : &*found;
}

constexpr const char *freeJournal =
    R"(DROP TRIGGER "journal_is_never_changed"; DROP TRIGGER "journal_is_never_shortened";)";

} // namespace

TEST_CASE("A sound project has no findings, open or closed, and what was looked at is counted")
{
    Fixture fixture;
    REQUIRE(fixture.project->undo());
    REQUIRE(fixture.project->redo());
    fixture.project->notePrinted("Packet");
    const auto whileOpen = verify(fixture.project.folder());
    CHECK(whileOpen.isFaultless());
    CHECK(whileOpen.records == 3);
    CHECK(whileOpen.journal_rows == 6);
    CHECK(whileOpen.files == 1);
    fixture.project.close();
    CHECK(verify(fixture.project.folder()).isFaultless());
}

TEST_CASE("A file without a sum on record is told and counted, and makes the project no less whole")
{
    Fixture fixture;
    const auto addWithout = [&](const std::string &file) {
        const auto id = fixture.addPhoto(file, file);
        fixture.project.change("Nothing on record", [&](Edit &edit) {
            edit.update(id, [](Media &media) { media.sha256.clear(); });
        });
    };
    CHECK(verify(fixture.project.folder()).notes.empty());
    addWithout("photos/rib.jpg");
    const auto one = verify(fixture.project.folder());
    CHECK(one.isFaultless());
    CHECK(one.files == 2);
    CHECK(one.files_without_sha256 == 1);
    REQUIRE(one.notes.size() == 1);
    CHECK(english(one.notes.front()) ==
          "The file photos/rib.jpg has no SHA-256 on record: whether it is as it came cannot be "
          "told.");
    addWithout("photos/spar.jpg");
    const auto two = verify(fixture.project.folder());
    CHECK(two.files_without_sha256 == 2);
    REQUIRE(two.notes.size() == 1);
    CHECK(english(two.notes.front()) ==
          "The file photos/rib.jpg, like 1 more, has no SHA-256 on record: whether it is as it "
          "came cannot be told.");
    // One that is not there is missing, whatever is on record of it.
    fs::remove(fixture.project.folder() / "photos/rib.jpg");
    const auto gone = verify(fixture.project.folder());
    CHECK(gone.files_without_sha256 == 1);
    CHECK(find(gone.findings, "file", "is missing"));
}

TEST_CASE("A record that was altered behind the journal's back is named")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper("UPDATE component SET name='Tail'");
    const auto findings = fixture.findings();
    const auto *found = find(findings, "replay", "differs from what the journal made of it");
    REQUIRE(found);
    CHECK(found->record == "component");
    CHECK(found->id == fixture.wing.value());
    // In words for the terminal, and as a pattern for windows in other languages.
    CHECK(found->text == english(found->message));
    CHECK(found->message.pattern ==
          "{0} {1} differs from what the journal made of it (table {2}).");
    CHECK(find(findings, "search", "does not say what component"));
    CHECK(findings.size() == 2);
}

TEST_CASE("A record that was removed or slipped in behind the journal's back is named")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper("DELETE FROM component; "
                           "INSERT INTO person (id,name) VALUES (5,'Nobody');"
                           "INSERT INTO person_roles VALUES (5,'inspector')");
    const auto findings = fixture.findings();
    const auto *missing = find(findings, "replay", "missing from the records");
    REQUIRE(missing);
    CHECK(missing->id == fixture.wing.value());
    const auto *extra = find(findings, "replay", "no change in the journal made it");
    REQUIRE(extra);
    CHECK(extra->record == "person");
    CHECK(extra->id == 5);
}

TEST_CASE("A journal row whose words were altered no longer fits its hash")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper(std::string(freeJournal) + "UPDATE journal SET who='Alex' WHERE seq=2");
    const auto findings = fixture.findings();
    REQUIRE(find(findings, "journal", "Row 2 of the journal (“Part Wing”) was altered"));
    CHECK(find(findings, "database", "it lacks “trigger journal_is_never_changed"));
    CHECK(findings.size() == 2);
}

TEST_CASE("A journal row that was taken out is missed by the next")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper(std::string(freeJournal) + "DELETE FROM journal WHERE seq=2");
    const auto findings = fixture.findings();
    CHECK(find(findings, "journal", "Row 3 of the journal (“Photo”) does not follow"));
    CHECK(find(findings, "replay", "no change in the journal made it"));
}

TEST_CASE("A journal row with another number, or an earlier time, is told as that")
{
    Fixture fixture;
    fixture.project.close();
    SECTION("number")
    {
        fixture.project.tamper(std::string(freeJournal) + "UPDATE journal SET seq=9 WHERE seq=3");
        CHECK(find(fixture.findings(), "journal",
                   "Row 9 of the journal (“Photo”) is out of sequence"));
    }
    SECTION("time")
    {
        fixture.project.tamper(std::string(freeJournal) + "UPDATE journal SET stamp=1 WHERE seq=3");
        CHECK(find(fixture.findings(), "journal",
                   "Row 3 of the journal (“Photo”) is not later than the row before it"));
    }
}

TEST_CASE("A journal row whose change cannot come after the others is named")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper(std::string(freeJournal) +
                           "UPDATE journal SET changeset="
                           "(SELECT changeset FROM journal WHERE seq=2) WHERE seq=3");
    const auto findings = fixture.findings();
    const auto *found = find(findings, "replay", "Row 3 of the journal (“Photo”) does not fit");
    REQUIRE(found);
    CHECK(found->record == "component");
    CHECK(found->id == fixture.wing.value());
}

TEST_CASE(
    "Rules that were altered behind the journal's back are told, and that nobody can read them")
{
    Fixture fixture;
    auto rules = fixture.project->profile();
    rules.name = "Rules of the shed";
    fixture.project.change("Rules", [&](Edit &edit) { edit.useProfile(rules); });
    REQUIRE(fixture.findings().empty());
    fixture.project.close();
    fixture.project.tamper("UPDATE profile_copy SET content='{'");
    const auto findings = fixture.findings();
    CHECK(
        find(findings, "replay", "differs from what the journal made of it (table profile_copy)"));
    CHECK(find(findings, "invariant", "The project's copy of its rule profile"));
}

TEST_CASE("A record that breaks a rule is named, whoever wrote it")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper("PRAGMA foreign_keys=OFF; UPDATE component SET parent_id=12345");
    const auto findings = fixture.findings();
    CHECK(find(findings, "database", "names a component that does not exist"));
    const auto broken = std::find_if(findings.begin(), findings.end(),
                                     [](const Finding &f) { return f.what == "invariant"; });
    REQUIRE(broken != findings.end());
    CHECK(broken->id == fixture.wing.value());
}

TEST_CASE("A project of a time zone that nobody knows opens, and its zone is named")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper("UPDATE project SET time_zone='Mars/Olympus'");
    fixture.project.reopen();
    CHECK(fixture.project->now().text() == "2026-03-14T09:00");
    fixture.project.part("Tail");
    const auto findings = fixture.findings();
    const auto *zone = find(findings, "invariant", "time zone Mars/Olympus is not known");
    REQUIRE(zone);
    CHECK(zone->record == "project");
}

TEST_CASE("A photo with one flipped bit is found, and so is one that is gone")
{
    Fixture fixture;
    const auto gone = fixture.addPhoto("photos/gone.jpg", "soon gone");
    {
        std::fstream file(fixture.project.folder() / "photos/wing.jpg",
                          std::ios::binary | std::ios::in | std::ios::out);
        file.seekp(3);
        file.put('q');
    }
    fs::remove(fixture.project.folder() / "photos/gone.jpg");
    const auto findings = fixture.findings();
    const auto *altered = find(findings, "file", "photos/wing.jpg is not as it was taken in");
    REQUIRE(altered);
    CHECK(altered->id == fixture.photo.value());
    const auto *missing = find(findings, "file", "photos/gone.jpg is missing");
    REQUIRE(missing);
    CHECK(missing->id == gone.value());
    CHECK(findings.size() == 2);
}

TEST_CASE("A file that no record ever named is told, but not the file of an undone photo")
{
    Fixture fixture;
    fixture.addPhoto("photos/undone.jpg", "taken back");
    REQUIRE(fixture.project->undo());
    std::ofstream(fixture.project.folder() / "documents/stray.pdf") << "?";
    const auto findings = fixture.findings();
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].text == "No record names the file documents/stray.pdf.");
}

TEST_CASE("A second database and a half-written file in the project's folder are told")
{
    Fixture fixture;
    fixture.project.close();
    fs::copy_file(fixture.project.database(), fixture.project.folder() / "records (copy).db");
    // Of a program that is no more; its number is in the name.
    std::ofstream(fixture.project.folder() / "photos/.tmp-4711-1") << "half a pho";
    const auto findings = fixture.findings();
    CHECK(find(findings, "file", "project's folder: records (copy).db."));
    CHECK(find(findings, "file", "The file photos/.tmp-4711-1 is half-written"));
    CHECK(findings.size() == 2);
}

TEST_CASE("Of each kind only the first hundred findings are listed, and the others are counted")
{
    Fixture fixture;
    fixture.project.change("Photos", [](Edit &edit) {
        for (int i = 0; i < 120; ++i) {
            Media media;
            media.file = fmt::format("photos/{}.jpg", i);
            media.sha256 = fmt::format("{:064x}", i);
            edit.put(media);
        }
    });
    const Verification found = verify(fixture.project.folder());
    CHECK(found.findings.size() == 100);
    CHECK(found.untold == 20);
    CHECK(found.foundInAll() == 120);
    REQUIRE(found.notes.size() == 1);
    CHECK(english(found.notes.front()) ==
          "Only the first 100 findings of each kind are listed; 20 more are not.");
}

TEST_CASE("A file name that leads out of the project's folder is not followed")
{
    Fixture fixture;
    fixture.project.close();
    fixture.project.tamper("UPDATE media SET file='../../etc/hostname'");
    CHECK(find(fixture.findings(), "file", "would lie outside the project's folder"));
}

TEST_CASE("A database with a damaged page is a finding, not a failure")
{
    Fixture fixture;
    for (int i = 0; i < 300; ++i)
        fixture.project.part("Part number " + std::to_string(i));
    fixture.project.close();
    // Free pages hold nothing that could be damaged.
    fixture.project.tamper("VACUUM");
    const auto pages = fs::file_size(fixture.project.database()) / 4096;
    REQUIRE(pages > 20);
    int found = 0;
    const std::string sound = [&] {
        std::ifstream file(fixture.project.database(), std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(file), {});
    }();
    for (std::uintmax_t page = 2; page < pages; page += 7) {
        auto broken = sound;
        std::fill_n(broken.begin() + std::ptrdiff_t(page * 4096), 64, '\xff');
        std::ofstream(fixture.project.database(), std::ios::binary) << broken;
        found += !fixture.findings().empty();
    }
    CHECK(found == int((pages - 2 + 6) / 7));
}

TEST_CASE("A folder that is no project cannot be verified")
{
    const lastrivet::TemporaryFolder folder;
    CHECK_THROWS_AS(verify(folder.path()), UnreadableInput);
}
