// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ProjectCopies.h"

#include "core/profiles/ProfileLibrary.h"

#include <catch2/catch.hpp>

namespace lastrivet::test {

ProjectCopy::ProjectCopy(std::string_view who)
    : m_who(who)
{
    ProjectFacts facts;
    facts.name = "Test";
    m_project = Project::create(folder(), facts, ProfileLibrary::standard().profile("plain"),
                                {&m_clock, m_who, false});
}

ProjectCopy::ProjectCopy(ProjectCopy &other, std::string_view who)
    : m_clock(other.m_clock)
    , m_who(who)
{
    other.m_project.reset();
    std::filesystem::copy(other.folder(), folder(), std::filesystem::copy_options::recursive);
    other.open();
    open();
}

void ProjectCopy::open()
{
    m_project = Project::open(folder(), {&m_clock, m_who, false});
}

MergeReport ProjectCopy::merge(ProjectCopy &other)
{
    auto report = m_project->merge(other.folder());
    if (!report)
        FAIL("refused: " << english(report.reason()));
    return *report;
}

void ProjectCopy::change(std::string_view label, const Project::Body &body)
{
    const auto result = m_project->change(label, body);
    if (!result)
        FAIL("refused: " << english(result.reason()));
}

} // namespace lastrivet::test
