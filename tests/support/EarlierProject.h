// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/TemporaryFolder.h"
#include "core/project/JournalEntry.h"
#include "core/storage/Database.h"
#include "core/storage/ProjectFolder.h"
#include "core/storage/SchemaSteps.h"

#include <filesystem>
#include <string>
#include <vector>

namespace lastrivet::test {

/// A project of a program that never was: its parts have no `withdrawn_why` yet, which a step of
/// its own adds. So today's program can open what it becomes.
class EarlierProject {
public:
    EarlierProject();

    const storage::ProjectFolder &folder() const { return m_folder; }
    /// Makes a journalled change by SQL.
    void change(const std::string &label, const std::string &statements,
                ChangeKind kind = ChangeKind::Change);
    /// Runs SQL behind the journal's back.
    void tamper(const std::string &statements);

    /// The steps that it went through, and one more that adds the column, with `more` behind.
    std::vector<storage::SchemaStep> stepsWith(const std::string &more = {});
    static int lastSchema();
    /// Migrates it, and lets it pass for one of today's schema.
    void migrate(const std::string &more = {}, std::int64_t now = 0);

private:
    storage::Database open() const;

    lastrivet::TemporaryFolder m_temporary;
    storage::ProjectFolder m_folder{m_temporary.path() / "Old.lastrivet"};
    std::string m_first;
    std::string m_last;
};

} // namespace lastrivet::test
