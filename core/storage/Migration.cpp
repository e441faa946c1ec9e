// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Migration.h"

#include "core/base/Sha256.h"
#include "core/base/Tongue.h"
#include "core/storage/Changeset.h"
#include "core/storage/Integrity.h"
#include "core/storage/Journal.h"
#include "core/storage/Opening.h"
#include "core/storage/RecordReader.h"
#include "core/storage/Schema.h"
#include "core/storage/SearchIndex.h"
#include "core/storage/Shape.h"
#include "core/storage/Transaction.h"

#include <fmt/format.h>
#include <functional>
#include <optional>
#include <spdlog/spdlog.h>

namespace lastrivet::storage {

namespace fs = std::filesystem;
using Time = std::chrono::sys_time<std::chrono::milliseconds>;

namespace {

/// Data that the step rewrote becomes a row of the journal.
void note(Database &database, const SchemaStep &step, Blob changeset, Time now)
{
    if (changeset.empty())
        return;
    NewChange change{ChangeKind::Migration,
                     fmt::format("Records brought to schema {}", step.number)};
    change.changeset = std::move(changeset);
    change.change_id = migrationId(step.number);
    Journal(database).append(change, now.time_since_epoch().count());
}

/// `finish` is the last thing inside the step's transaction.
void runStep(Database &database, const SchemaStep &step, Time now,
             const std::function<void()> &finish = {})
{
    // Older damage is no reason to refuse the project: `verify` reports it, and a step that needs
    // whole references fails by itself.
    Transaction transaction(database, danglingRows(database));
    std::optional<ChangeRecording> recording;
    // The first step makes the tables that can be watched from then on.
    if (schemaOf(database) > 0)
        recording.emplace(database);
    database.run(step.statements);
    database.run(fmt::format("PRAGMA user_version={}; PRAGMA application_id={}", step.number,
                             applicationId));
    if (recording)
        note(database, step, recording->changeset(), now);
    if (finish)
        finish();
    transaction.commit();
}

void requireShape(const Database &database, const Database &made)
{
    if (const auto difference = differenceBetween(shapeOf(database), shapeOf(made)))
        throw Fault(Message{"Its tables are not those of schema {0}: {1}.",
                            {std::to_string(schemaOf(made)), nested(*difference)}});
}

bool isCopyOf(Database &database, const fs::path &file)
{
    Database copy(file, Database::Access::ReadOnly, Database::Safety::RollbackJournal);
    return schemaOf(copy) == schemaOf(database) &&
           Journal(copy).newestHash() == Journal(database).newestHash() && damagesOf(copy).empty();
}

/// Where the database is kept as it was. An attempt that failed before has made the copy already.
fs::path keptCopy(Database &database, const ProjectFolder &folder)
{
    const auto file =
        folder.backups() / fmt::format("before-schema-{}-{}.db", schemaOf(database) + 1,
                                       Journal(database).newestHash().substr(0, 8));
    fs::create_directories(folder.backups());
    if (fs::exists(file) && isCopyOf(database, file))
        return file;
    copyDatabase(database, file);
    if (!isCopyOf(database, file))
        throw NotSaved(Message{"The copy {0} is not what was copied.", {file.string()}});
    return file;
}

/// The steps do not maintain the search index.
void makeSearchAnew(Database &database)
{
    SearchIndex(database).rebuild(RecordReader(database.sql()).readAll());
}

void runChecked(Database &database, Time now, std::span<const SchemaStep> steps)
{
    Database made;
    for (const auto &step : steps) {
        if (step.number <= schemaOf(database)) {
            runStep(made, step, now);
            continue;
        }
        const auto finish = [&] {
            runStep(made, step, now);
            requireShape(database, made);
            if (step.number == steps.back().number)
                makeSearchAnew(database);
        };
        runStep(database, step, now, finish);
    }
}

} // namespace

void runSteps(Database &database, std::span<const SchemaStep> steps, Time now)
{
    for (const auto &step : steps) {
        if (step.number > schemaOf(database))
            runStep(database, step, now);
    }
}

void renewSearch(Database &copy)
{
    try {
        Transaction transaction(copy);
        makeSearchAnew(copy);
        transaction.commit();
    } catch (const UnreadableInput &unreadable) {
        // Reading the records reports the same.
        spdlog::debug("the search index stays empty: {}", unreadable.what());
    }
}

void migrate(Database &database, const ProjectFolder &folder, Time now,
             std::span<const SchemaStep> steps)
{
    const int from = schemaOf(database);
    const int to = steps.back().number;
    if (from >= to)
        return;
    Message kept{"no copy of it could be made", {}};
    try {
        withFaults([&] {
            const auto copy = keptCopy(database, folder);
            kept = {"as it was it is kept in {0}", {copy.string()}};
            runChecked(database, now, steps);
        });
    } catch (const Fault &fault) {
        throw NotSaved(Message{"The project could not be brought from schema {0} to {1} ({2}), is "
                               "whole at schema {3}, and {4}.",
                               {std::to_string(from), std::to_string(to), nested(fault.message()),
                                std::to_string(schemaOf(database)), nested(kept)}});
    }
    spdlog::info("brought from schema {} to {}; {}", from, to, english(kept));
}

std::string migrationId(int step)
{
    Sha256 sum;
    sum.add(fmt::format("schema step {}", step));
    return hex(sum.digest()).substr(0, 32);
}

} // namespace lastrivet::storage
