// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Changeset.h"
#include "core/base/Error.h"
#include "core/storage/JournalChanges.h"
#include "core/storage/Migration.h"
#include "core/storage/RecordWriter.h"
#include "core/storage/Schema.h"
#include "core/storage/Transaction.h"
#include "tests/fuzz/Targets.h"
#include "tests/support/WingProject.h"

namespace lastrivet::fuzz {

namespace {

struct Filled {
    Filled()
    {
        storage::runSteps(database);
        database.checkReferences(false);
        storage::RecordWriter writer(database.sql());
        const test::WingProject wing;
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
            const auto &description = describe(RecordType(i));
            const AnyTable &table = wing.records.table(RecordType(i));
            for (const void *row = table.nextAny(0); row;
                 row = table.nextAny(idOf(description, row)))
                writer.write(RecordType(i), nullptr, row);
        }
    }

    storage::Database database;
};

} // namespace

/// The bytes of a journal row: looked at, turned round, applied and taken back.
void changeset(Input input)
{
    static Filled filled;
    try {
        storage::withFaults([&] {
            const auto touched = storage::touchedBy(input);
            // What merges left to decide touches the project, and is told in no field of it.
            promised(storage::journalChanges(input).size() <= touched.size());
            storage::inverted(input);
            const storage::Transaction undone(filled.database);
            storage::apply(filled.database, input);
        });
    } catch (const Fault &) {
        // Said in a sentence.
    }
}

} // namespace lastrivet::fuzz
