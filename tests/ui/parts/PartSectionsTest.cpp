// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartSection.h"

#include "core/project/acts/WorkActs.h"
#include "core/steps/StepOrder.h"
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/ModelWatch.h"
#include "ui/convert/QtText.h"
#include "ui/parts/PartDetail.h"
#include "ui/parts/SectionActsBar.h"
#include "ui/parts/SectionList.h"
#include "ui/parts/SectionModel.h"
#include "ui/parts/StepPicture.h"
#include "ui/widgets/RecordForm.h"

#include <QApplication>
#include <QFile>
#include <QHeaderView>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

const ui::PartSection &section(RecordType type)
{
    return ui::partSections()[std::size_t(ui::sectionFor(type))];
}

template <class Record> const Record &newest(const Records &records)
{
    return *records.find(Id<Record>{records.of<Record>().greatestId()});
}

/// What the session complained of last.
struct Complaints {
    explicit Complaints(ui::Session &session)
    {
        QObject::connect(&session, &ui::Session::complained, &context,
                         [this](const QString &sentence) { last = sentence; });
    }
    QObject context;
    QString last;
};

Id<Fastener> putStrutBolt(PartsWindow &window)
{
    Id<Fastener> bolt;
    window.session->change(QStringLiteral("Bolt"), [&](Edit &edit) {
        Fastener fastener;
        fastener.component_id = window.workshop.bay;
        fastener.place = "Right strut fitting, upper bolt";
        fastener.hardware = "AN5-10A with self-locking nut and washer";
        fastener.torque_min = 100;
        fastener.torque_max = 140;
        fastener.fitted_on = edit.today();
        bolt = edit.put(fastener);
    });
    return bolt;
}

} // namespace

TEST_CASE("Steps are inserted, put in another order and dropped by keyboard")
{
    PartsWindow window;
    window.show({RecordType::Step, window.workshop.skin.value()});
    window.list().setFocus();
    REQUIRE(window.list().hasFocus());
    QTest::keyClick(&window.list(), Qt::Key_Insert);
    window.enter(QStringLiteral("Step"), QStringLiteral("Deburr the skin"));
    const auto order = [&] { return steps::stepsOf(*window.records(), window.workshop.bay); };
    REQUIRE(order().size() == 3);
    const Id<Step> added = order()[1];
    CHECK(window.records()->find(added)->title == "Deburr the skin");

    window.show({RecordType::Step, added.value()});
    QTest::keyClick(&window.list(), Qt::Key_Up, Qt::AltModifier);
    CHECK(order().front() == added);
    QTest::keyClick(&window.list(), Qt::Key_Down, Qt::AltModifier);
    QTest::keyClick(&window.list(), Qt::Key_Down, Qt::AltModifier);
    CHECK(order().back() == added);

    QTest::mouseClick(&window.button(QStringLiteral("Drop")), Qt::LeftButton);
    CHECK(window.records()->find(added)->dropped_on == window.session->today());
    QTest::mouseClick(&window.button(QStringLiteral("Take up again")), Qt::LeftButton);
    CHECK_FALSE(window.records()->find(added)->dropped_on.has_value());
}

TEST_CASE("A question that is asked in the list of a section gives the keyboard back to the list")
{
    PartsWindow window;
    window.show({RecordType::Step, window.workshop.skin.value()});
    window.list().setFocus();
    REQUIRE(window.list().hasFocus());
    QTest::keyClick(&window.list(), Qt::Key_Delete);
    QLineEdit &why = window.field(QStringLiteral("Why"));
    REQUIRE(why.hasFocus());
    QTest::keyClick(&why, Qt::Key_Escape);
    CHECK(window.list().hasFocus());

    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Insert, Qt::ShiftModifier);
    QTest::keyClick(&window.field(QStringLiteral("Name")), Qt::Key_Escape);
    CHECK(window.tree().hasFocus());
}

TEST_CASE("What is being typed into a cell stays while something else of its record changes")
{
    PartsWindow window;
    window.show({RecordType::Step, window.workshop.skin.value()});
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_F2);
    auto *cell = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(cell);
    cell->selectAll();
    QTest::keyClicks(cell, QStringLiteral("Fit the lower skin"));
    window.session->change(QStringLiteral("Noted"), [&](Edit &edit) {
        edit.update(window.workshop.skin, [](Step &step) { step.note = "both sides"; });
    });
    CHECK(cell->text() == QStringLiteral("Fit the lower skin"));
    QTest::keyClick(cell, Qt::Key_Return);
    QApplication::processEvents();
    CHECK(window.records()->find(window.workshop.skin)->title == "Fit the lower skin");
    CHECK(window.records()->find(window.workshop.skin)->note == "both sides");
}

TEST_CASE("The squawks of a part are counted with those that are open, as in the tree")
{
    PartsWindow window;
    window.show({RecordType::Squawk, window.workshop.squawk.value()});
    CHECK(window.button(QStringLiteral("Squawks 1")).isVisible());
    window.session->change(QStringLiteral("Accepted"), [&](Edit &edit) {
        edit.update(window.workshop.squawk, [&](Squawk &squawk) {
            squawk.accepted_on = edit.today();
            squawk.accepted_by = window.workshop.builder;
            squawk.accepted_basis = "Drawing 4";
        });
    });
    CHECK(window.button(QStringLiteral("Squawks 0 open of 1")).isVisible());
}

TEST_CASE("What is typed for one section waits there, and does not become a record of another kind")
{
    PartsWindow window;
    window.show({RecordType::Squawk, window.workshop.squawk.value()});
    QTest::keyClicks(&window.field(QStringLiteral("New squawk")), QStringLiteral("Crack at rib"));
    window.show({RecordType::Step, window.workshop.skin.value()});
    CHECK(window.field(QStringLiteral("New step")).text().isEmpty());
    window.show({RecordType::Squawk, window.workshop.squawk.value()});
    CHECK(window.field(QStringLiteral("New squawk")).text() == QStringLiteral("Crack at rib"));
}

TEST_CASE("What is typed for one part waits with it, and does not become a record of another")
{
    PartsWindow window;
    const auto line = [&]() -> QLineEdit & { return window.field(QStringLiteral("New step")); };
    window.show({RecordType::Step, window.workshop.skin.value()});
    QTest::keyClicks(&line(), QStringLiteral("Deburr the skin"));
    window.show({RecordType::Component, window.workshop.rudder.value()});
    CHECK(line().text().isEmpty());
    QTest::keyClicks(&line(), QStringLiteral("Balance it"));
    window.show({RecordType::Component, window.workshop.bay.value()});
    CHECK(line().text() == QStringLiteral("Deburr the skin"));
    QTest::keyClick(&line(), Qt::Key_Return);
    CHECK(newest<Step>(*window.records()).title == "Deburr the skin");
    CHECK(newest<Step>(*window.records()).component_id == window.workshop.bay);
    window.show({RecordType::Component, window.workshop.rudder.value()});
    CHECK(line().text() == QStringLiteral("Balance it"));
}

TEST_CASE("A list that is too narrow leaves out what its form tells as well, and does not scroll")
{
    PartsWindow window;
    const Id<Fastener> bolt = putStrutBolt(window);
    window.show({RecordType::Fastener, bolt.value()});
    QCoreApplication::processEvents();
    QTreeView &list = window.list();
    enum Column { Place, Stands, Torque, Limits, Marked, Locked, Hardware };
    const auto isScrolled = [&] { return list.header()->length() > list.viewport()->width(); };
    CHECK_FALSE(isScrolled());
    CHECK(list.isColumnHidden(Hardware));
    for (const int column : {Place, Stands, Torque, Limits})
        CHECK_FALSE(list.isColumnHidden(column));

    // What somebody made wider stays so when a record is changed.
    list.header()->resizeSection(Stands, 140);
    window.session->change(QStringLiteral("Quantity"), [&](Edit &edit) {
        edit.update(bolt, [](Fastener &fastener) { fastener.quantity = 2; });
    });
    CHECK(list.header()->sectionSize(Stands) == 140);
    window.page.resize(2400, 700);
    QCoreApplication::processEvents();
    CHECK_FALSE(isScrolled());
    CHECK_FALSE(list.isColumnHidden(Hardware));
}

TEST_CASE("The fields of a record that stand beside something else are not cut off")
{
    PartsWindow window;
    const Id<Fastener> bolt = putStrutBolt(window);
    window.page.resize(1100, 680);
    window.show({RecordType::Fastener, bolt.value()});
    QCoreApplication::processEvents();
    const auto forms = window.page.findChildren<ui::RecordForm *>();
    const auto isSeen = [](const QWidget *each) { return each->isVisible(); };
    REQUIRE(std::ranges::count_if(forms, isSeen) == 1);
    const ui::RecordForm &form = **std::ranges::find_if(forms, isSeen);
    const QWidget &seen = *form.parentWidget()->parentWidget();
    for (const QLineEdit *line : form.findChildren<QLineEdit *>()) {
        CAPTURE(line->accessibleName().toStdString());
        CHECK(line->mapTo(&seen, QPoint(line->width(), 0)).x() <= seen.width());
    }
}

TEST_CASE("Steps are dragged within their part; another part's place is refused")
{
    Workshop workshop;
    const auto session = workshop.session();
    const Complaints complaints(*session);
    Id<Step> other;
    session->change(QStringLiteral("Step"), [&](Edit &edit) {
        other = acts::addStep(edit, workshop.wing, "Level the wing");
    });
    ui::SectionModel model(*session);
    ModelWatch watch(model);
    QObject::connect(session.get(), &ui::Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    model.show(section(RecordType::Step), workshop.wing, true);
    REQUIRE(model.rowCount() == 3);
    const auto rowOf = [&](Id<Step> step) { return model.rowOf({RecordType::Step, step.value()}); };
    const auto drag = [&](Id<Step> step, int before) {
        const std::unique_ptr<QMimeData> data(model.mimeData({model.index(rowOf(step), 0)}));
        model.dropMimeData(data.get(), Qt::MoveAction, before, 0, {});
    };
    drag(workshop.skin, rowOf(workshop.wires));
    CHECK(steps::stepsOf(*session->records(), workshop.bay) ==
          std::vector{workshop.skin, workshop.wires});
    CHECK(complaints.last.isEmpty());
    drag(workshop.wires, rowOf(other));
    CHECK(complaints.last == QStringLiteral("Steps change places within their part only."));
    watch.check();
}

TEST_CASE("The picture of steps is walked by keyboard, joins steps, and refuses a ring by name")
{
    PartsWindow window;
    const Complaints complaints(*window.session);
    Id<Step> paint;
    window.session->change(QStringLiteral("Step"), [&](Edit &edit) {
        paint = acts::addStep(edit, window.workshop.bay, "Paint");
    });
    window.show({RecordType::Step, window.workshop.wires.value()});
    QTest::mouseClick(&window.button(QStringLiteral("Drawn")), Qt::LeftButton);
    auto &picture = *window.page.findChild<ui::StepPicture *>();
    REQUIRE(picture.isVisible());
    CHECK(picture.hasFocus());
    CHECK(picture.current() == window.workshop.wires);
    QTest::keyClick(&picture, Qt::Key_Right);
    CHECK(picture.current() == window.workshop.skin);
    CHECK(picture.accessibleDescription().contains(QStringLiteral("after")));

    // Paint waits for the wires, by keyboard.
    QTest::keyClick(&picture, Qt::Key_Left);
    QTest::keyClick(&picture, Qt::Key_W);
    QTest::keyClick(&picture, Qt::Key_Down);
    CHECK(picture.current() == paint);
    QTest::keyClick(&picture, Qt::Key_W);
    CHECK(window.records()->find(paint)->after == IdSet<Step>{window.workshop.wires});
    CHECK(picture.boxOf(paint).left() > picture.boxOf(window.workshop.wires).left());

    // The wires cannot wait for the skin: by mouse, from box to box.
    const QPoint from = picture.boxOf(window.workshop.skin).center().toPoint();
    const QPoint to = picture.boxOf(window.workshop.wires).center().toPoint();
    for (const Qt::MouseButton button : {Qt::RightButton, Qt::LeftButton}) {
        // Only the left button joins.
        CHECK(complaints.last.isEmpty());
        QTest::mousePress(picture.viewport(), button, {}, from);
        QTest::mouseMove(picture.viewport(), to);
        QTest::mouseRelease(picture.viewport(), button, {}, to);
    }
    CHECK(window.records()->find(window.workshop.wires)->after.empty());
    CHECK(complaints.last.contains(
        QStringLiteral("Clamp the wires in bay 3 → Rivet the upper skin")));
}

TEST_CASE("A decision by a name that nobody has is not recorded as that of who was proposed")
{
    PartsWindow window;
    window.show({RecordType::Component, window.workshop.bay.value()});
    window.page.findChild<ui::PartDetail *>()->showRecord({RecordType::Deviation, 0});
    window.enter(QStringLiteral("New deviation: what differs"), QStringLiteral("Thicker doubler"));
    const auto id = newest<Deviation>(*window.records()).id;
    REQUIRE(window.session->change(QStringLiteral("Asked"), [&](Edit &edit) {
        edit.update(id, [&](Deviation &deviation) {
            deviation.asked_of = window.workshop.inspector;
            deviation.asked_on = edit.today();
        });
    }));
    QTest::mouseClick(&window.button(QStringLiteral("Mark as approved…")), Qt::LeftButton);
    window.field(QStringLiteral("On what basis")).setText(QStringLiteral("Letter of 12 March"));
    QLineEdit &by = window.field(QStringLiteral("By"));
    by.selectAll();
    QTest::keyClicks(&by, QStringLiteral("Quentin Zyx"));
    // Nor when it is pressed once more.
    for (int i = 0; i < 2; ++i) {
        QTest::keyClick(&by, Qt::Key_Return);
        CHECK_FALSE(window.records()->find(id)->decided_on.has_value());
        CHECK(by.text() == QStringLiteral("Quentin Zyx"));
    }
}

TEST_CASE(
    "A deviation goes from raised to built, with its letter, and stands in the whole list too")
{
    PartsWindow window;
    window.show({RecordType::Component, window.workshop.bay.value()});
    auto &detail = *window.page.findChild<ui::PartDetail *>();
    detail.showRecord({RecordType::Deviation, 0});
    window.enter(QStringLiteral("New deviation: what differs"), QStringLiteral("Thicker doubler"));
    const auto id = newest<Deviation>(*window.records()).id;
    const auto deviation = [&] { return *window.records()->find(id); };
    CHECK(deviation().component_ids == IdSet<Component>{window.workshop.bay});

    QTest::mouseClick(&window.button(QStringLiteral("Note who was asked…")), Qt::LeftButton);
    QLineEdit &who = window.field(QStringLiteral("Asked of"));
    QTest::keyClicks(&who, QStringLiteral("Sam"));
    QWidget *offer = QApplication::activePopupWidget();
    REQUIRE(offer);
    QTest::keyClick(offer, Qt::Key_Down);
    QTest::keyClick(offer, Qt::Key_Return);
    QTest::keyClick(&who, Qt::Key_Return);
    CHECK(deviation().asked_of == window.workshop.inspector);
    CHECK(deviation().asked_on == window.session->today());

    QTest::mouseClick(&window.button(QStringLiteral("Mark as approved…")), Qt::LeftButton);
    QTest::keyClick(&window.field(QStringLiteral("On what basis")), Qt::Key_Return);
    CHECK_FALSE(deviation().decided_on.has_value());
    window.enter(QStringLiteral("On what basis"), QStringLiteral("Letter of 12 March"));
    CHECK(deviation().decision == Decision::Approved);
    CHECK(deviation().decided_by == window.workshop.inspector);
    CHECK(deviation().basis == "Letter of 12 March");

    QTest::mouseClick(&window.button(QStringLiteral("Mark as built so…")), Qt::LeftButton);
    window.enter(QStringLiteral("On"), QStringLiteral("2026-03-14"));
    CHECK(deviation().built_on == Moment::parse("2026-03-14"));

    const TemporaryFolder folder;
    const auto letter = ui::pathText(folder / "letter.pdf");
    QFile file(letter);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("%PDF-1.4\n%%EOF\n");
    file.close();
    REQUIRE(detail.lists().acts().attach({letter}));
    REQUIRE(deviation().media_ids.size() == 1);
    CHECK(window.records()->find(deviation().media_ids.front())->kind == MediaKind::Document);

    // Offscreen, the closed list of names stays the active window.
    QApplication::setActiveWindow(window.page.window());
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Home, Qt::AltModifier);
    CHECK_FALSE(detail.shown());
    REQUIRE(window.list().model()->rowCount() == 1);
    CHECK(window.list().model()->index(0, 2).data().toString().startsWith(
        QStringLiteral("approved")));
}

TEST_CASE("A bulletin of the whole aircraft is noted, looked into, and complied with")
{
    PartsWindow window;
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Home, Qt::AltModifier);
    auto &detail = *window.page.findChild<ui::PartDetail *>();
    detail.showRecord({RecordType::Bulletin, 0});
    window.enter(QStringLiteral("New bulletin: its title"), QStringLiteral("Check the hinge pins"));
    const auto id = newest<Bulletin>(*window.records()).id;
    const auto bulletin = [&] { return *window.records()->find(id); };
    CHECK(bulletin().component_ids.empty());
    CHECK_FALSE(bulletin().applies.has_value());
    QTest::mouseClick(&window.button(QStringLiteral("Mark as applying")), Qt::LeftButton);
    CHECK(bulletin().applies == true);
    QTest::mouseClick(&window.button(QStringLiteral("Mark as complied with…")), Qt::LeftButton);
    window.enter(QStringLiteral("How, and by which paper"), QStringLiteral("Pins changed, B-4"));
    CHECK(bulletin().complied_on == window.session->today());
    CHECK(bulletin().basis == "Pins changed, B-4");
    // It belongs to no single part.
    window.show({RecordType::Component, window.workshop.wing.value()});
    CHECK(window.list().model()->rowCount() == 0);
    window.show({RecordType::Bulletin, id.value()});
    CHECK(window.list().model()->rowCount() == 1);
}

} // namespace lastrivet::test
