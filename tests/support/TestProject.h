// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/storage/Opening.h"
#include "tests/support/FakeClock.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace lastrivet::test {

/// A project in a folder of its own, which goes when it goes.
class TestProject {
public:
    TestProject();

    Project &operator*() { return *m_project; }
    Project *operator->() { return m_project.get(); }
    const std::filesystem::path &folder() const { return m_folder; }
    std::filesystem::path database() const { return m_folder / "records.db"; }
    FakeClock &clock() { return m_clock; }
    Project::Options options() const;

    void close() { m_project.reset(); }
    /// Closes it and opens it again.
    void reopen();
    /// Another program's look at it.
    std::unique_ptr<Project> openAgain(bool readOnly = false) const;

    Id<Person> person(std::string_view name, ChangeKind kind = ChangeKind::Change);
    Id<Component> part(std::string_view name);
    /// Fails the test when the change is refused.
    ChangeNotice change(std::string_view label, const Project::Body &body,
                        ChangeKind kind = ChangeKind::Change);

    /// Runs SQL behind the project's back, without its protections.
    void tamper(const std::string &statements) const;

private:
    lastrivet::TemporaryFolder m_temporary;
    std::filesystem::path m_folder = m_temporary.path() / "Test.lastrivet";
    FakeClock m_clock;
    std::unique_ptr<Project> m_project;
};

} // namespace lastrivet::test
