// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/IntakeStore.h"

#include "core/project/Project.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace lastrivet::test;

namespace fs = std::filesystem;

namespace {

/// Photos that differ by what stands behind the end of the picture.
std::vector<IncomingFile> photos(const fs::path &folder, int count, Id<Component> part)
{
    const std::string picture = readText(testPicture("naive.jpg"));
    std::vector<IncomingFile> files;
    for (int i = 0; i < count; ++i) {
        const fs::path file = folder / (std::to_string(i) + ".jpg");
        writeText(file, picture + std::to_string(i));
        files.push_back({file, "Left wing", {{RecordType::Component, part.value()}}});
    }
    return files;
}

std::size_t filesIn(const fs::path &folder)
{
    std::size_t count = 0;
    if (fs::exists(folder)) {
        for (const auto &entry : fs::recursive_directory_iterator(folder))
            count += entry.is_regular_file() ? 1 : 0;
    }
    return count;
}

std::vector<std::string> lastLabels(const Project &project, std::size_t count)
{
    std::vector<std::string> labels;
    for (const JournalEntry &entry : project.journal())
        labels.push_back(entry.label);
    return {labels.end() - std::ptrdiff_t(count), labels.end()};
}

} // namespace

TEST_CASE("Photos become rows, fifty to a change, each change named by what it took in")
{
    TestProject project;
    const TemporaryFolder camera;
    const Id<Component> wing = project.part("Left wing");
    const auto report = takeIn(*project, photos(camera.path(), 51, wing));
    CHECK(report.taken.size() == 51);
    CHECK(report.failures.empty());
    CHECK(lastLabels(*project, 2) ==
          std::vector<std::string>{"50 photos taken in", "1 photo taken in"});
    project.reopen();
    REQUIRE(project->records()->media.size() == 51);
    const Media &media = *project->records()->media.begin();
    CHECK(media.links == std::vector<Media::Link>{{RecordType::Component, wing.value()}});
    CHECK(media.taken_on->text() == "2026-03-14T15:23");
    CHECK(outputOf("sha256sum < " + (project.folder() / media.file).string()).substr(0, 64) ==
          media.sha256);
}

TEST_CASE("A photo that is there already gets the new link and nothing is copied")
{
    TestProject project;
    const TemporaryFolder camera;
    const Id<Component> wing = project.part("Left wing");
    const Id<Component> flap = project.part("Left flap");
    const auto first = takeIn(*project, photos(camera.path(), 1, wing));
    auto again = photos(camera.path(), 1, flap);
    again.front().shows = {Shows::Interior};
    again.push_back(again.front());
    const auto second = takeIn(*project, again);
    CHECK(second.taken.empty());
    CHECK(second.already_there == std::vector{first.taken.front(), first.taken.front()});
    const Media &media = *project->records()->media.begin();
    CHECK(project->records()->media.size() == 1);
    CHECK(media.links == std::vector<Media::Link>{{RecordType::Component, wing.value()},
                                                  {RecordType::Component, flap.value()}});
    CHECK(media.shows == WordSet{Shows::Interior});
    CHECK(filesIn(project.folder() / "photos") == 1);

    const std::size_t changes = project->journal().size();
    takeIn(*project, again);
    CHECK(project->journal().size() == changes);
}

TEST_CASE("Twins offered together become one photo with the links of both")
{
    TestProject project;
    const TemporaryFolder camera;
    auto files = photos(camera.path(), 1, project.part("Left wing"));
    files.push_back(files.front());
    files.back().links = {{RecordType::Component, project.part("Left flap").value()}};
    const auto report = takeIn(*project, files, 2);
    CHECK(report.taken.size() == 1);
    CHECK(report.already_there == report.taken);
    CHECK(project->records()->media.begin()->links.size() == 2);
}

TEST_CASE("When the project refuses a batch, its copies go and every file is told")
{
    TestProject project;
    const TemporaryFolder camera;
    const auto report = takeIn(*project, photos(camera.path(), 3, Id<Component>{999}));
    CHECK(report.taken.empty());
    REQUIRE(report.failures.size() == 3);
    CHECK(english(report.failures.front().why).starts_with("0.jpg was not taken in. "));
    CHECK(project->records()->media.isEmpty());
    CHECK(filesIn(project.folder() / "photos") == 0);
}

TEST_CASE("An intake that was undone can be made again with the files it left")
{
    TestProject project;
    const TemporaryFolder camera;
    const auto files = photos(camera.path(), 2, project.part("Left wing"));
    takeIn(*project, files);
    CHECK(project->undoLabel() == "2 photos taken in");
    REQUIRE(project->undo());
    CHECK(project->records()->media.isEmpty());
    CHECK(filesIn(project.folder() / "photos") == 2);
    CHECK(takeIn(*project, files).taken.size() == 2);
    CHECK(filesIn(project.folder() / "photos") == 2);
}

TEST_CASE("A watched folder's photos are no change that undo takes back")
{
    TestProject project;
    const TemporaryFolder camera;
    const auto files = photos(camera.path(), 1, project.part("Left wing"));
    const auto before = project->undoLabel();
    takeIn(*project, files, 0, {}, {}, ChangeKind::Automatic);
    CHECK(project->records()->media.size() == 1);
    CHECK(project->journal().back().kind == ChangeKind::Automatic);
    CHECK(project->undoLabel() == before);
}

TEST_CASE("Broken files among good ones are told, and the good ones are taken in")
{
    TestProject project;
    const TemporaryFolder camera;
    auto files = photos(camera.path(), 3, project.part("Left wing"));
    writeText(files[1].path, "no picture");
    const auto report = takeIn(*project, files);
    CHECK(report.taken.size() == 2);
    REQUIRE(report.failures.size() == 1);
    CHECK(report.failures.front().source == files[1].path);
}

TEST_CASE("A project that cannot be written is told before anything is copied")
{
    TestProject project;
    const TemporaryFolder camera;
    const auto files = photos(camera.path(), 1, project.part("Left wing"));
    const auto reader = project.openAgain(true);
    CHECK_THROWS_AS(takeIn(*reader, files), NotWritable);
    CHECK(filesIn(project.folder() / "photos") == 0);
}

TEST_CASE("Of twins the first one offered stands for the copy, whichever worker was quicker")
{
    TestProject project;
    PreparedFile slow{"one.jpg", PreparedFile::Outcome::AlreadyThere, {}, {}, false};
    slow.media.sha256 = std::string(64, 'a');
    slow.media.caption = "The spar";
    PreparedFile quick{"two.jpg", PreparedFile::Outcome::Copied, slow.media, {}, true};
    quick.media.caption = "Another word for it";
    quick.media.file = "photos/2026/2026-11/spar-aaaaaa.jpg";
    const auto report = store(*project, {slow, quick});
    CHECK(report.failures.empty());
    CHECK(report.taken.size() == 1);
    CHECK(report.already_there == report.taken);
    const Media &media = *project->records()->media.begin();
    CHECK(media.file == quick.media.file);
    CHECK(media.caption == slow.media.caption);
}

TEST_CASE("A copy that another intake found in its place and put on record first stays")
{
    TestProject project;
    const TemporaryFolder camera;
    const auto files = photos(camera.path(), 1, project.part("Left wing"));
    // The folder is watched: its copy is made, and waits for its row.
    Intake watching(project.folder(), *project->records(), project->now());
    const PreparedFile waiting = watching.prepare(files.front());
    REQUIRE(waiting.made_file);
    // Meanwhile somebody chooses the same picture in a form.
    const auto taken = takeIn(*project, files).taken;
    REQUIRE(taken.size() == 1);
    REQUIRE(project->records()->find(taken.front())->file == waiting.media.file);
    CHECK(store(*project, {waiting}).already_there == taken);
    CHECK(filesIn(project.folder() / "photos") == 1);
}

TEST_CASE("Who gives up takes no copy along that a record names by now, a withdrawn one neither")
{
    TestProject project;
    const TemporaryFolder camera;
    const auto files = photos(camera.path(), 2, project.part("Left wing"));
    Intake cancelled(project.folder(), *project->records(), project->now());
    const PreparedFile first = cancelled.prepare(files[0]);
    const PreparedFile second = cancelled.prepare(files[1]);
    REQUIRE(first.made_file);
    REQUIRE(second.made_file);
    const auto taken = takeIn(*project, {files[0]}).taken;
    REQUIRE(taken.size() == 1);
    project.change("Withdrawn", [&](Edit &edit) { edit.withdraw(taken.front(), "Out of focus."); });
    discard(project.folder(), {first, second});
    CHECK(fs::exists(project.folder() / first.media.file));
    CHECK_FALSE(fs::exists(project.folder() / second.media.file));
}

TEST_CASE("Of two who take the same file in at a time, one may give up and the other has it")
{
    TestProject project;
    const TemporaryFolder camera;
    const auto files = photos(camera.path(), 1, project.part("Left wing"));
    Intake one(project.folder(), *project->records(), project->now());
    Intake other(project.folder(), *project->records(), project->now());
    const PreparedFile made = one.prepare(files.front());
    const PreparedFile found = other.prepare(files.front());
    REQUIRE(made.made_file);
    REQUIRE_FALSE(found.made_file);
    REQUIRE(found.media.file == made.media.file);
    discard(project.folder(), {made});
    CHECK(store(*project, {found}).taken.size() == 1);
    CHECK(fs::exists(project.folder() / found.media.file));
}

TEST_CASE("A picture and what is done with it are one change, and one step of undo")
{
    TestProject project;
    const TemporaryFolder camera;
    const Id<Component> wing = project.part("Left wing");
    auto files = photos(camera.path(), 2, wing);
    files.push_back(files.front());
    const CopiedFiles copied(*project, files);
    REQUIRE_FALSE(copied.isEmpty());
    CHECK(copied.failures().empty());
    CHECK(project->records()->media.isEmpty());
    const std::size_t rows = project->journal().size();
    std::vector<Id<Media>> put;
    project.change("Painted", [&](Edit &edit) {
        put = copied.put(edit);
        edit.update(wing, [](Component &part) { part.note = "painted"; });
    });
    CHECK(put.size() == 2);
    CHECK(project->records()->media.size() == 2);
    CHECK(project->journal().size() == rows + 1);
    REQUIRE(project->undo());
    CHECK(project->records()->media.isEmpty());
    CHECK(project->records()->find(wing)->note.empty());
}

TEST_CASE("Copies of a change that was refused are removed, and those that are known get the link")
{
    TestProject project;
    const TemporaryFolder camera;
    const Id<Component> wing = project.part("Left wing");
    {
        const CopiedFiles copied(*project, photos(camera.path(), 2, Id<Component>{999}));
        CHECK_FALSE(project->change("Refused", [&](Edit &edit) { copied.put(edit); }));
        copied.discard();
    }
    CHECK(filesIn(project.folder() / "photos") == 0);
    auto files = photos(camera.path(), 1, wing);
    const auto taken = takeIn(*project, files).taken;
    files.front().shows = {Shows::Interior};
    const CopiedFiles again(*project, files);
    project.change("Again", [&](Edit &edit) { CHECK(again.put(edit) == taken); });
    CHECK(project->records()->find(taken.front())->shows == WordSet{Shows::Interior});
    CHECK(filesIn(project.folder() / "photos") == 1);
}

TEST_CASE("A file that cannot be copied is told, and leaves nothing to put on record")
{
    TestProject project;
    const TemporaryFolder camera;
    writeText(camera / "no.jpg", "no picture");
    IncomingFile file;
    file.path = camera / "no.jpg";
    const CopiedFiles copied(*project, {file});
    CHECK(copied.isEmpty());
    CHECK(copied.failures().size() == 1);
}
