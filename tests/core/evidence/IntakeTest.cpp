// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/Intake.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>
#include <set>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace lastrivet::test;

namespace fs = std::filesystem;
using Outcome = PreparedFile::Outcome;

namespace {

/// A project folder, and beside it a folder that files come from.
struct Bench {
    Bench()
    {
        records.project.time_zone = "America/Toronto";
        fs::create_directories(project());
        fs::create_directories(camera());
    }

    fs::path project() const { return folder / "Project.lastrivet"; }
    fs::path camera() const { return folder / "camera"; }
    Intake intake() const { return {project(), records, *Moment::parse("2026-11-25T18:30")}; }

    IncomingFile file(const std::string &name, std::string_view content) const
    {
        writeText(camera() / name, content);
        IncomingFile incoming;
        incoming.path = camera() / name;
        return incoming;
    }
    IncomingFile picture(std::string_view picture, const std::string &name) const
    {
        return file(name, readText(testPicture(picture)));
    }

    /// Every file below the project folder, relative to it.
    std::set<std::string> files() const
    {
        std::set<std::string> names;
        for (const auto &entry : fs::recursive_directory_iterator(project())) {
            if (entry.is_regular_file())
                names.insert(fs::relative(entry.path(), project()).string());
        }
        return names;
    }

    TemporaryFolder folder;
    Records records;
};

std::string sentence(const PreparedFile &file)
{
    return file.outcome == Outcome::Failed ? english(file.failure) : "taken in";
}

std::string sumByCoreutils(const fs::path &file)
{
    return outputOf("sha256sum < " + file.string()).substr(0, 64);
}

} // namespace

TEST_CASE("A photo lands under a readable name with everything that its row needs")
{
    const Bench bench;
    auto incoming = bench.picture("offset.jpg", "IMG_0001.HEIC");
    incoming.part_name = "Left Aileron";
    incoming.shows = {Shows::Interior};
    incoming.links = {{RecordType::Component, 7}};
    const PreparedFile taken = bench.intake().prepare(incoming);
    REQUIRE(sentence(taken) == "taken in");
    const Media &media = taken.media;
    const std::string sum = sumByCoreutils(incoming.path);
    CHECK(media.file == "photos/2026/2026-07-15_0800_left-aileron_" + sum.substr(0, 6) + ".jpg");
    CHECK(media.sha256 == sum);
    CHECK(sumByCoreutils(bench.project() / media.file) == sum);
    CHECK(media.kind == MediaKind::Photo);
    CHECK(media.bytes == std::int64_t(fs::file_size(incoming.path)));
    CHECK(media.taken_on->text() == "2026-07-15T08:00");
    CHECK(media.imported_on->text() == "2026-11-25T18:30");
    CHECK(media.width == 60); // stored as 81 × 60, to be turned by a quarter
    CHECK(media.height == 81);
    CHECK(media.shows == WordSet{Shows::Interior});
    CHECK(media.links == incoming.links);
    CHECK(bench.files() == std::set{media.file});
}

TEST_CASE("A photo without a time is filed under the day of the intake, and its time stays unknown")
{
    const Bench bench;
    const PreparedFile taken = bench.intake().prepare(bench.picture("plain.png", "a.png"));
    REQUIRE(sentence(taken) == "taken in");
    CHECK_FALSE(taken.media.taken_on);
    CHECK(taken.media.file.starts_with("photos/2026/2026-11-25_"));
    auto told = bench.picture("naive.jpg", "b.jpg");
    told.taken_on = Moment::parse("2024-02-29");
    CHECK(bench.intake().prepare(told).media.file.starts_with("photos/2024/2024-02-29_"));
}

TEST_CASE("A file on record that was lost or damaged is put back when it comes again, and told")
{
    Bench bench;
    const std::string pdf = "%PDF-1.4\n" + std::string(3000, 'x') + "\n%%EOF\n";
    std::int64_t id = 0;
    for (const auto &incoming :
         {bench.picture("plain.png", "a.png"), bench.file("note.pdf", pdf)}) {
        PreparedFile taken = bench.intake().prepare(incoming);
        REQUIRE(sentence(taken) == "taken in");
        taken.media.id = Id<Media>{++id};
        bench.records.put(RecordType::Media, &taken.media);
        const fs::path file = bench.project() / taken.media.file;
        fs::remove_all(file.parent_path());
        const PreparedFile lost = bench.intake().prepare(incoming);
        CHECK(lost.outcome == Outcome::AlreadyThere);
        REQUIRE(fs::exists(file));
        CHECK(sumByCoreutils(file) == taken.media.sha256);
        REQUIRE(lost.put_back);
        CHECK(english(*lost.put_back) ==
              "The file " + taken.media.file + " was missing and is there again.");
        CHECK_FALSE(bench.intake().prepare(incoming).put_back);
        for (const std::string number : {"1", "2"}) {
            writeText(file, "altered " + number);
            const PreparedFile damaged = bench.intake().prepare(incoming);
            CHECK(damaged.outcome == Outcome::AlreadyThere);
            CHECK(sumByCoreutils(file) == taken.media.sha256);
            const std::string kept = "backups/damaged/" + file.stem().string() + "-damaged-" +
                                     number + file.extension().string();
            REQUIRE(fs::exists(bench.project() / kept));
            CHECK(readText(bench.project() / kept) == "altered " + number);
            REQUIRE(damaged.put_back);
            CHECK(english(*damaged.put_back) ==
                  "The file " + taken.media.file +
                      " was damaged and is there again as it was taken in; the damaged one is "
                      "kept as " +
                      kept + ".");
        }
    }
}

TEST_CASE("A damaged file stays beside its place where it cannot be kept among the backups")
{
    Bench bench;
    const auto incoming = bench.picture("plain.png", "a.png");
    PreparedFile taken = bench.intake().prepare(incoming);
    REQUIRE(sentence(taken) == "taken in");
    taken.media.id = Id<Media>{1};
    bench.records.put(RecordType::Media, &taken.media);
    const fs::path file = bench.project() / taken.media.file;
    writeText(file, "altered");
    fs::create_directories(bench.project() / "backups");
    // On another disk, or as here on none that takes files.
    fs::create_directory_symlink("/proc/self", bench.project() / "backups/damaged");
    const PreparedFile again = bench.intake().prepare(incoming);
    CHECK(sumByCoreutils(file) == taken.media.sha256);
    const fs::path kept =
        file.parent_path() / (file.stem().string() + "-damaged-1" + file.extension().string());
    REQUIRE(fs::exists(kept));
    CHECK(readText(kept) == "altered");
    REQUIRE(again.put_back);
    CHECK(english(*again.put_back).find("kept as photos/2026/") != std::string::npos);
}

TEST_CASE("Nothing is taken into a folder that leads out of the project")
{
    const Bench bench;
    fs::create_directories(bench.folder / "elsewhere");
    fs::create_directory_symlink(bench.folder / "elsewhere", bench.project() / "photos");
    const PreparedFile photo = bench.intake().prepare(bench.picture("plain.png", "a.png"));
    CHECK(sentence(photo) == "The folder photos leads out of the project, where its files are not "
                             "looked for; nothing is taken in there.");
    CHECK(fs::is_empty(bench.folder / "elsewhere"));
    CHECK(sentence(bench.intake().prepare(bench.file(
              "a.pdf", "%PDF-1.4\n" + std::string(3000, 'x') + "\n%%EOF\n"))) == "taken in");
}

TEST_CASE("A HEIC is taken in with the size and time that its camera wrote")
{
    const Bench bench;
    writeHeic(bench.camera() / "phone.jpg", 128, 96);
    const PreparedFile taken = bench.intake().prepare({bench.camera() / "phone.jpg"});
    REQUIRE(sentence(taken) == "taken in");
    CHECK(taken.media.file.starts_with("photos/2026/2026-05-02_0941_"));
    CHECK(taken.media.file.ends_with(".heic"));
    CHECK(taken.media.width == 128);
    CHECK(taken.media.height == 96);
}

TEST_CASE("Videos and papers are taken in as they are")
{
    const Bench bench;
    const std::string pdf = "%PDF-1.4\n" + std::string(3'000'000, 'x') + "\n%%EOF\n";
    const PreparedFile paper = bench.intake().prepare(bench.file("Release Note 47.pdf", pdf));
    REQUIRE(sentence(paper) == "taken in");
    CHECK(paper.media.kind == MediaKind::Document);
    CHECK(paper.media.caption == "Release Note 47");
    CHECK(paper.media.file.starts_with("documents/2026-11-25_release-note-47_"));
    CHECK(readText(bench.project() / paper.media.file) == pdf);
    CHECK(paper.media.sha256 == sumByCoreutils(bench.project() / paper.media.file));
    using namespace std::string_literals;
    const std::string film = "\0\0\0\x10"s + "ftypisom" + "\0\0\0\0"s + "\0\0\0\x0c"s + "mdatFILM";
    const PreparedFile video = bench.intake().prepare(bench.file("clip.mov", film));
    REQUIRE(sentence(video) == "taken in");
    CHECK(video.media.kind == MediaKind::Video);
    CHECK(video.media.file.ends_with(".mp4"));
    CHECK_FALSE(video.media.width);
    const std::string cut = film.substr(0, film.size() - 1);
    CHECK(sentence(bench.intake().prepare(bench.file("cut.mov", cut))) ==
          "cut.mov is cut short: its end is missing. Copy it again.");
}

TEST_CASE("What cannot be taken in costs one sentence and leaves nothing behind")
{
    const Bench bench;
    Intake intake = bench.intake();
    const auto told = [&](const IncomingFile &file) { return sentence(intake.prepare(file)); };
    CHECK(told(bench.file("empty.jpg", "")) == "empty.jpg is empty.");
    CHECK(told(bench.file("list.jpg", "bolts, 4")) ==
          "list.jpg is not a photo (JPEG, PNG, HEIC), a video or a PDF.");
    const std::string jpeg = readText(testPicture("plain.jpg"));
    CHECK(told(bench.file("cut.jpg", jpeg.substr(0, jpeg.size() / 2))) ==
          "cut.jpg is cut short: its end is missing. Copy it from the camera again.");
    CHECK(told(bench.picture("bomb.png", "bomb.png")) ==
          "bomb.png claims 60000 × 60000 pixels, more than can be shown.");
    CHECK(told({bench.camera() / "gone.jpg"}) == "gone.jpg could not be read: it is not there.");
    CHECK(told({bench.camera()}) == "camera is not a file.");
    ::mkfifo((bench.camera() / "pipe.jpg").c_str(), 0600);
    CHECK(told({bench.camera() / "pipe.jpg"}) == "pipe.jpg is not a file.");
    std::stop_source stop;
    stop.request_stop();
    CHECK(sentence(intake.prepare(bench.file("a.pdf", "%PDF-1.4 %%EOF"), stop.get_token())) ==
          "a.pdf was not taken in: stopped.");
    CHECK(bench.files().empty());
}

TEST_CASE("A hostile name or part never leads out of the project folder")
{
    const Bench bench;
    auto file = bench.picture("naive.jpg", "'; rm -rf \"x\"\n.jpg");
    file.part_name = "../../../tmp/\n\"evil\"";
    const PreparedFile taken = bench.intake().prepare(file);
    REQUIRE(sentence(taken) == "taken in");
    CHECK(taken.media.file ==
          "photos/2026/2026-03-14_1523_tmp-evil_" + taken.media.sha256.substr(0, 6) + ".jpg");
    CHECK(bench.files() == std::set{taken.media.file});
}

TEST_CASE("The same content is copied once, whatever it is called")
{
    Bench bench;
    Intake intake = bench.intake();
    CHECK(intake.prepare(bench.picture("naive.jpg", "a.jpg")).outcome == Outcome::Copied);
    const PreparedFile again = intake.prepare(bench.picture("naive.jpg", "b.jpg"));
    CHECK(again.outcome == Outcome::AlreadyThere);
    CHECK(again.media.sha256 == sumByCoreutils(testPicture("naive.jpg")));
    CHECK(bench.files().size() == 1);

    Media known;
    known.id = Id<Media>{1};
    known.sha256 = sumByCoreutils(testPicture("zero.jpg"));
    bench.records.media.put(known);
    CHECK(bench.intake().prepare(bench.picture("zero.jpg", "c.jpg")).outcome ==
          Outcome::AlreadyThere);
    known.withdrawn_on = Moment::parse("2026-01-01");
    bench.records.media.put(known);
    CHECK(bench.intake().prepare(bench.picture("zero.jpg", "c.jpg")).outcome == Outcome::Copied);
}

TEST_CASE("A file that failed to arrive does not make its twin a duplicate")
{
    const Bench bench;
    writeText(bench.project() / "photos", "a file where the folder should be");
    Intake intake = bench.intake();
    CHECK(intake.prepare(bench.picture("naive.jpg", "a.jpg")).outcome == Outcome::Failed);
    fs::remove(bench.project() / "photos");
    CHECK(intake.prepare(bench.picture("naive.jpg", "b.jpg")).outcome == Outcome::Copied);
}

TEST_CASE(
    "A name that another file has gets more digits, and an undone intake's file is used again")
{
    const Bench bench;
    const PreparedFile first = bench.intake().prepare(bench.picture("naive.jpg", "a.jpg"));
    const PreparedFile again = bench.intake().prepare(bench.picture("naive.jpg", "a.jpg"));
    CHECK(again.outcome == Outcome::Copied);
    CHECK(again.media.file == first.media.file);
    CHECK(first.made_file);
    CHECK_FALSE(again.made_file);
    CHECK(bench.files().size() == 1);

    writeText(bench.project() / first.media.file, "another photo");
    const PreparedFile clash = bench.intake().prepare(bench.picture("naive.jpg", "a.jpg"));
    CHECK(clash.media.file ==
          "photos/2026/2026-03-14_1523_" + first.media.sha256.substr(0, 10) + ".jpg");
    CHECK(readText(bench.project() / first.media.file) == "another photo");
    CHECK(bench.files().size() == 2);
}

TEST_CASE("What an interrupted intake left is swept away, and nothing else")
{
    const Bench bench;
    fs::create_directories(bench.project() / "photos/2026");
    fs::create_directories(bench.project() / "documents");
    writeText(bench.project() / "photos/2026/.tmp-1-1", "half a photo");
    writeText(bench.project() / "documents/.tmp-99-2", "half a paper");
    writeText(bench.project() / "photos/2026/tmp-note.txt", "somebody's own");
    bench.intake();
    CHECK(bench.files() == std::set<std::string>{"photos/2026/tmp-note.txt"});
}

TEST_CASE("A disk that takes no more costs one sentence a file and leaves no part of it")
{
    const Bench bench;
    const IncomingFile file = bench.picture("large.jpg", "a.jpg");
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    ::getrlimit(RLIMIT_FSIZE, &before);
    const rlimit small{4096, before.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &small);
    const PreparedFile taken = bench.intake().prepare(file);
    ::setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, handler);
    CHECK(sentence(taken) == "a.jpg could not be saved: the disk takes no file so large.");
    CHECK(bench.files().empty());
}
