// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/IntakeRun.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace lastrivet::test;

namespace fs = std::filesystem;

namespace {

/// Files that differ by what stands behind the end of the picture; the fourth is none.
std::vector<IncomingFile> manyFiles(const fs::path &folder, int count)
{
    const std::string picture = readText(testPicture("naive.jpg"));
    std::vector<IncomingFile> files;
    for (int i = 0; i < count; ++i) {
        const fs::path file = folder / (std::to_string(i) + ".jpg");
        writeText(file, i == 3 ? std::string("no picture") : picture + std::to_string(i));
        files.push_back({file});
    }
    return files;
}

struct Run {
    std::vector<std::size_t> batches;
    std::vector<fs::path> sources;
    std::size_t failures = 0;
    std::vector<IntakeProgress> progress;

    IntakeListener listener()
    {
        return {[this](const IntakeProgress &now) { progress.push_back(now); },
                [this](const Batch &batch) {
                    batches.push_back(batch.size());
                    for (const PreparedFile &file : batch) {
                        sources.push_back(file.source);
                        failures += file.outcome == PreparedFile::Outcome::Failed;
                    }
                }};
    }
};

} // namespace

TEST_CASE("Files come in batches of at most fifty, in their order, with any number of workers")
{
    for (const unsigned workers : {0u, 3u}) {
        INFO(workers << " workers");
        const TemporaryFolder folder;
        const auto files = manyFiles(folder.path(), 120);
        Intake intake(folder.path(), Records{}, *Moment::parse("2026-11-25"));
        Run run;
        prepareAll(intake, files, workers, run.listener());
        CHECK(run.batches == std::vector<std::size_t>{50, 50, 20});
        CHECK(run.failures == 1);
        REQUIRE(run.sources.size() == files.size());
        for (std::size_t i = 0; i < files.size(); ++i)
            CHECK(run.sources[i] == files[i].path);
        REQUIRE(run.progress.size() == 120);
        CHECK(run.progress.back().files_done == 120);
        CHECK(run.progress.back().bytes_done == run.progress.back().bytes_in_all);
        CHECK(run.progress[10].bytes_done > run.progress[9].bytes_done);
    }
}

TEST_CASE("After a stop the files that are whole are delivered and no more are begun")
{
    const TemporaryFolder folder;
    const auto files = manyFiles(folder.path(), 120);
    Intake intake(folder.path(), Records{}, *Moment::parse("2026-11-25"));
    std::stop_source stop;
    Run run;
    IntakeListener listener = run.listener();
    listener.progress = [&](const IntakeProgress &now) {
        if (now.files_done == 60)
            stop.request_stop();
    };
    prepareAll(intake, files, 0, listener, stop.get_token());
    CHECK(run.batches == std::vector<std::size_t>{50, 10});
}

TEST_CASE("When the source folder goes away midway, the rest costs a sentence each")
{
    const TemporaryFolder folder;
    const TemporaryFolder camera;
    const auto files = manyFiles(camera.path(), 60);
    Intake intake(folder.path(), Records{}, *Moment::parse("2026-11-25"));
    Run run;
    IntakeListener listener = run.listener();
    listener.progress = [&](const IntakeProgress &now) {
        if (now.files_done == 20)
            fs::remove_all(camera.path());
    };
    prepareAll(intake, files, 0, listener);
    CHECK(run.sources.size() == 60);
    CHECK(run.failures == 41);
}

TEST_CASE("Twins among the files are copied once, however many workers there are")
{
    const TemporaryFolder folder;
    std::vector<IncomingFile> files(40, IncomingFile{testPicture("naive.jpg")});
    Intake intake(folder.path(), Records{}, *Moment::parse("2026-11-25"));
    int copied = 0;
    int known = 0;
    prepareAll(intake, files, 4, {{}, [&](const Batch &batch) {
                                      for (const PreparedFile &file : batch) {
                                          copied += file.outcome == PreparedFile::Outcome::Copied;
                                          known +=
                                              file.outcome == PreparedFile::Outcome::AlreadyThere;
                                      }
                                  }});
    CHECK(copied == 1);
    CHECK(known == 39);
}
