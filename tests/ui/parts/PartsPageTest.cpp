// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartsPage.h"

#include "core/project/acts/PartActs.h"
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/ModelWatch.h"
#include "ui/parts/PartDetail.h"
#include "ui/parts/PartTreeModel.h"
#include "ui/parts/SectionChoice.h"
#include "ui/parts/SectionModel.h"

#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <algorithm>
#include <memory>
#include <random>
#include <vector>

namespace lastrivet::test {

TEST_CASE("Parts are added inside and beside, moved and withdrawn by keyboard")
{
    PartsWindow window;
    window.page.showRecord({RecordType::Component, window.workshop.wing.value()});
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Insert, Qt::ShiftModifier);
    QTest::keyClicks(&window.field(QStringLiteral("Name")), QStringLiteral("Bay 4"));
    QTest::keyClick(&window.field(QStringLiteral("Name")), Qt::Key_Return);
    auto inside = acts::partsInside(*window.session->records(), window.workshop.wing);
    REQUIRE(inside.size() == 2);
    const auto added = inside.back();
    CHECK(window.session->records()->find(added)->name == "Bay 4");

    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Up, Qt::AltModifier);
    CHECK(acts::partsInside(*window.session->records(), window.workshop.wing).front() == added);
    QTest::keyClick(&window.tree(), Qt::Key_Left, Qt::AltModifier);
    CHECK_FALSE(window.session->records()->find(added)->parent_id);
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Right, Qt::AltModifier);
    CHECK(window.session->records()->find(added)->parent_id == window.workshop.wing);

    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Delete);
    // A part without a code is asked about by its name alone.
    CHECK(says(window.page,
               QStringLiteral("Part “Bay 4” will count nowhere any more; the journal keeps it.")));
    QTest::keyClicks(&window.field(QStringLiteral("Why")), QStringLiteral("no such bay"));
    QTest::keyClick(&window.field(QStringLiteral("Why")), Qt::Key_Return);
    CHECK_FALSE(window.session->records()->findLive(added));
    // What stood beside it is chosen now, not the whole aircraft.
    CHECK(window.page.shownPart() == window.workshop.bay);
}

TEST_CASE("A step is ticked and unticked in the list, and a new one is added below")
{
    PartsWindow window;
    window.page.showRecord({RecordType::Step, window.workshop.wires.value()});
    auto &list = *window.page.findChild<ui::PartDetail *>()->list();
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_Space);
    CHECK(window.session->records()->find(window.workshop.wires)->done_on ==
          window.session->today());
    CHECK(window.session->project().undoLabel() == "Clamp the wires in bay 3: done");
    window.session->undo();
    CHECK_FALSE(window.session->records()->find(window.workshop.wires)->done_on.has_value());
    QLineEdit &added = window.field(QStringLiteral("New step"));
    QTest::keyClicks(&added, QStringLiteral("Prime the web"));
    QTest::keyClick(&added, Qt::Key_Return);
    CHECK(window.session->records()->steps.size() == 3);
}

TEST_CASE("The Tab key comes to the sections of a part before it comes to what they hold")
{
    PartsWindow window;
    window.page.showRecord({RecordType::Step, window.workshop.wires.value()});
    const auto &detail = *window.page.findChild<ui::PartDetail *>();
    const auto *choice = detail.findChild<ui::SectionChoice *>();
    REQUIRE(choice);
    // From the first widget of the detail on, in the order of the key.
    std::vector<const QWidget *> order;
    for (const QWidget *next = detail.nextInFocusChain(); detail.isAncestorOf(next);
         next = next->nextInFocusChain())
        order.push_back(next);
    const auto button = std::ranges::find_if(
        order, [&](const QWidget *widget) { return widget->parentWidget() == choice; });
    const QWidget *view = detail.list();
    const auto list = std::ranges::find(order, view);
    REQUIRE(button != order.end());
    REQUIRE(list != order.end());
    CHECK(button < list);
}

TEST_CASE("A click on a section takes the keyboard along from the section where it was")
{
    PartsWindow window;
    window.page.showRecord({RecordType::Step, window.workshop.wires.value()});
    auto *choice = window.page.findChild<ui::SectionChoice *>();
    REQUIRE(choice);
    const auto buttons = choice->findChildren<QPushButton *>();
    QPushButton *before = buttons[choice->chosen()];
    before->setFocus();
    const auto found = std::ranges::find_if(buttons, [before](const QPushButton *button) {
        return button != before && button->isVisible();
    });
    REQUIRE(found != buttons.end());
    QPushButton *other = *found;
    QTest::mouseClick(other, Qt::LeftButton);
    CHECK(other->isChecked());
    CHECK(window.page.focusWidget() == other);
    window.list().setFocus();
    QTest::mouseClick(before, Qt::LeftButton);
    CHECK(window.page.focusWidget() != before);
}

TEST_CASE("The tree tells hours, squawks and photos with everything below")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::PartTreeModel model(*session);
    const auto wing = model.figures(workshop.wing);
    CHECK(wing.minutes == Minutes{135});
    CHECK(wing.open_squawks == 1);
    CHECK(model.figures(workshop.bay) == wing);
    CHECK(model.indexOf(workshop.wing, ui::PartTreeModel::HoursColumn).data().toString() ==
          QStringLiteral("2 h 15"));
    CHECK(model.figures(workshop.rudder) == ui::PartFigures{});
    CHECK(model.figures({}).minutes == Minutes{195});
}

TEST_CASE("The whole aircraft counts photos that belong to no part, and a closing's are its part's")
{
    Workshop workshop;
    const auto session = workshop.session();
    session->change(QStringLiteral("Photos"), [&](Edit &edit) {
        Media loose;
        loose.file = "media/a.jpg";
        loose.sha256 = std::string(64, 'a');
        loose.imported_on = edit.today();
        edit.put(loose);
        Media inside = loose;
        inside.file = "media/b.jpg";
        inside.sha256 = std::string(64, 'b');
        inside.links = {{RecordType::Closing, workshop.aileronClosing.value()}};
        edit.put(inside);
    });
    ui::PartTreeModel model(*session);
    CHECK(model.figures({}).photos == 2);
    CHECK(model.figures(workshop.aileron).photos == 1);
    CHECK(model.figures(workshop.rudder).photos == 0);
}

TEST_CASE("A slip in the filter does not lose the part that is looked at")
{
    PartsWindow window;
    window.show({RecordType::Component, window.workshop.rudder.value()});
    QLineEdit &filter = window.field(QStringLiteral("Filter the parts"));
    QTest::keyClicks(&filter, QStringLiteral("rux"));
    CHECK_FALSE(window.page.shownPart());
    QTest::keyClick(&filter, Qt::Key_Backspace);
    CHECK(window.page.shownPart() == window.workshop.rudder);
    filter.clear();
    CHECK(window.page.shownPart() == window.workshop.rudder);
}

TEST_CASE("Typed words leave the parts that fit, with what they lie in, and say how many fit")
{
    PartsWindow window;
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Slash);
    QLineEdit &line = window.field(QStringLiteral("Filter the parts"));
    CHECK(line.hasFocus());
    QTest::keyClicks(&line, QStringLiteral("3 bay"));
    const auto &shown = *window.tree().model();
    REQUIRE(shown.rowCount() == 1);
    CHECK(shown.index(0, 0).data().toString() == QStringLiteral("LW Left wing"));
    REQUIRE(shown.rowCount(shown.index(0, 0)) == 1);
    CHECK(window.tree().isExpanded(shown.index(0, 0)));
    QStringList labels;
    for (const auto *label : window.page.findChildren<QLabel *>())
        labels.append(label->text());
    CHECK(labels.contains(QStringLiteral("1 fit")));
    // A part that comes to fit is shown at once.
    window.session->change(QStringLiteral("Renamed"), [&](Edit &edit) {
        edit.update(window.workshop.rudder, [](Component &part) { part.name = "Bay rudder 3"; });
    });
    CHECK(shown.rowCount() == 2);
    line.clear();
    CHECK(shown.rowCount() == 3);
}

TEST_CASE(
    "Several chosen parts get zone and shelf in one change, and are withdrawn with one reason")
{
    PartsWindow window;
    window.show({RecordType::Component, window.workshop.aileron.value()});
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Down, Qt::ShiftModifier);
    // The Tab key comes to the fields as they stand.
    const QWidget *next = window.field(QStringLiteral("Place")).nextInFocusChain();
    while (!(next->focusPolicy() & Qt::TabFocus))
        next = next->nextInFocusChain();
    CHECK(next == &window.field(QStringLiteral("Shelf")));
    window.field(QStringLiteral("Zone")).setText(QStringLiteral("controls"));
    window.field(QStringLiteral("Shelf")).setText(QStringLiteral("C1"));
    QTest::mouseClick(&window.button(QStringLiteral("Set for all")), Qt::LeftButton);
    for (const auto part : {window.workshop.aileron, window.workshop.rudder}) {
        CHECK(window.records()->find(part)->zone == "controls");
        CHECK(window.records()->find(part)->shelf == "C1");
        CHECK(window.records()->find(part)->kind == ComponentKind::ControlSurface);
    }
    CHECK(window.records()->find(window.workshop.wing)->zone.empty());
    window.session->undo();
    CHECK(window.records()->find(window.workshop.rudder)->zone.empty());
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Delete);
    window.enter(QStringLiteral("Why"), QStringLiteral("sold"));
    CHECK_FALSE(window.records()->findLive(window.workshop.aileron));
    CHECK_FALSE(window.records()->findLive(window.workshop.rudder));
    CHECK(window.records()->find(window.workshop.rudder)->withdrawn_why == "sold");
}

TEST_CASE("A section writes torque and day together, and refuses words that are no number")
{
    Workshop workshop;
    const auto session = workshop.session();
    Id<Fastener> bolt;
    session->change(QStringLiteral("Bolt"), [&](Edit &edit) {
        bolt = edit.put(Fastener{.component_id = workshop.bay,
                                 .place = "Bracket",
                                 .torque_min = 20,
                                 .torque_max = 25,
                                 .fitted_on = edit.today()});
    });
    ui::SectionModel model(*session);
    ModelWatch watch(model);
    QObject::connect(session.get(), &ui::Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    model.show(ui::partSections()[std::size_t(ui::sectionFor(RecordType::Fastener))], workshop.wing,
               true);
    REQUIRE(model.rowCount() == 1);
    CHECK(model.setData(model.index(0, 2), QStringLiteral("22.5"), Qt::EditRole));
    CHECK(session->records()->find(bolt)->torque_value == 22.5);
    CHECK(session->records()->find(bolt)->torqued_on == session->today());
    CHECK_FALSE(model.setData(model.index(0, 2), QStringLiteral("tight"), Qt::EditRole));
    CHECK(session->records()->find(bolt)->torque_value == 22.5);
    CHECK(model.setData(model.index(0, 4), Qt::Checked, Qt::CheckStateRole));
    CHECK(session->records()->find(bolt)->marked_on == session->today());
    watch.check();
}

TEST_CASE("The parts page is shown whole, in light and in dark")
{
    PartsWindow window;
    window.page.showRecord({RecordType::Step, window.workshop.wires.value()});
    lightAndDark(window.page, 1120, 660, "parts");
    CHECK(says(window.page, QStringLiteral("Bay 3")));
    CHECK(window.list().model()->rowCount() == 2);
}

TEST_CASE("A part is withdrawn also while a copy of it is being prepared")
{
    PartsWindow window;
    window.page.showRecord({RecordType::Component, window.workshop.rudder.value()});
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_D, Qt::ControlModifier);
    CHECK(window.button(QStringLiteral("Make the copy")).isVisible());
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_Delete);
    window.enter(QStringLiteral("Why"), QStringLiteral("sold"));
    CHECK_FALSE(window.records()->findLive(window.workshop.rudder));
}

TEST_CASE("A column of the tree in which no part has anything is not there")
{
    PartsWindow window;
    window.page.resize(2400, 700);
    QCoreApplication::processEvents();
    CHECK(window.tree().isColumnHidden(ui::PartTreeModel::PhotosColumn));
    CHECK_FALSE(window.tree().isColumnHidden(ui::PartTreeModel::SquawksColumn));
    CHECK_FALSE(window.tree().isColumnHidden(ui::PartTreeModel::HoursColumn));
    window.session->change(QStringLiteral("Photo"), [&](Edit &edit) {
        Media photo;
        photo.file = "media/a.jpg";
        photo.sha256 = std::string(64, 'a');
        photo.imported_on = edit.today();
        photo.links = {{RecordType::Component, window.workshop.bay.value()}};
        edit.put(photo);
    });
    CHECK_FALSE(window.tree().isColumnHidden(ui::PartTreeModel::PhotosColumn));
    window.session->undo();
    CHECK(window.tree().isColumnHidden(ui::PartTreeModel::PhotosColumn));
}

TEST_CASE("The hours of years of work are not cut off in the tree")
{
    PartsWindow window;
    window.session->change(QStringLiteral("Years"), [&](Edit &edit) {
        WorkSession evening;
        evening.component_id = window.workshop.bay;
        evening.began = *Moment::parse("2026-03-01");
        evening.kind = WorkKind::Assembly;
        evening.minutes = Minutes{1000};
        for (int count = 0; count < 1500; ++count)
            edit.put(evening);
    });
    QTreeView &tree = window.tree();
    bool isAnyLong = false;
    for (int row = 0; row < tree.model()->rowCount(); ++row) {
        const auto hours = tree.model()->index(row, ui::PartTreeModel::HoursColumn);
        isAnyLong = isAnyLong || hours.data().toString().size() >= 10;
        CHECK(tree.columnWidth(hours.column()) >= tree.sizeHintForIndex(hours).width());
    }
    CHECK(isAnyLong);
}

TEST_CASE("The name of a part that lies deep in the tree can be read")
{
    PartsWindow window;
    Id<Component> deepest = window.workshop.wing;
    window.session->change(QStringLiteral("Deep"), [&](Edit &edit) {
        for (int level = 0; level < 30; ++level) {
            Component part;
            part.name = "Bracket";
            part.parent_id = deepest;
            deepest = edit.put(part);
        }
    });
    constexpr int readable = 80;
    const auto roomForName = [&](Id<Component> part) {
        window.show({RecordType::Component, part.value()});
        QCoreApplication::processEvents();
        const QRect name = window.tree().visualRect(window.tree().currentIndex());
        const int end = std::min(name.right(), window.tree().viewport()->width());
        return name.left() < 0 ? 0 : end - name.left();
    };
    CHECK(roomForName(deepest) > readable);
    CHECK(roomForName(window.workshop.wing) > readable);
    CHECK(window.tree().horizontalScrollBar()->value() == 0);
}

TEST_CASE("Who has scrolled the tree sideways stays there from one part to the next")
{
    PartsWindow window;
    Id<Component> above = window.workshop.wing;
    Id<Component> first;
    window.session->change(QStringLiteral("Deep"), [&](Edit &edit) {
        const auto add = [&edit](Id<Component> parent, std::int64_t position) {
            Component part;
            part.name = "Bracket";
            part.parent_id = parent;
            part.position = position;
            return edit.put(part);
        };
        for (int level = 0; level < 30; ++level)
            above = add(above, 1);
        first = add(above, 1);
        add(above, 2);
    });
    window.show({RecordType::Component, first.value()});
    QCoreApplication::processEvents();
    QScrollBar &bar = *window.tree().horizontalScrollBar();
    REQUIRE(bar.maximum() > bar.value());
    bar.setValue(bar.maximum());
    const QModelIndex before = window.tree().currentIndex();
    QTest::keyClick(&window.tree(), Qt::Key_Down);
    QCoreApplication::processEvents();
    CHECK(window.tree().currentIndex() != before);
    CHECK(bar.value() == bar.maximum());
}

} // namespace lastrivet::test
