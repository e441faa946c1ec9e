// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

namespace lastrivet::test {

namespace {

std::vector<std::string> sentences(const std::vector<Violation> &violations)
{
    std::vector<std::string> all;
    for (const auto &violation : violations)
        all.push_back(english(violation.message));
    return all;
}

} // namespace

std::vector<std::string> wrongs(const ProjectBuilder &project)
{
    return sentences(violations(project.records, project.profile));
}

std::vector<std::string> wrongs(const ProjectBuilder &project, RecordRef touched)
{
    return sentences(violations(project.records, project.profile, {&touched, 1}));
}

} // namespace lastrivet::test
