// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/verify/Verification.h"
#include "tests/support/ProjectCopies.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

namespace lastrivet::test {

/// Two computers that begin with the same project: a wing with a squawk on it.
struct TwoCopies {
    ProjectCopy robin{"Robin"};
    Id<Component> wing;
    Id<Squawk> squawk;
    std::unique_ptr<ProjectCopy> kims;

    TwoCopies()
    {
        robin.change("A beginning", [this](Edit &edit) {
            Person builder;
            builder.name = "Robin";
            builder.roles = {Role::Builder};
            edit.put(builder);
            Component part;
            part.name = "Wing";
            wing = edit.put(part);
            squawk = edit.put(newSquawk(edit, "Overdriven rivet"));
        });
        kims = std::make_unique<ProjectCopy>(robin, "Kim");
        later(robin);
    }

    Squawk newSquawk(const Edit &edit, std::string_view title) const
    {
        Squawk made;
        made.number = nextNumber<Squawk>(edit.records());
        made.title = title;
        made.component_id = wing;
        made.found_on = edit.today();
        return made;
    }

    ProjectCopy &kim() { return *kims; }
    /// The copy's clock goes on, beyond everything done so far.
    void later(ProjectCopy &copy)
    {
        m_time += std::chrono::minutes{10};
        copy.clock().set(FakeClock{}.now() + m_time);
    }
    void rename(ProjectCopy &copy, std::string_view name)
    {
        later(copy);
        copy.change("Renamed to " + std::string(name), [&](Edit &edit) {
            edit.update(wing, [&](Component &part) { part.name = name; });
        });
    }
    void note(ProjectCopy &copy, std::string_view note)
    {
        later(copy);
        copy.change("Note", [&](Edit &edit) {
            edit.update(wing, [&](Component &part) { part.note = note; });
        });
    }
    Id<Component> part(ProjectCopy &copy, std::string_view name, std::string_view code = {})
    {
        later(copy);
        Component part;
        part.name = name;
        part.code = code;
        Id<Component> id;
        copy.change("Part " + part.name, [&](Edit &edit) { id = edit.put(part); });
        return id;
    }
    Id<Squawk> find(ProjectCopy &copy, std::string_view title)
    {
        later(copy);
        Id<Squawk> id;
        copy.change("Squawk", [&](Edit &edit) { id = edit.put(newSquawk(edit, title)); });
        return id;
    }
    /// Both take each other's changes in, and must come to the same.
    void mergeBoth()
    {
        later(robin);
        later(kim());
        ProjectCopy first(robin, "Robin");
        kim().merge(robin);
        robin.merge(kim());
        first.merge(kim());
        REQUIRE(*robin->records() == *kim()->records());
        REQUIRE(*first->records() == *kim()->records());
        for (auto *copy : {&robin, &kim()}) {
            for (const auto &finding : verify(copy->folder()).findings)
                FAIL_CHECK(finding.text);
        }
    }
    /// Both rename the wing, and each decides in a copy of their own, Kim later. Answers the
    /// conflict's id.
    std::int64_t decideEach(ConflictDecision ofRobin, ConflictDecision ofKim)
    {
        rename(robin, "Port wing");
        rename(kim(), "Left wing");
        mergeBoth();
        const auto id = robin->conflicts().front().id;
        later(robin);
        REQUIRE(robin->decide(id, ofRobin));
        later(kim());
        REQUIRE(kim()->decide(id, ofKim));
        return id;
    }

    const Component &wingOf(ProjectCopy &copy) { return *copy->records()->components.find(wing); }

private:
    std::chrono::milliseconds m_time{0};
};

} // namespace lastrivet::test
