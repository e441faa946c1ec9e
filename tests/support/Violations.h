// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/invariants/Invariants.h"
#include "tests/support/ProjectBuilder.h"

#include <string>
#include <vector>

namespace lastrivet::test {

/// What is wrong with the whole project, as English sentences.
std::vector<std::string> wrongs(const ProjectBuilder &project);

/// What is wrong when only this record was touched.
std::vector<std::string> wrongs(const ProjectBuilder &project, RecordRef touched);
template <class Record>
std::vector<std::string> wrongs(const ProjectBuilder &project, Id<Record> touched)
{
    return wrongs(project, RecordRef{Record::type, touched.value()});
}

} // namespace lastrivet::test
