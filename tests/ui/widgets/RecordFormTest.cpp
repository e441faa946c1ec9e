// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordForm.h"

#include "core/project/acts/DeviationActs.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordNames.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalSpy>
#include <QTest>

#include <catch2/catch.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace lastrivet::ui {

namespace {

/// The facts of the bay, of which no change is let pass while `why` is not empty.
struct Opened {
    Opened()
    {
        QObject::connect(session.get(), &Session::complained, &form,
                         [this](const QString &sentence) { complained = sentence; });
        form.setCheck([this](const void *) { return why; });
        form.show(workshop.bay.value());
        test::picture(form, 500, 300, "record-form");
    }
    /// The line that holds these words; null when none does.
    QLineEdit *line(const QString &words)
    {
        for (QLineEdit *each : form.findChildren<QLineEdit *>()) {
            if (each->text() == words)
                return each;
        }
        return nullptr;
    }
    QPlainTextEdit &note() { return *form.findChild<QPlainTextEdit *>(); }
    const Component &bay() { return *session->records()->find(workshop.bay); }

    test::Workshop workshop;
    std::unique_ptr<Session> session = workshop.session();
    QString why;
    QString complained;
    RecordForm form{*session, RecordType::Component, {{"name"}, {"parent_id"}, {"note", true}}};
};

} // namespace

TEST_CASE("A note that could not be kept stays as it was typed, and is kept when that is possible")
{
    Opened opened;
    opened.why = QStringLiteral("Not now.");
    opened.note().setFocus();
    QTest::keyClicks(&opened.note(), QStringLiteral("Mind the grommet"));
    opened.form.settle();
    CHECK(opened.complained == QStringLiteral("Not now."));
    CHECK(opened.bay().note.empty());
    CHECK(opened.note().toPlainText() == QStringLiteral("Mind the grommet"));
    opened.why.clear();
    opened.form.settle();
    CHECK(opened.bay().note == "Mind the grommet");
}

TEST_CASE("A name that could not be kept is that of the record again")
{
    Opened opened;
    QLineEdit *name = opened.line(QStringLiteral("Bay 3"));
    REQUIRE(name);
    name->selectAll();
    QTest::keyClick(name, Qt::Key_Delete);
    opened.form.settle();
    CHECK_FALSE(opened.complained.isEmpty());
    CHECK(opened.bay().name == "Bay 3");
    CHECK(name->text() == QStringLiteral("Bay 3"));
}

TEST_CASE("Escape takes back what is half typed into a field, and is the page's when nothing is")
{
    Opened opened;
    QLineEdit *name = opened.line(QStringLiteral("Bay 3"));
    REQUIRE(name);
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Wr"));
    QTest::keyClick(name, Qt::Key_Escape);
    CHECK(name->text() == QStringLiteral("Bay 3"));
    opened.form.settle();
    CHECK(opened.bay().name == "Bay 3");
}

TEST_CASE("Words chosen to be typed over stay chosen when their record is shown again")
{
    Opened opened;
    opened.line(QStringLiteral("Bay 3"))->selectAll();
    opened.form.show(opened.workshop.bay.value());
    CHECK(opened.line(QStringLiteral("Bay 3"))->hasSelectedText());
}

TEST_CASE("Undo and redo in a field that was kept are about the project")
{
    Opened opened;
    QObject::connect(opened.session.get(), &Session::changed, &opened.form,
                     [&](const ChangeNotice &notice) { opened.form.apply(notice); });
    const auto takes = [](QWidget &place, Qt::KeyboardModifiers modifiers) {
        QKeyEvent asked(QEvent::ShortcutOverride, Qt::Key_Z, modifiers);
        QCoreApplication::sendEvent(&place, &asked);
        return asked.isAccepted();
    };
    const Qt::KeyboardModifiers redo = Qt::ControlModifier | Qt::ShiftModifier;
    QLineEdit *name = opened.line(QStringLiteral("Bay 3"));
    REQUIRE(name);
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Bay 4"));
    CHECK(takes(*name, Qt::ControlModifier));
    QTest::keyClick(name, Qt::Key_Return);
    REQUIRE(opened.bay().name == "Bay 4");
    CHECK_FALSE(takes(*name, Qt::ControlModifier));
    CHECK_FALSE(takes(*name, redo));
    CHECK_FALSE(takes(opened.note(), Qt::ControlModifier));
    CHECK_FALSE(takes(opened.note(), redo));
}

TEST_CASE("A day of what has happened cannot lie ahead in the fields of a record")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QString complained;
    Id<Weighing> weighing;
    REQUIRE(session->change(QStringLiteral("Weighed"), [&](Edit &edit) {
        Weighing made;
        made.weighed_on = edit.today();
        weighing = edit.put(made);
    }));
    RecordForm form(*session, RecordType::Weighing, {{"weighed_on"}});
    QObject::connect(session.get(), &Session::complained, &form,
                     [&](const QString &sentence) { complained = sentence; });
    form.setHappened({"weighed_on"});
    form.show(weighing.value());
    test::picture(form, 300, 100, "record-form-day");
    auto *day = form.findChild<QLineEdit *>();
    day->selectAll();
    QTest::keyClicks(day, QStringLiteral("tomorrow"));
    form.settle();
    CHECK(complained.contains(QStringLiteral("lies ahead")));
    CHECK(session->records()->find(weighing)->weighed_on == session->today());
    day->selectAll();
    QTest::keyClicks(day, QStringLiteral("yesterday"));
    form.settle();
    CHECK(session->records()->find(weighing)->weighed_on == session->today().plusDays(-1));
}

TEST_CASE("Who is called as it was typed is taken before somebody whose name begins so")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<Person> jo;
    REQUIRE(session->change(QStringLiteral("Made"), [&](Edit &edit) {
        Person person;
        person.name = "Joan";
        person.roles = {Role::Helper};
        edit.put(person);
        person.name = "Jo";
        jo = edit.put(person);
    }));
    RecordLine line(*session, RecordType::Person);
    line.setText(QStringLiteral("jo"));
    line.setModified(true);
    CHECK(line.settle());
    CHECK(line.chosen() == jo.value());
    CHECK(line.text() == QStringLiteral("Jo"));
}

TEST_CASE("Fields and lists name records without the number that the program counts them by")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<Inspection> visit;
    Id<MaterialLot> lot;
    Id<Bulletin> bulletin;
    Id<Equipment> radio;
    REQUIRE(session->change(QStringLiteral("Made"), [&](Edit &edit) {
        Inspection held;
        held.kind = InspectionKind::PreCover;
        held.reference = "REF 9";
        held.held_on = edit.today();
        visit = edit.put(held);
        MaterialLot resin;
        resin.name = "Resin";
        resin.lot_number = "L-22";
        lot = edit.put(resin);
        Bulletin letter;
        letter.number = "SB-4";
        letter.title = "Hinge pins";
        letter.received_on = edit.today();
        bulletin = edit.put(letter);
        Equipment fitted;
        fitted.name = "Radio";
        radio = edit.put(fitted);
    }));
    const auto records = session->records();
    const auto named = [&](RecordType type, std::int64_t id) {
        return shortName(*records, {type, id});
    };
    CHECK(named(RecordType::Inspection, visit.value()) ==
          QStringLiteral("pre-cover inspection, REF 9, ") + dateText(session->today()));
    CHECK(named(RecordType::MaterialLot, lot.value()) == QStringLiteral("Resin, lot L-22"));
    CHECK(named(RecordType::Bulletin, bulletin.value()) == QStringLiteral("SB-4 Hinge pins"));
    CHECK(named(RecordType::Equipment, radio.value()) == QStringLiteral("equipment “Radio”"));
}

TEST_CASE("A name that could not be saved stays as it was typed, and is kept when that is possible")
{
    Opened opened;
    QLineEdit *name = opened.line(QStringLiteral("Bay 3"));
    REQUIRE(name);
    const auto folder = opened.workshop.folder();
    auto elsewhere = folder;
    elsewhere += ".unplugged";
    std::filesystem::rename(folder, elsewhere);
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Bay 4"));
    opened.form.settle();
    CHECK_FALSE(opened.complained.isEmpty());
    CHECK(name->text() == QStringLiteral("Bay 4"));
    // As often as the line is left.
    opened.form.settle();
    CHECK(name->text() == QStringLiteral("Bay 4"));
    std::filesystem::rename(elsewhere, folder);
    CHECK(opened.bay().name == "Bay 3");
    opened.form.settle();
    CHECK(opened.bay().name == "Bay 4");
}

TEST_CASE("What could not be saved waits with its record while another is shown")
{
    Opened opened;
    const auto folder = opened.workshop.folder();
    auto elsewhere = folder;
    elsewhere += ".unplugged";
    std::filesystem::rename(folder, elsewhere);
    QLineEdit *name = opened.line(QStringLiteral("Bay 3"));
    REQUIRE(name);
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Bay 4"));
    QTest::keyClicks(&opened.note(), QStringLiteral("Mind the grommet"));
    opened.form.show(opened.workshop.rudder.value());
    CHECK(name->text() == QStringLiteral("Rudder"));
    CHECK(opened.note().toPlainText().isEmpty());
    CHECK(opened.form.isBegun());
    opened.form.show(opened.workshop.bay.value());
    CHECK(name->text() == QStringLiteral("Bay 4"));
    CHECK(opened.note().toPlainText() == QStringLiteral("Mind the grommet"));
    std::filesystem::rename(elsewhere, folder);
    opened.form.settle();
    CHECK(opened.bay().name == "Bay 4");
    CHECK(opened.bay().note == "Mind the grommet");
    CHECK(opened.session->records()->find(opened.workshop.rudder)->name == "Rudder");
    CHECK_FALSE(opened.form.isBegun());
}

TEST_CASE("A note that could not be kept waits with its record, and goes when that does")
{
    Opened opened;
    QObject::connect(opened.session.get(), &Session::changed, &opened.form,
                     [&](const ChangeNotice &notice) { opened.form.apply(notice); });
    Id<Component> spare;
    REQUIRE(opened.session->change(QStringLiteral("Spare"), [&](Edit &edit) {
        Component part = *edit.records().find(opened.workshop.bay);
        part.id = {};
        part.code = "SP";
        part.name = "Spare";
        spare = edit.put(part);
    }));
    opened.form.show(spare.value());
    opened.why = QStringLiteral("Not now.");
    QTest::keyClicks(&opened.note(), QStringLiteral("Mind the grommet"));
    opened.form.show(opened.workshop.rudder.value());
    CHECK(opened.note().toPlainText().isEmpty());
    CHECK(opened.form.isBegun());
    SECTION("it is there again with it")
    {
        opened.form.show(spare.value());
        CHECK(opened.note().toPlainText() == QStringLiteral("Mind the grommet"));
    }
    SECTION("it goes with it")
    {
        opened.session->undo();
        REQUIRE_FALSE(opened.session->records()->find(spare));
        CHECK_FALSE(opened.form.isBegun());
    }
}

TEST_CASE("A line for a record says so when nothing is called what was typed")
{
    Opened opened;
    QLineEdit *inside = nullptr;
    for (QLineEdit *line : opened.form.findChildren<QLineEdit *>()) {
        if (line->text().contains(QStringLiteral("Left wing")))
            inside = line;
    }
    REQUIRE(inside);
    const QString before = inside->text();
    inside->setFocus();
    inside->selectAll();
    QTest::keyClicks(inside, QStringLiteral("xyzzq"));
    opened.form.settle();
    CHECK(opened.complained.contains(QStringLiteral("xyzzq")));
    CHECK(inside->text() == before);
    CHECK(opened.bay().parent_id == opened.workshop.wing);
}

TEST_CASE("A text that is only looked at stays as it is, whatever its lines and spaces are")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    // As other programs write them: lines that end with two characters, a space that does not
    // break.
    const std::string note = "Torqued to 5\xC2\xA0Nm.\r\nLooked at twice.";
    REQUIRE(session->change(QStringLiteral("Note"), [&](Edit &edit) {
        edit.update(workshop.squawk, [&](Squawk &squawk) { squawk.note = note; });
    }));
    QSignalSpy changes(session.get(), &Session::changed);
    const std::vector<RecordForm::Row> rows{{"title", false, {}}, {"note", true, {}}};
    RecordForm form(*session, RecordType::Squawk, rows);
    form.show(workshop.squawk.value());
    form.settle();
    form.show(0);
    CHECK(changes.isEmpty());
    CHECK(session->records()->find(workshop.squawk)->note == note);
}

TEST_CASE("A record that a form names goes by its new name as soon as it has one")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const std::vector<RecordForm::Row> rows{{"component_id", false, {}}};
    RecordForm form(*session, RecordType::Squawk, rows);
    QObject::connect(session.get(), &Session::changed, &form,
                     [&form](const ChangeNotice &notice) { form.apply(notice); });
    form.show(workshop.squawk.value());
    auto *line = form.findChild<RecordLine *>();
    REQUIRE(line);
    const Id<Component> part = session->records()->find(workshop.squawk)->component_id;
    REQUIRE(session->change(QStringLiteral("Renamed"), [&](Edit &edit) {
        edit.update(part, [](Component &known) { known.name = "Tank bay"; });
    }));
    CHECK(line->text().contains(QStringLiteral("Tank bay")));
}

TEST_CASE("What is typed into a set of records is kept when the form goes on to another")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<Deviation> deviation;
    REQUIRE(session->change(QStringLiteral("Deviation"), [&](Edit &edit) {
        deviation = acts::addDeviation(edit, {}, "A longer spar");
    }));
    const std::vector<RecordForm::Row> rows{{"component_ids", false, {}}};
    RecordForm form(*session, RecordType::Deviation, rows);
    form.show(deviation.value());
    auto *line = form.findChild<RecordLine *>();
    REQUIRE(line);
    // Typed without the list of what fits, which opens under a line that is seen.
    line->setText(QStringLiteral("rudder"));
    line->setModified(true);
    form.show(0);
    CHECK(session->records()->find(deviation)->component_ids == IdSet<Component>{workshop.rudder});
}

TEST_CASE("Escape in a line for a record closes the list of names and shows the record again")
{
    Opened opened;
    auto *line = opened.form.findChild<RecordLine *>();
    REQUIRE(line);
    const QString before = line->text();
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, QStringLiteral("rud"));
    const auto *popup = line->findChild<QCompleter *>()->popup();
    REQUIRE(popup->isVisible());
    QTest::keyClick(line, Qt::Key_Escape);
    CHECK_FALSE(popup->isVisible());
    CHECK(line->text() == before);
}

} // namespace lastrivet::ui
