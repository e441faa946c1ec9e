// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Workshop.h"
#include "ui/squawks/SquawkActForm.h"
#include "ui/squawks/SquawkEditor.h"
#include "ui/squawks/SquawkPictures.h"
#include "ui/squawks/SquawksPage.h"

#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

/// The page of squawks in a window of its own, with what the tests press and read.
struct Window {
    Window()
    {
        page.resize(1200, 1400);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
        QObject::connect(session.get(), &ui::Session::recordWanted, &page,
                         [this](RecordRef record) { wanted = record; });
    }
    template <class Widget> Widget &named(const QString &name)
    {
        for (auto *widget : page.findChildren<Widget *>()) {
            if (widget->accessibleName() == name && widget->isVisible())
                return *widget;
        }
        FAIL("nothing is called " << name.toStdString());
        return *page.findChild<Widget *>();
    }
    QLineEdit &field(const char *name) { return named<QLineEdit>(QString::fromUtf8(name)); }
    void enter(const char *name, const char *text)
    {
        QLineEdit &line = field(name);
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, QString::fromUtf8(text));
        QTest::keyClick(&line, Qt::Key_Return);
    }
    QPushButton *button(const char *text)
    {
        for (auto *button : page.findChildren<QPushButton *>()) {
            if (button->text() == QString::fromUtf8(text) && button->isVisible())
                return button;
        }
        return nullptr;
    }
    void press(const char *text)
    {
        // What was just added to a layout is shown by the event loop.
        QCoreApplication::processEvents();
        QPushButton *found = button(text);
        INFO(text);
        REQUIRE(found);
        QTest::mouseClick(found, Qt::LeftButton);
    }
    ui::SquawkEditor &editor() { return *page.findChild<ui::SquawkEditor *>(); }
    /// What the form of the act says below its fields.
    bool isHinted(const char *words)
    {
        const auto labels = page.findChild<ui::SquawkActForm *>()->findChildren<QLabel *>();
        return std::ranges::any_of(labels, [&](const QLabel *label) {
            return label->isVisible() && label->text().contains(QString::fromUtf8(words));
        });
    }
    void show(Id<Squawk> id) { page.showRecord({RecordType::Squawk, id.value()}); }
    void change(const std::function<void(Edit &)> &body)
    {
        REQUIRE(session->change(QStringLiteral("Setting"), body));
    }
    const Squawk &squawk(std::string_view number)
    {
        const auto records = session->records();
        for (const Squawk &known : records->squawks) {
            if (known.number == number)
                return known;
        }
        FAIL("no squawk " << number);
        return *records->squawks.begin();
    }
    std::vector<WorkSession> sessionsOn(Id<Squawk> id)
    {
        std::vector<WorkSession> found;
        for (const WorkSession &work : session->records()->work_sessions) {
            if (work.squawk_id == id)
                found.push_back(work);
        }
        return found;
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::SquawksPage page{*session};
    RecordRef wanted{};
};

QString savedPicture(const TemporaryFolder &folder, const char *name, Qt::GlobalColor colour)
{
    QImage picture(64, 48, QImage::Format_RGB32);
    picture.fill(colour);
    const QString file = QString::fromStdString((folder / name).string());
    REQUIRE(picture.save(file));
    return file;
}

} // namespace

TEST_CASE("A squawk goes from the line to the inspector's word without leaving the page",
          "[squawks]")
{
    Window window;
    window.page.startNew();
    window.enter("New squawk", "bay 3 airworthiness: cracked clip");
    const auto id = window.squawk("2").id;
    CHECK(window.squawk("2").severity == Severity::Airworthiness);

    window.field("What is for it").setText(QStringLiteral("quick"));
    window.field("What is against it").setText(QStringLiteral("heavier"));
    window.enter("A way to repair it", "Stop-drill and doubler");
    window.enter("A way to repair it", "New clip");
    REQUIRE(window.squawk("2").repair_options.size() == 2);
    CHECK(window.squawk("2").repair_options.front().cons == "heavier");
    QRadioButton *second = window.page.findChildren<QRadioButton *>().back();
    QTest::mouseClick(second, Qt::LeftButton, {}, QPoint(10, second->height() / 2));
    CHECK(window.squawk("2").repair_options.back().chosen);
    CHECK(window.squawk("2").repair_plan == "New clip");

    window.change([&](Edit &edit) {
        edit.update(id, [](Squawk &squawk) { squawk.verify_by = SignerRole::Inspector; });
    });
    window.enter("Log work on this squawk", "45m: drilled it out");
    REQUIRE(window.sessionsOn(id).size() == 1);
    CHECK(window.sessionsOn(id).front().minutes == Minutes{45});
    CHECK(window.sessionsOn(id).front().component_id == window.workshop.bay);
    CHECK(window.sessionsOn(id).front().kind == WorkKind::Rework);

    CHECK_FALSE(window.button("Fixed and checked"));
    window.page.firstFocus()->setFocus();
    QTest::keyClick(window.page.firstFocus(), Qt::Key_F);
    window.field("Worked for").setText(QStringLiteral("1h10"));
    window.enter("Correction", "New clip fitted");
    CHECK(window.squawk("2").fixed_by == window.workshop.builder);
    CHECK_FALSE(window.squawk("2").verified_on);
    CHECK(window.sessionsOn(id).size() == 2);

    window.press("Verify");
    window.named<QComboBox>(QStringLiteral("By")).setEditText(QStringLiteral("robin vale"));
    QTest::keyClick(&window.field("On"), Qt::Key_Return);
    CHECK(window.isHinted("for an inspector to verify; Robin Vale is none"));
    CHECK_FALSE(window.squawk("2").verified_on);
    window.named<QComboBox>(QStringLiteral("By")).setEditText(QStringLiteral("Sam Orrin"));
    QTest::keyClick(&window.field("On"), Qt::Key_Return);
    CHECK(window.squawk("2").verified_by == window.workshop.inspector);
    CHECK(std::ranges::distance(window.session->records()->people) == 2);
    window.session->undo();
    CHECK_FALSE(window.squawk("2").verified_on);
    CHECK(window.squawk("2").fixed_on);
}

TEST_CASE("The clock measures work on a squawk, and runs on until its time is logged", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Start work");
    REQUIRE(window.session->timer());
    CHECK(window.session->timer()->squawk_id == window.workshop.squawk);
    const Moment began = window.session->timer()->began;
    window.workshop.clock.set(window.workshop.clock.now() + std::chrono::minutes{25});
    window.press("Stop work");
    CHECK(window.session->timer());
    QLineEdit &line = window.field("Log work on this squawk");
    CHECK(line.text() == QStringLiteral("25m: "));
    QTest::keyClicks(&line, QStringLiteral("drilled out"));
    QTest::keyClick(&line, Qt::Key_Return);
    CHECK_FALSE(window.session->timer());
    const auto work = window.sessionsOn(window.workshop.squawk);
    REQUIRE(work.size() == 1);
    CHECK(work.front().began == began);
    CHECK(work.front().minutes == Minutes{25});
    CHECK(work.front().note == "drilled out");
}

TEST_CASE("A correction is dated between the day it was found and today", "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Fixed and checked");
    window.field("Correction").setText(QStringLiteral("Drilled out"));
    window.enter("On", "2026-03-15");
    CHECK(window.isHinted("has not come yet"));
    window.enter("On", "2026-03-10");
    CHECK(window.isHinted("was found on"));
    window.enter("On", "someday");
    CHECK(window.isHinted("is no day"));
    CHECK_FALSE(window.squawk("1").fixed_on);
    QTest::keyClick(&window.field("On"), Qt::Key_Escape);
    window.press("Fixed and checked");
    CHECK(window.field("Correction").text() == QStringLiteral("Drilled out"));
    window.enter("On", "2026-03-12");
    CHECK(window.squawk("1").verified_on == Moment::parse("2026-03-12"));
}

TEST_CASE("A squawk cannot be found tomorrow, and its title cannot be emptied", "[squawks]")
{
    Window window;
    QStringList said;
    QObject::connect(window.session.get(), &ui::Session::complained, &window.page,
                     [&](const QString &sentence) { said.append(sentence); });
    window.show(window.workshop.squawk);
    window.enter("Found on", "2026-03-15");
    REQUIRE(said.size() == 1);
    CHECK(said.front().contains(QStringLiteral("has not come yet")));
    CHECK(window.squawk("1").found_on == Moment::parse("2026-03-11"));
    window.field("Title").clear();
    window.enter("Title", " ");
    CHECK(said.size() == 2);
    CHECK(window.squawk("1").title == "Overdriven rivet at rib 3");
}

TEST_CASE("An acceptance needs a basis, and for airworthiness somebody who may", "[squawks]")
{
    Window window;
    window.change([&](Edit &edit) {
        edit.update(window.workshop.squawk,
                    [](Squawk &squawk) { squawk.severity = Severity::Airworthiness; });
    });
    window.show(window.workshop.squawk);
    window.press("Accept as it is");
    window.enter("Basis", "");
    CHECK(window.isHinted("needs its basis"));
    window.named<QComboBox>(QStringLiteral("By")).setEditText(QStringLiteral("Robin Vale"));
    window.enter("Basis", "letter of 3 March");
    CHECK(window.isHinted("only a designer, an adviser or an inspector"));
    window.named<QComboBox>(QStringLiteral("By")).setEditText(QStringLiteral("Nobody Known"));
    window.enter("Basis", "letter of 3 March");
    CHECK(window.isHinted("is not among the people on record"));
    CHECK_FALSE(window.squawk("1").accepted_on);
    window.named<QComboBox>(QStringLiteral("By")).setEditText(QStringLiteral("Sam Orrin"));
    window.enter("Basis", "letter of 3 March");
    CHECK(window.squawk("1").accepted_basis == "letter of 3 March");
    CHECK(window.squawk("1").accepted_by == window.workshop.inspector);
}

TEST_CASE("What was fixed too early is taken back with a reason, what comes back is a new squawk",
          "[squawks]")
{
    Window window;
    window.show(window.workshop.squawk);
    window.press("Fixed");
    window.enter("Correction", "Drilled out");
    window.press("Take back…");
    window.enter("Why", "");
    CHECK(window.isHinted("Say why"));
    window.enter("Why", "still smoking");
    CHECK_FALSE(window.squawk("1").fixed_on);
    CHECK(window.squawk("1").note == "2026-03-14: not fixed after all: still smoking");

    window.press("Fixed and checked");
    CHECK(window.field("Correction").text() == QStringLiteral("Drilled out"));
    window.enter("Correction", "Next size");
    window.show(window.workshop.squawk);
    window.press("It came back…");
    window.enter("Why", "loose at the same place");
    CHECK(window.squawk("2").title == window.squawk("1").title);
    CHECK(window.squawk("2").note.find("loose at the same place") != std::string::npos);
    CHECK(window.squawk("1").verified_on);
    CHECK(window.wanted == RecordRef{RecordType::Squawk, window.squawk("2").id.value()});
}

TEST_CASE("A squawk out of reach names the closing to open, and goes there", "[squawks]")
{
    Window window;
    window.change([&](Edit &edit) {
        edit.update(window.workshop.wingClosing, [&](Closing &closing) {
            Closing::Event closed;
            closed.closed_on = Moment::parse("2026-03-12");
            closed.by = window.workshop.builder;
            closing.events.push_back(closed);
        });
    });
    window.show(window.workshop.squawk);
    window.press("Left wing, upper skin");
    CHECK(window.wanted == RecordRef{RecordType::Closing, window.workshop.wingClosing.value()});
}

TEST_CASE("Photos of the defect and of the repair stand side by side", "[squawks]")
{
    const TemporaryFolder folder;
    Window window;
    window.show(window.workshop.squawk);
    ui::SquawkEditor &editor = window.editor();
    editor.before().addFiles({savedPicture(folder, "before.png", Qt::darkRed),
                              savedPicture(folder, "after.png", Qt::darkGreen)});
    editor.after().addFiles({savedPicture(folder, "more.png", Qt::blue)});
    CHECK(editor.before().count() == 2);
    CHECK(editor.after().count() == 1);
    window.press("It shows the repair");
    CHECK(editor.before().count() == 1);
    CHECK(editor.after().count() == 2);
    window.session->undo();
    CHECK(editor.before().count() == 2);
    int repairs = 0;
    for (const Media &media : window.session->records()->media)
        repairs += media.shows.contains(Shows::Repair);
    CHECK(repairs == 1);
}

TEST_CASE("The loop as it looks", "[squawks]")
{
    const TemporaryFolder folder;
    Window window;
    window.show(window.workshop.squawk);
    window.editor().before().addFiles({savedPicture(folder, "before.png", Qt::darkRed)});
    window.press("Fixed and checked");
    picture(window.page, 1120, 1300, "squawk-loop-light");
}

} // namespace lastrivet::test
