// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Workshop.h"

#include "core/profiles/ProfileLibrary.h"
#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/Looks.h"

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QTest>
#include <QWidget>

#include <catch2/catch.hpp>

#include <string>

namespace lastrivet::test {

namespace {

Moment on(std::string_view text)
{
    return *Moment::parse(text);
}

Id<Component> part(Edit &edit, std::string_view code, std::string_view name, ComponentKind kind,
                   Id<Component> inside = {})
{
    Component part;
    part.code = code;
    part.name = name;
    part.kind = kind;
    part.construction = Construction::Metal;
    part.parent_id = inside;
    return edit.put(part);
}

void work(Edit &edit, Id<Component> part, std::string_view began, std::int64_t minutes)
{
    WorkSession session;
    session.component_id = part;
    session.began = on(began);
    session.minutes = Minutes{minutes};
    session.kind = WorkKind::Assembly;
    edit.put(session);
}

QImage shot(QWidget &widget, int width, int height, std::string_view name)
{
    widget.resize(width, height);
    widget.show();
    REQUIRE(QTest::qWaitForWindowExposed(&widget));
    QCoreApplication::processEvents();
    QDir().mkpath(QStringLiteral(LASTRIVET_PICTURES));
    const QString file = QStringLiteral(LASTRIVET_PICTURES "/%1.png")
                             .arg(QString::fromUtf8(name.data(), qsizetype(name.size())));
    const QImage image = widget.grab().toImage();
    CHECK(image.save(file));
    return image;
}

/// As far as a sample of its dots says.
bool isOfOneColour(const QImage &image)
{
    for (int y = 0; y < image.height(); y += 3) {
        for (int x = 0; x < image.width(); x += 3) {
            if (image.pixel(x, y) != image.pixel(0, 0))
                return false;
        }
    }
    return true;
}

/// The mean of a sample of its dots, from 0 for black to 255 for white.
int lightness(const QImage &image)
{
    int sum = 0;
    int count = 0;
    for (int y = 0; y < image.height(); y += 7) {
        for (int x = 0; x < image.width(); x += 7) {
            sum += qGray(image.pixel(x, y));
            ++count;
        }
    }
    return count ? sum / count : 0;
}

QImage wholeShot(QWidget &widget, int width, int height, std::string_view name)
{
    const QImage image = shot(widget, width, height, name);
    INFO(name);
    CHECK_FALSE(isOfOneColour(image));
    CHECK(cutTexts(widget).join(u'\n').toStdString() == "");
    CHECK(outsideTheirPlace(widget).join(u'\n').toStdString() == "");
    return image;
}

} // namespace

ui::Theme &theme()
{
    static auto *theme = new ui::Theme(*qApp, ui::Theme::Choice::System, qApp);
    return *theme;
}

Workshop::Workshop()
{
    clock.set(std::chrono::sys_days{std::chrono::year{2026} / 3 / 14} + std::chrono::hours{18});
    ProjectFacts facts;
    facts.name = "Kestrel Two";
    facts.profile = "ca";
    const auto project = Project::create(folder(), facts, ProfileLibrary::standard().profile("ca"),
                                         {&clock, "Robin"});
    const auto result = project->change("Everything", [this](Edit &edit) { fill(edit); });
    if (!result)
        FAIL(english(result.reason()));
}

std::unique_ptr<ui::Session> Workshop::session()
{
    return std::make_unique<ui::Session>(Project::open(folder(), {&clock, "Robin"}), executor,
                                         theme());
}

void Workshop::fill(Edit &edit)
{
    addPeople(edit);
    addParts(edit);
    addClosings(edit);
    addWork(edit);
}

void Workshop::addPeople(Edit &edit)
{
    Person robin;
    robin.name = "Robin Vale";
    robin.roles = {Role::Builder};
    builder = edit.put(robin);
    Person sam;
    sam.name = "Sam Orrin";
    sam.roles = {Role::Inspector};
    sam.credential = "I-204";
    inspector = edit.put(sam);
    ProjectFacts facts = edit.records().project;
    facts.builder_id = builder;
    edit.put(facts);
}

void Workshop::addParts(Edit &edit)
{
    wing = part(edit, "LW", "Left wing", ComponentKind::LiftingSurface);
    bay = part(edit, "LW-B3", "Bay 3", ComponentKind::Part, wing);
    aileron = part(edit, "LA", "Left aileron", ComponentKind::ControlSurface);
    rudder = part(edit, "RU", "Rudder", ComponentKind::ControlSurface);
}

void Workshop::addClosings(Edit &edit)
{
    const auto add = [&](Id<Component> of, std::string_view title) {
        Closing closing;
        closing.component_id = of;
        closing.title = title;
        return acts::addClosing(edit, closing, {});
    };
    wingClosing = add(wing, "Left wing, upper skin");
    aileronClosing = add(aileron, "Left aileron, lower skin");
    rudderClosing = add(rudder, "Rudder, right skin");
    Check check;
    check.closing_id = wingClosing;
    for (const auto item : {"Drains are open", "Tools are counted", "Wires are clamped"}) {
        check.item = item;
        edit.put(check);
    }
}

void Workshop::addWork(Edit &edit)
{
    work(edit, bay, "2026-03-10", 135);
    work(edit, aileron, "2026-02-20", 60);
    Step step;
    step.component_id = bay;
    step.title = "Clamp the wires in bay 3";
    step.estimate_minutes = Minutes{90};
    wires = edit.put(step);
    step.title = "Rivet the upper skin";
    step.after = {wires};
    step.closes = wingClosing;
    skin = edit.put(step);
    Squawk found;
    found.number = "1";
    found.component_id = bay;
    found.title = "Overdriven rivet at rib 3";
    found.found_on = on("2026-03-11");
    squawk = edit.put(found);
}

Id<HoldPoint> Workshop::point(const Records &records, Id<Closing> closing, HoldPointKind kind)
{
    for (const HoldPoint &point : records.hold_points) {
        if (point.closing_id == closing && point.kind == kind)
            return point.id;
    }
    return {};
}

void picture(QWidget &widget, int width, int height, std::string_view name)
{
    CHECK_FALSE(isOfOneColour(shot(widget, width, height, name)));
}

void wholePicture(QWidget &widget, int width, int height, std::string_view name)
{
    wholeShot(widget, width, height, name);
}

void lightAndDark(QWidget &widget, int width, int height, std::string_view name)
{
    theme().choose(ui::Theme::Choice::Light);
    const QImage light = wholeShot(widget, width, height, std::string(name) + "-light");
    theme().choose(ui::Theme::Choice::Dark);
    const QImage dark = wholeShot(widget, width, height, std::string(name) + "-dark");
    theme().choose(ui::Theme::Choice::Light);
    // The ground of a page is nearly white or nearly black; photographs lie on a part of it.
    CHECK(lightness(light) > 180);
    CHECK(lightness(dark) < 100);
}

} // namespace lastrivet::test
