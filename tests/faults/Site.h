// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/TemporaryFolder.h"
#include "core/project/Project.h"
#include "tests/faults/Supplies.h"
#include "tests/support/FakeClock.h"

#include <filesystem>
#include <memory>
#include <string>

namespace lastrivet::faults {

/// A folder with a project in it and room beside it; a part and a person are on record.
class Site {
public:
    Site();
    /// In a folder that the caller removes.
    explicit Site(std::filesystem::path root);

    /// What faults are made in: the project and what is written beside it.
    const std::filesystem::path &root() const { return m_root; }
    std::filesystem::path folder() const { return root() / projectName; }
    Project &project() { return *m_project; }
    test::FakeClock &clock() { return m_clock; }
    Supplies &supplies() { return m_supplies; }
    const Supplies &supplies() const { return m_supplies; }
    Project::Options options() const { return {&m_clock, "Robin", false}; }

    void close() { m_project.reset(); }
    void open() { m_project = Project::open(folder(), options()); }

    static constexpr std::string_view projectName = "Bench.lastrivet";

private:
    TemporaryFolder m_temporary;
    TemporaryFolder m_outside;
    std::filesystem::path m_root;
    test::FakeClock m_clock;
    Supplies m_supplies{m_outside.path(), 1};
    std::unique_ptr<Project> m_project;
};

/// Half-written files go when a project is opened for writing after a crash; a backup that was
/// broken off keeps them until the next one.
enum class Leftovers { Gone, MayBeThere };

/// What `verify` finds in a project that a break may not leave behind: everything but files that
/// no record names. Empty when all is well.
std::string damageIn(const std::filesystem::path &project, Leftovers leftovers = Leftovers::Gone);

/// Adds a part: a project that came through must be able to go on.
void addPart(Project &project);

} // namespace lastrivet::faults
