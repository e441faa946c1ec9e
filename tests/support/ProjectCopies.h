// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/TemporaryFolder.h"
#include "core/project/Project.h"
#include "tests/support/FakeClock.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace lastrivet::test {

/// A copy of a project on another computer, with a clock of its own.
class ProjectCopy {
public:
    /// Makes a new project.
    explicit ProjectCopy(std::string_view who);
    /// Copies the folder of another, which is closed meanwhile.
    ProjectCopy(ProjectCopy &other, std::string_view who);

    Project &operator*() { return *m_project; }
    Project *operator->() { return m_project.get(); }
    std::filesystem::path folder() const { return m_temporary.path() / "Test.lastrivet"; }
    FakeClock &clock() { return m_clock; }

    /// Fails the test when it is refused.
    MergeReport merge(ProjectCopy &other);
    /// Fails the test when the change is refused.
    void change(std::string_view label, const Project::Body &body);

private:
    void open();

    TemporaryFolder m_temporary;
    FakeClock m_clock;
    std::string m_who;
    std::unique_ptr<Project> m_project;
};

} // namespace lastrivet::test
