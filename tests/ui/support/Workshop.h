// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/FakeClock.h"
#include "tests/support/TemporaryFolder.h"
#include "ui/shell/Executor.h"
#include "ui/shell/Session.h"
#include "ui/shell/Theme.h"

#include <memory>
#include <string_view>

class QWidget;

namespace lastrivet::test {

/// The one theme of the tests, which lives as long as the application.
ui::Theme &theme();

/// A small project on disk under Canadian rules, half way through a wing, on 14 March 2026.
///
/// The wing's upper skin waits for work and for the inspector; the aileron waits for signatures
/// only; the rudder is not begun.
class Workshop {
public:
    Workshop();

    std::unique_ptr<ui::Session> session();
    std::filesystem::path folder() const { return m_folder / "Test.lastrivet"; }
    FakeClock clock;
    ui::InlineExecutor executor;

    Id<Person> builder;
    Id<Person> inspector;
    Id<Component> wing;
    Id<Component> bay;
    Id<Component> aileron;
    Id<Component> rudder;
    Id<Step> wires;
    Id<Step> skin;
    Id<Squawk> squawk;
    Id<Closing> wingClosing;
    Id<Closing> aileronClosing;
    Id<Closing> rudderClosing;

    /// The hold point of a closing for whom to sign.
    static Id<HoldPoint> point(const Records &records, Id<Closing> closing, HoldPointKind kind);

private:
    void fill(Edit &edit);
    void addPeople(Edit &edit);
    void addParts(Edit &edit);
    void addClosings(Edit &edit);
    void addWork(Edit &edit);

    test::TemporaryFolder m_folder;
};

/// Shows a widget in a size, lets it settle, and keeps its picture among the test's results; checks
/// that something is on it, and not what.
void picture(QWidget &widget, int width, int height, std::string_view name);

/// The same, and checks that no words are cut and nothing sticks out of the place that it has.
void wholePicture(QWidget &widget, int width, int height, std::string_view name);

/// Two whole pictures, `name` with “-light” and “-dark” behind it, and checks that what they are
/// called is what they are; light again afterwards.
void lightAndDark(QWidget &widget, int width, int height, std::string_view name);

} // namespace lastrivet::test
