// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>

namespace lastrivet::test {

/// The workshop's project, and a copy of it on which somebody else goes on.
struct TwoCopies {
    Workshop workshop;
    FakeClock otherClock = workshop.clock;

    TwoCopies() { std::filesystem::copy(workshop.folder(), other(), recursive); }

    std::filesystem::path other() const
    {
        return workshop.folder().parent_path() / "Other.lastrivet";
    }
    /// A change of the other copy, `minutes` after the workshop's noon.
    void elsewhere(int minutes, std::string_view label, const Project::Body &body)
    {
        otherClock.set(workshop.clock.now() + std::chrono::minutes{minutes});
        const auto project = Project::open(other(), {&otherClock, "Kim", false});
        REQUIRE(project->change(label, body));
    }
    /// A change here, as late.
    void here(ui::Session &session, int minutes, const QString &label, const Project::Body &body)
    {
        const auto now = workshop.clock.now();
        workshop.clock.set(now + std::chrono::minutes{minutes});
        REQUIRE(session.change(label, body));
        workshop.clock.set(now);
    }
    /// Both copies correct the same squawk in other words, and one takes a squawk back.
    void disagree(ui::Session &session)
    {
        const auto title = [&](std::string_view words) {
            return [this, words = std::string(words)](Edit &edit) {
                edit.update(workshop.squawk, [&](Squawk &known) { known.title = words; });
            };
        };
        elsewhere(10, "Squawk renamed over there", title("Rivet set too deep"));
        here(session, 20, QStringLiteral("Squawk renamed here"), title("Rivet overdriven"));
        workshop.clock.set(workshop.clock.now() + std::chrono::minutes{60});
    }

private:
    static constexpr auto recursive = std::filesystem::copy_options::recursive;
};

} // namespace lastrivet::test
