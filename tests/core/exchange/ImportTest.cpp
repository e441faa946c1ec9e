// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/Import.h"
#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/FileImport.h"
#include "core/exchange/InputText.h"
#include "tests/support/ProjectBuilder.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <fstream>
#include <sstream>

using namespace lastrivet;
using namespace lastrivet::exchange;
using namespace lastrivet::test;

namespace fs = std::filesystem;

namespace {

using Said = std::vector<std::string>;

const char *const head =
    R"("format": "lastrivet-records", "version": 1, "project": {"name": "Demo", "profile": "ca", "builder_id": 1},
       "people": [{"id": 1, "name": "Ada Plank", "roles": ["builder"]}],
       "components": [{"id": 1, "name": "Wing"}])";

class Bench {
public:
    fs::path file(std::string_view name, std::string_view content) const
    {
        const auto path = m_folder / name;
        fs::create_directories(path.parent_path());
        std::ofstream(path, std::ios::binary) << content;
        return path;
    }
    /// A document of one person and part, and these further members.
    fs::path document(std::string_view members) const
    {
        return file("in/document.json",
                    fmt::format("{{{}{}{}}}", head, members.empty() ? "" : ", ", members));
    }
    Result<NewProject, InputErrors> makeFrom(const fs::path &document,
                                             std::string_view name = "Demo.lastrivet") const
    {
        return importAsNewProject(m_folder / name, document, ProfileLibrary::standard(), {});
    }
    fs::path operator/(std::string_view name) const { return m_folder / name; }

private:
    test::TemporaryFolder m_folder;
};

/// A clock by which somebody changes a file as soon as the project is being made.
class ChangingFile final : public Clock {
public:
    explicit ChangingFile(fs::path file)
        : m_file(std::move(file))
    {
    }
    std::chrono::sys_time<std::chrono::milliseconds> now() const override
    {
        std::ofstream(m_file, std::ios::binary) << "another picture";
        return SystemClock{}.now();
    }

private:
    fs::path m_file;
};

Said sentences(const InputErrors &errors)
{
    Said all;
    for (const auto &error : errors)
        all.push_back(english(error, "f"));
    return all;
}

std::string exported(const Project &project)
{
    std::ostringstream out;
    writeDocument(*project.records(), out);
    return out.str();
}

} // namespace

TEST_CASE("A document becomes a project, and its export becomes an equal one")
{
    const Bench bench;
    const auto made = bench.makeFrom(bench.document(
        R"("closings": [{"id": 5, "component_id": 1, "title": "Skin", "encloses": [1]}])"));
    REQUIRE(made);
    CHECK(made->report.addedInAll() == 3);
    CHECK(made->report.hold_points_made == 2);
    const auto text = exported(*made->project);
    const auto again = bench.makeFrom(bench.file("out/export.json", text), "Again.lastrivet");
    REQUIRE(again);
    CHECK(again->report.hold_points_made == 0);
    CHECK(exported(*again->project) == text);
}

TEST_CASE("Hold points are the profile's, unless the document gives all of them")
{
    const Bench bench;
    const std::string closings =
        R"("closings": [{"id": 5, "component_id": 1, "title": "Skin", "encloses": [1]},
           {"id": 6, "component_id": 1, "title": "Spar", "encloses": [1], "made_by": "factory"},
           {"id": 7, "component_id": 1, "title": "Hatch", "encloses": [1], "permanent": false},
           {"id": 8, "component_id": 1, "title": "Finished", "scope": "aircraft"}])";
    SECTION("made")
    {
        const auto made = bench.makeFrom(bench.document(closings));
        REQUIRE(made);
        std::vector<std::pair<std::int64_t, HoldPointKind>> points;
        for (const auto &point : made->project->records()->hold_points) {
            points.emplace_back(point.closing_id.value(), point.kind);
            CHECK_FALSE(point.planned_on);
            CHECK_FALSE(point.source.empty());
        }
        std::sort(points.begin(), points.end());
        CHECK(points == std::vector<std::pair<std::int64_t, HoldPointKind>>{
                            {5, HoldPointKind::ToolAndDebrisCheck},
                            {5, HoldPointKind::PreCover},
                            {8, HoldPointKind::Final}});
    }
    SECTION("given")
    {
        const auto made =
            bench.makeFrom(bench.document(closings + R"(, "hold_points_given": true)"));
        REQUIRE(made);
        CHECK(made->project->records()->hold_points.isEmpty());
    }
    SECTION("one of the kind is in the document")
    {
        const auto made = bench.makeFrom(bench.document(
            closings +
            R"(, "hold_points": [{"id": 1, "closing_id": 5, "kind": "pre_cover", "signer_role": "inspector"}])"));
        REQUIRE(made);
        CHECK(made->report.hold_points_made == 2);
    }
}

TEST_CASE("Taking the same document in again skips every record, and one change takes it all back")
{
    const Bench bench;
    const auto made = bench.makeFrom(bench.document(""));
    REQUIRE(made);
    auto &project = *made->project;
    const auto more = bench.document(R"("tools": [{"id": 1, "name": "Reamer"}])");
    const auto report = importDocument(project, more);
    REQUIRE(report);
    CHECK(report->skipped == 2);
    CHECK(report->addedInAll() == 1);
    CHECK(project.undoLabel() == "Imported document.json");
    REQUIRE(project.undo());
    CHECK(project.records()->tools.isEmpty());
    REQUIRE(importDocument(project, more));
    CHECK(importDocument(project, more)->addedInAll() == 0);
}

TEST_CASE("An import with any error changes nothing and makes no folder")
{
    const Bench bench;
    const auto bad = bench.document(R"("squawks": [{"id": 2, "number": "1", "title": "T",
        "found_on": "2026-01-02", "component_id": 9}], "tools": [{"id": 1, "name": "Reamer"}])");
    const Said expected{
        "f: /squawks/0: Squawk 1 “T” names part 9 in component_id, which is not on record."};
    const auto refused = bench.makeFrom(bad);
    REQUIRE_FALSE(refused);
    CHECK(sentences(refused.reason()) == expected);
    CHECK_FALSE(fs::exists(bench / "Demo.lastrivet"));

    const auto made = bench.makeFrom(bench.document(""));
    REQUIRE(made);
    const auto before = exported(*made->project);
    const auto again = importDocument(*made->project, bench.document(R"("squawks": [{"id": 2,
        "number": "1", "title": "T", "found_on": "2026-01-02", "component_id": 9}],
        "tools": [{"id": 1, "name": "Reamer"}])"));
    REQUIRE_FALSE(again);
    CHECK(sentences(again.reason()) == expected);
    CHECK(exported(*made->project) == before);
}

TEST_CASE("A profile that nobody knows and a file that is none are told in one sentence")
{
    const Bench bench;
    const auto refused = bench.makeFrom(bench.file(
        "in/x.json",
        R"({"format": "lastrivet-records", "version": 1, "project": {"name": "A", "profile": "xx"}})"));
    REQUIRE_FALSE(refused);
    CHECK(sentences(refused.reason()) ==
          Said{"f: /project/profile: There is no rule profile xx; there are ca, gb, plain, us."});
    CHECK_THROWS_AS(bench.makeFrom(bench / "nothing.json"), UnreadableInput);
}

TEST_CASE("A profile that nobody knows hides no other fault")
{
    const Bench bench;
    const auto refused = bench.makeFrom(bench.file("in/x.json",
                                                   R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "", "profile": "xx", "builder_id": 99},
        "people": [{"id": 1, "name": "Ada", "roles": ["builder"]}],
        "components": [{"id": 1, "name": "Wing"}],
        "steps": [{"id": 2, "component_id": 99, "title": "Drill"}],
        "closings": [{"id": 3, "component_id": 1, "title": "Skin", "encloses": [1],
            "late_acceptances": [4]}],
        "sign_offs": [{"id": 4, "person_id": 1, "signed_on": "2026-01-02", "result": "accepted",
            "remarks": "Looked in by borescope"}],
        "squawks": [{"id": 5, "number": "1", "title": "", "found_on": "2026-01-02"}]})"));
    REQUIRE_FALSE(refused);
    std::vector<std::string> places;
    for (const auto &error : refused.reason())
        places.push_back(error.place);
    CHECK(places == std::vector<std::string>{"/project/profile", "/project", "/project", "/steps/0",
                                             "/squawks/0"});
}

TEST_CASE("A document whose project names no profile is refused")
{
    const Bench bench;
    const auto refused = bench.makeFrom(bench.file(
        "in/x.json",
        R"({"format": "lastrivet-records", "version": 1, "project": {"name": "A", "profile": ""}})"));
    REQUIRE_FALSE(refused);
    CHECK(sentences(refused.reason()) == Said{"f: /project: Project “A” lacks profile."});
}

TEST_CASE("A time zone that is empty is told as the fault of the document that it is")
{
    const Bench bench;
    const auto refused = bench.makeFrom(bench.file("in/x.json",
                                                   R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "A", "profile": "plain", "time_zone": ""}})"));
    REQUIRE_FALSE(refused);
    CHECK(sentences(refused.reason()) == Said{"f: /project: Project “A” lacks time_zone."});
}

TEST_CASE(
    "A time zone that nobody knows is told with its place, and with all that is wrong besides")
{
    const Bench bench;
    const auto refused = bench.makeFrom(bench.file("in/x.json",
                                                   R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "A", "profile": "plain", "time_zone": "Mars/Olympus"},
        "steps": [{"id": 1, "component_id": 9, "title": "Drill"}]})"));
    REQUIRE_FALSE(refused);
    CHECK(refused.reason().size() == 2);
    CHECK(sentences(refused.reason()).front() ==
          "f: /project/time_zone: This computer knows no time zone Mars/Olympus; the names are "
          "like Europe/Berlin.");
    CHECK_FALSE(fs::exists(bench / "Demo.lastrivet"));
}

TEST_CASE("Files beside the document are copied, missing ones only counted")
{
    const Bench bench;
    bench.file("in/photos/2026/a.jpg", "picture");
    const auto wrong = bench.makeFrom(bench.document(
        R"("media": [{"id": 1, "kind": "photo", "file": "photos/2026/a.jpg", "sha256": "00"}])"));
    REQUIRE_FALSE(wrong);
    // As coreutils' sha256sum says.
    CHECK(
        sentences(wrong.reason()) ==
        Said{
            "f: /media/0/file: file 1 “photos/2026/a.jpg”: The file is not the one that the record "
            "describes; its SHA-256 is "
            "2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97."});
    CHECK_FALSE(fs::exists(bench / "Demo.lastrivet"));
    const auto good = bench.makeFrom(bench.document(
        R"("media": [{"id": 1, "kind": "photo", "file": "photos/2026/a.jpg"},
           {"id": 2, "kind": "photo", "file": "photos/2026/b.jpg"}])"));
    REQUIRE(good);
    CHECK(good->report.files_copied == 1);
    CHECK(good->report.files_missing == std::vector<std::string>{"photos/2026/b.jpg"});
    std::ostringstream copy;
    copy << std::ifstream(bench / "Demo.lastrivet/photos/2026/a.jpg").rdbuf();
    CHECK(copy.str() == "picture");
}

TEST_CASE("Currencies that nobody knows are told, and their amounts taken in as they are")
{
    const Bench bench;
    const auto made = bench.makeFrom(bench.document(
        R"("part_lines": [{"id": 1, "name": "Rivet", "quantity": 1, "unit_price": 5, "currency": "EUR"},
           {"id": 2, "name": "Bolt", "quantity": 1, "unit_price": 5, "currency": "XYZ"}],
           "expenses": [{"id": 1, "spent_on": "2026-01-02", "what": "Rent", "amount": 500, "currency": "ABC"},
           {"id": 2, "spent_on": "2026-01-02", "what": "Rent", "amount": 500, "currency": "ABC"}])"));
    REQUIRE(made);
    CHECK(made->report.unknown_currencies == Said{"ABC", "XYZ"});
    CHECK(made->project->records()->find(Id<Expense>{1})->amount == 500);
    CHECK(made->project->records()->find(Id<Expense>{1})->currency == "ABC");
}

TEST_CASE(
    "A file that came to be where another is to go is told, also when it came with the import")
{
    const Bench bench;
    bench.file("in/own/a.jpg", "picture");
    const auto document =
        bench.document(R"("media": [{"id": 1, "kind": "photo", "file": "own/a.jpg"}])");
    const auto reading = readDocument(readInputFile(document));
    const auto plan = planImport(reading, ProfileLibrary::standard().profile("ca"));
    FileImport files{bench / "in", bench / "project"};
    CHECK(files.check(plan, reading).empty());
    // As a disk does that takes A.jpg and a.jpg for one.
    bench.file("project/own/a.jpg", "another picture");
    const auto errors = files.copy(plan, reading.document);
    REQUIRE(errors.size() == 1);
    CHECK(english(errors.front().what) == "The project has another file of this name.");
    bench.file("project/own/a.jpg", "picture");
    CHECK(files.copy(plan, reading.document).empty());
    CHECK(files.copied() == 0);
}

TEST_CASE("An import that fails halfway leaves the empty folder that was there, or the link to it")
{
    const Bench bench;
    const bool isLink = GENERATE(false, true);
    const fs::path place = bench / "Demo.lastrivet";
    fs::create_directory(bench / (isLink ? "disk" : "Demo.lastrivet"));
    if (isLink)
        fs::create_directory_symlink(bench / "disk", place);
    const ChangingFile clock(bench.file("in/own/a.jpg", "picture"));
    const auto document = bench.document(
        R"("media": [{"id": 1, "kind": "photo", "file": "own/a.jpg", "sha256":
            "2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97"}])");
    const auto refused =
        importAsNewProject(place, document, ProfileLibrary::standard(), {&clock, {}, false});
    REQUIRE_FALSE(refused);
    CHECK(refused.reason().front().place == "/media/0/file");
    CHECK(fs::is_symlink(fs::symlink_status(place)) == isLink);
    CHECK(fs::is_empty(place));
}

TEST_CASE("Faults of records and of their files are told together")
{
    const Bench bench;
    bench.file("secret.txt", "secret");
    bench.file("in/photos/a.jpg", "picture");
    fs::create_directories(bench / "in/dir.png");
    fs::create_symlink(bench / "secret.txt", bench / "in/link.jpg");
    const auto refused = bench.makeFrom(bench.document(
        R"("media": [{"id": 1, "kind": "photo", "file": "photos/a.jpg", "sha256": "00"},
            {"id": 2, "kind": "photo", "file": "../secret.txt"},
            {"id": 3, "kind": "photo", "file": "link.jpg"},
            {"id": 4, "kind": "photo", "file": "dir.png"},
            {"id": 5, "kind": "photo", "file": "photos/a.jpg"},
            {"id": 6, "kind": "photo", "file": ""},
            {"id": 7, "kind": "photo", "file": 7}],
           "steps": [{"id": 1, "component_id": 9, "title": "Drill"}])"));
    REQUIRE_FALSE(refused);
    std::vector<std::string> places;
    for (const auto &error : refused.reason())
        places.push_back(error.place);
    CHECK(places == std::vector<std::string>{"/media/6/file", "/steps/0", "/media/5",
                                             "/media/0/file", "/media/1/file", "/media/2/file",
                                             "/media/3/file"});
    CHECK_FALSE(fs::exists(bench / "Demo.lastrivet"));
}

TEST_CASE("A folder where a file should be is told with its record")
{
    const Bench bench;
    fs::create_directories(bench / "in/dir.png");
    const auto refused = bench.makeFrom(
        bench.document(R"("media": [{"id": 1, "kind": "photo", "file": "dir.png"}])"));
    REQUIRE_FALSE(refused);
    CHECK(sentences(refused.reason()) ==
          Said{"f: /media/0/file: file 1 “dir.png”: dir.png is not a file."});
    CHECK_FALSE(fs::exists(bench / "Demo.lastrivet"));
}

TEST_CASE("No file name leads out of the folders or onto the project's own files")
{
    const Bench bench;
    bench.file("secret.txt", "secret");
    bench.file("in/records.db", "a database of somebody else");
    fs::create_symlink(bench / "secret.txt", bench / "in/link.jpg");
    fs::create_directory_symlink(fs::path(".."), bench / "in/up");
    for (const std::string name :
         {"../secret.txt", "photos/../../secret.txt", "/etc/hostname", "link.jpg", "up/secret.txt",
          "photos\\\\..\\\\x.jpg", "photos/", "records.db", "RECORDS.DB-wal", "backups/x",
          ".hidden", "logbook.pdf", "./Logbook.PDF", "lists/people.csv", "photos-of-part.sql"}) {
        const auto refused = bench.makeFrom(bench.document(
            fmt::format(R"("media": [{{"id": 1, "kind": "document", "file": "{}"}}])", name)));
        INFO(name);
        REQUIRE_FALSE(refused);
        CHECK(refused.reason().size() == 1);
        CHECK(refused.reason().front().place == "/media/0/file");
        CHECK_FALSE(fs::exists(bench / "Demo.lastrivet"));
    }
}
