// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/HostileProject.h"

#include "core/base/Error.h"
#include "core/exchange/DocumentWriter.h"
#include "core/hours/Hours.h"
#include "core/project/Project.h"
#include "core/readiness/Readiness.h"
#include "core/verify/Verification.h"
#include "tests/fuzz/Targets.h"
#include "tests/support/FakeClock.h"
#include "tests/support/WingProject.h"

#include <SQLiteCpp/Database.h>
#include <spdlog/spdlog.h>

#include <fstream>
#include <iostream>
#include <iterator>
#include <sstream>

namespace lastrivet::fuzz {

namespace {

namespace fs = std::filesystem;

const test::FakeClock &standingClock()
{
    static const test::FakeClock clock;
    return clock;
}

std::vector<std::uint8_t> bytesOf(const fs::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

/// All of the records in one change, which no rule forbids.
void fill(Project &project, const Records &records)
{
    const auto filled = project.change("Filled", [&](Edit &edit) {
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
            const auto &description = describe(RecordType(i));
            const AnyTable &table = records.table(RecordType(i));
            for (const void *row = table.nextAny(0); row;
                 row = table.nextAny(idOf(description, row)))
                edit.putAny(description.type, row);
        }
    });
    if (!filled)
        std::cerr << english(filled.reason()) << '\n';
    promised(bool(filled));
}

std::vector<std::uint8_t> makeSoundDatabase()
{
    spdlog::set_level(spdlog::level::off);
    const TemporaryFolder folder;
    const test::WingProject wing;
    ProjectFacts facts = wing.records.project;
    facts.builder_id = {};
    {
        const auto project =
            Project::create(folder / "P", facts, wing.profile, {.clock = &standingClock()});
        fill(*project, wing.records);
    }
    // Small pages make a small file, and more of it matters.
    SQLite::Database whole((folder / "P/records.db").string(), SQLite::OPEN_READWRITE);
    whole.exec("PRAGMA page_size=512; VACUUM INTO '" + (folder / "small.db").string() + "'");
    return bytesOf(folder / "small.db");
}

/// What is on record, told in every way that a look at a strange project tells it.
void read(const Project &project)
{
    std::ostringstream text;
    const Records &records = *project.records();
    exchange::writeDocument(records, text);
    readiness::readiness(records, project.profile(), project.now());
    hours::totals(records);
    project.search("rib");
    for (const JournalEntry &entry : project.journal())
        project.changesOf(entry.seq);
}

void change(Project &project)
{
    // Damaged records may well refuse both; all that is asked is that it ends in words.
    (void)project.change("Helper added", [](Edit &edit) {
        edit.put(Person{.name = "Hugo Helper", .roles = {Role::Helper}});
    });
    (void)project.undo();
}

template <class Body> void orComplaint(Body &&body)
{
    try {
        body();
    } catch (const Fault &fault) {
        promised(*fault.what() != 0);
    }
}

} // namespace

const std::vector<std::uint8_t> &HostileProject::soundDatabase()
{
    static const auto bytes = makeSoundDatabase();
    return bytes;
}

HostileProject::HostileProject()
{
    fs::create_directory(m_folder / "P");
    writeDatabase(soundDatabase());
}

void HostileProject::writeDatabase(const std::vector<std::uint8_t> &bytes) const
{
    std::ofstream stream(database(), std::ios::binary);
    stream.write(reinterpret_cast<const char *>(bytes.data()), std::streamsize(bytes.size()));
}

void HostileProject::use() const
{
    const fs::path folder = m_folder / "P";
    const auto opened = [&](bool readOnly) {
        return Project::open(folder, {.clock = &standingClock(), .readOnly = readOnly});
    };
    orComplaint([&] { read(*opened(true)); });
    orComplaint([&] { verify(folder); });
    orComplaint([&] { change(*opened(false)); });
}

} // namespace lastrivet::fuzz
