// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/ProfileLibrary.h"
#include "core/project/Project.h"
#include "tests/support/FakeClock.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

namespace lastrivet::test {

/// A project on disk with a builder, an adviser, an inspector and one metal wing: for acts.
class ActBench {
public:
    explicit ActBench(std::string_view profile = "ca")
    {
        ProjectFacts facts;
        facts.name = "Bench";
        facts.profile = profile;
        m_project =
            Project::create(m_folder / "Bench.lastrivet", facts,
                            ProfileLibrary::standard().profile(profile), {&m_clock, "Robin"});
        change([this](Edit &edit) { fill(edit); });
    }

    Project &operator*() { return *m_project; }
    Snapshot records() const { return m_project->records(); }
    /// Fails the test when the change is refused.
    void change(const Project::Body &body)
    {
        const auto result = m_project->change("A change", body);
        if (!result)
            FAIL(english(result.reason()));
    }
    bool isRefused(const Project::Body &body) { return !m_project->change("A change", body); }

    Id<Person> builder;
    Id<Person> adviser;
    Id<Person> inspector;
    Id<Component> wing;
    Id<Component> tank;

private:
    void fill(Edit &edit)
    {
        const auto person = [&](std::string_view name, Role role) {
            Person added;
            added.name = name;
            added.roles.insert(role);
            added.credential = std::string(name) + "'s licence";
            return edit.put(added);
        };
        builder = person("Robin", Role::Builder);
        adviser = person("Kim", Role::Adviser);
        inspector = person("Sam", Role::Inspector);
        Component part;
        part.name = "Wing";
        part.kind = ComponentKind::LiftingSurface;
        part.construction = Construction::Metal;
        wing = edit.put(part);
        part.name = "Tank";
        part.kind = ComponentKind::FuelTank;
        part.parent_id = wing;
        tank = edit.put(part);
    }

    test::TemporaryFolder m_folder;
    FakeClock m_clock;
    std::unique_ptr<Project> m_project;
};

} // namespace lastrivet::test
