// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/TestProject.h"

#include "core/profiles/ProfileLibrary.h"

#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>

namespace lastrivet::test {

TestProject::TestProject()
{
    ProjectFacts facts;
    facts.name = "Test";
    m_project =
        Project::create(m_folder, facts, ProfileLibrary::standard().profile("plain"), options());
}

Project::Options TestProject::options() const
{
    return {&m_clock, "Robin", false};
}

void TestProject::reopen()
{
    close();
    m_project = Project::open(m_folder, options());
}

std::unique_ptr<Project> TestProject::openAgain(bool readOnly) const
{
    auto other = options();
    other.readOnly = readOnly;
    return Project::open(m_folder, other);
}

Id<Person> TestProject::person(std::string_view name, ChangeKind kind)
{
    Person person;
    person.name = name;
    person.roles = {Role::Builder};
    Id<Person> id;
    change(
        "Person " + person.name, [&](Edit &edit) { id = edit.put(person); }, kind);
    return id;
}

Id<Component> TestProject::part(std::string_view name)
{
    Component part;
    part.name = name;
    Id<Component> id;
    change("Part " + part.name, [&](Edit &edit) { id = edit.put(part); });
    return id;
}

ChangeNotice TestProject::change(std::string_view label, const Project::Body &body, ChangeKind kind)
{
    auto result = m_project->change(label, body, kind);
    if (!result)
        FAIL("refused: " << english(result.reason()));
    return *result;
}

void TestProject::tamper(const std::string &statements) const
{
    SQLite::Database sql(this->database().string(), SQLite::OPEN_READWRITE, 1000);
    sql.exec(statements);
}

} // namespace lastrivet::test
