// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchView.h"

#include "tests/ui/support/BenchWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/convert/QtText.h"
#include "ui/photos/PictureView.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/ProjectView.h"

#include <QAccessible>
#include <QLineEdit>
#include <QListView>
#include <QMenuBar>
#include <QPushButton>
#include <QSettings>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::ui {

namespace {

using Bench = test::BenchWindow;

} // namespace

TEST_CASE("The bench begins with the part that was worked on last")
{
    Bench bench;
    CHECK(bench.view->part() == bench.workshop.bay);
    CHECK(bench.says(QStringLiteral("LW-B3 Bay 3")));
    const auto &steps = bench.list(QStringLiteral("Next steps")).rows();
    REQUIRE(steps.rowCount() == 2);
    CHECK(steps.row(0).action == QStringLiteral("Tick off"));
    // The closing step waits for the first.
    CHECK(steps.row(1).action.isEmpty());
    CHECK(bench.list(QStringLiteral("Lines to check")).rows().rowCount() == 3);
    REQUIRE(bench.list(QStringLiteral("Must stay open here")).rows().rowCount() == 1);
    CHECK(bench.list(QStringLiteral("Must stay open here")).rows().row(0).record.id ==
          bench.workshop.wingClosing.value());
}

TEST_CASE("Work is started and stopped by key, and the log entry is that of the part")
{
    Bench bench;
    bench.key(Qt::Key_F2);
    REQUIRE(bench.session->timer());
    CHECK(bench.session->timer()->component_id == bench.workshop.bay);
    bench.workshop.clock.advance(std::chrono::minutes{47});
    bench.key(Qt::Key_F2);
    QLineEdit &done = bench.line(QStringLiteral("Done"));
    QTest::keyClicks(&done, QStringLiteral("drilled and riveted the clamps"));
    QTest::keyClick(&done, Qt::Key_Return);
    CHECK_FALSE(bench.session->timer());
    const WorkSession *logged = nullptr;
    for (const WorkSession &session : bench.records().work_sessions) {
        if (session.note == "drilled and riveted the clamps")
            logged = &session;
    }
    REQUIRE(logged);
    CHECK(logged->component_id == bench.workshop.bay);
    CHECK(logged->minutes == Minutes{47});
    CHECK(logged->began == Moment::parse("2026-03-14T18:00"));
    REQUIRE(logged->workers.size() == 1);
    CHECK(logged->workers.front().person_id == bench.workshop.builder);
}

TEST_CASE("Who presses the button twice at once has started work, and is not asked how it ended")
{
    Bench bench;
    QPushButton *start = test::button(*bench.view, QStringLiteral("Start work (F2)"));
    REQUIRE(start);
    QTest::mouseClick(start, Qt::LeftButton);
    QTest::mouseDClick(start, Qt::LeftButton);
    QTest::mouseRelease(start, Qt::LeftButton);
    CHECK(bench.session->timer());
    REQUIRE(test::button(*bench.view, QStringLiteral("Stop work (F2)")) == start);
    const auto lines = bench.view->findChildren<QLineEdit *>();
    CHECK(std::ranges::none_of(lines, [](const QLineEdit *line) {
        return line->isVisible() && line->accessibleName() == QStringLiteral("Done");
    }));
}

TEST_CASE("A clock that was forgotten is not believed")
{
    Bench bench;
    bench.key(Qt::Key_F2);
    bench.workshop.clock.advance(std::chrono::hours{14});
    bench.key(Qt::Key_F2);
    CHECK(bench.says(QStringLiteral("The clock has run for 14 h 00.")));
    QTest::keyClick(&bench.line(QStringLiteral("Done")), Qt::Key_Return);
    CHECK(bench.session->timer());
    QTest::keyClicks(&bench.line(QStringLiteral("Worked for")), QStringLiteral("1h30"));
    QTest::keyClick(&bench.line(QStringLiteral("Worked for")), Qt::Key_Return);
    CHECK_FALSE(bench.session->timer());
}

TEST_CASE("Pauses and what was noted at the clock are the same at the bench as in the log")
{
    Bench bench;
    bench.key(Qt::Key_F2);
    auto progress = bench.session->timerProgress();
    bench.workshop.clock.advance(std::chrono::minutes{20});
    pause(progress, bench.session->now());
    progress.note = "clamps drilled";
    bench.session->setTimerProgress(progress);
    CHECK(bench.says(QStringLiteral("Paused after 0 h 20")));
    bench.workshop.clock.advance(std::chrono::hours{3});
    bench.key(Qt::Key_F2);
    QLineEdit &done = bench.line(QStringLiteral("Done"));
    CHECK(done.text() == QStringLiteral("clamps drilled"));
    CHECK(bench.line(QStringLiteral("Worked for")).text() == QStringLiteral("0 h 20"));
    QTest::keyClick(&done, Qt::Key_Return);
    CHECK_FALSE(bench.session->timer());
    const auto &sessions = bench.records().work_sessions;
    const WorkSession &logged = *sessions.find(Id<WorkSession>{sessions.greatestId()});
    CHECK(logged.minutes == Minutes{20});
    CHECK(logged.note == "clamps drilled");
}

TEST_CASE("The next step is ticked by one key, and taken back by undo")
{
    Bench bench;
    bench.key(Qt::Key_F3);
    CHECK(bench.records().find(bench.workshop.wires)->done_on == Moment::parse("2026-03-14"));
    CHECK(bench.list(QStringLiteral("Next steps")).rows().rowCount() == 1);
    bench.key(Qt::Key_F3);
    CHECK(bench.says(QStringLiteral("No step of this part can be worked on now.")));
    bench.session->undo();
    CHECK_FALSE(bench.records().find(bench.workshop.wires)->done_on);
}

TEST_CASE("A bolt is fitted, torqued with what the wrench said, locked and sealed")
{
    Bench bench;
    const auto torque = QStringLiteral("Torque and lock");
    bench.actOnFirst(torque);
    CHECK(bench.hinge().fitted_on);
    bench.actOnFirst(torque);
    QLineEdit &value = bench.line(QStringLiteral("Torque in in-lb"));
    CHECK(bench.says(QStringLiteral("20 to 25 in-lb")));
    QTest::keyClicks(&value, QStringLiteral("tight"));
    QTest::keyClick(&value, Qt::Key_Return);
    CHECK_FALSE(bench.hinge().torqued_on);
    value.clear();
    QTest::keyClicks(&value, QStringLiteral("22.5"));
    QTest::keyClick(&value, Qt::Key_Return);
    CHECK(bench.hinge().torque_value == 22.5);
    bench.actOnFirst(torque);
    CHECK(bench.hinge().locked_on);
    bench.actOnFirst(torque);
    CHECK(bench.hinge().marked_on);
    CHECK(bench.list(torque).rows().row(0).action.isEmpty());
}

TEST_CASE("Lines are ticked by touch, anywhere in the row")
{
    Bench bench;
    RowListView &lines = bench.list(QStringLiteral("Lines to check"));
    const auto first = Id<Check>{lines.rows().row(0).record.id};
    const QRect row = lines.visualRect(lines.model()->index(0, 0));
    CHECK(row.height() >= 56);
    QTest::mouseClick(lines.viewport(), Qt::LeftButton, {}, row.topLeft() + QPoint(20, 20));
    CHECK(bench.records().find(first)->done_on);
    CHECK(bench.records().find(first)->done_by == bench.workshop.builder);
    CHECK(lines.rows().rowCount() == 2);
}

TEST_CASE("A squawk and a note go to the part with a line each")
{
    Bench bench;
    bench.key(Qt::Key_F4);
    QLineEdit &squawk = bench.line(QStringLiteral("New squawk"));
    CHECK(squawk.hasFocus());
    QTest::keyClicks(&squawk, QStringLiteral("Crack at the lightening hole"));
    QTest::keyClick(&squawk, Qt::Key_Return);
    const Squawk *found = nullptr;
    for (const Squawk &known : bench.records().squawks) {
        if (known.title == "Crack at the lightening hole")
            found = &known;
    }
    REQUIRE(found);
    CHECK(found->component_id == bench.workshop.bay);
    CHECK(found->number == "2");
    CHECK(squawk.text().isEmpty());
    bench.key(Qt::Key_F5);
    QLineEdit &note = bench.line(QStringLiteral("Note"));
    QTest::keyClicks(&note, QStringLiteral("Mind the grommet"));
    QTest::keyClick(&note, Qt::Key_Return);
    CHECK(bench.records().find(bench.workshop.bay)->note == "2026-03-14: Mind the grommet");
}

TEST_CASE("Another part is found by typing, and Escape goes back")
{
    Bench bench;
    bench.key(Qt::Key_F6);
    QLineEdit &line = bench.line(QStringLiteral("Part"));
    CHECK(line.hasFocus());
    test::picture(*bench.view, 1280, 720, "bench-parts");
    QTest::keyClicks(&line, QStringLiteral("left ail"));
    QTest::keyClick(&line, Qt::Key_Return);
    CHECK(bench.view->part() == bench.workshop.aileron);
    bench.key(Qt::Key_F6);
    QTest::keyClick(&bench.line(QStringLiteral("Part")), Qt::Key_Escape);
    CHECK(bench.view->part() == bench.workshop.aileron);
    CHECK(bench.says(QStringLiteral("Left aileron")));
}

TEST_CASE("Keys of a part do nothing while the part is still to be chosen, and say so")
{
    Bench bench;
    bench.key(Qt::Key_F6);
    QTest::keyClick(&bench.line(QStringLiteral("Part")), Qt::Key_F3);
    CHECK_FALSE(bench.records().find(bench.workshop.wires)->done_on);
    CHECK(bench.says(QStringLiteral("Choose the part first.")));
    QTest::keyClick(&bench.line(QStringLiteral("Part")), Qt::Key_F2);
    CHECK_FALSE(bench.session->timer());
}

TEST_CASE(
    "A picture of the bench is shown as large as the bench, and Escape leads back to the part")
{
    Bench bench;
    bench.session->change(QStringLiteral("Pictures"), [&](Edit &edit) {
        for (const char *file : {"photos/a.jpg", "photos/b.jpg"}) {
            Media media;
            media.file = file;
            media.caption = file;
            media.links = {{RecordType::Component, bench.workshop.bay.value()}};
            edit.put(media);
        }
    });
    QListView &pictures = test::list(*bench.view, QStringLiteral("Newest pictures"));
    REQUIRE(pictures.model()->rowCount() == 2);
    bool isLeft = false;
    QObject::connect(bench.view.get(), &BenchView::left, bench.view.get(), [&] { isLeft = true; });
    pictures.setCurrentIndex(pictures.model()->index(0, 0));
    QTest::keyClick(&pictures, Qt::Key_Return);
    auto *large = bench.view->findChild<PictureView *>();
    REQUIRE(large);
    CHECK(large->isVisible());
    const QString first = large->accessibleName();
    QTest::keyClick(large, Qt::Key_PageDown);
    CHECK(large->accessibleName() != first);
    QTest::keyClick(large, Qt::Key_PageDown);
    CHECK(large->isVisible());
    QTest::keyClick(large, Qt::Key_Escape);
    CHECK_FALSE(large->isVisible());
    CHECK(pictures.isVisible());
    CHECK(pictures.currentIndex().row() == 1);
    CHECK_FALSE(isLeft);
    bench.key(Qt::Key_Escape);
    CHECK(isLeft);
}

TEST_CASE("F11 covers the screen with the bench; F11 or Escape gives it back")
{
    test::Workshop workshop;
    test::TemporaryFolder folder;
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    MainWindow window{{settings, workshop.executor, test::theme(), workshop.clock}};
    REQUIRE(window.openFolder(pathText(workshop.folder())));
    test::picture(window, 1280, 720, "bench-before");
    QTest::keyClick(&window, Qt::Key_F11);
    REQUIRE(window.bench());
    CHECK(window.isFullScreen());
    CHECK_FALSE(window.menuBar()->isVisible());
    for (QWidget *widget : window.bench()->findChildren<QWidget *>()) {
        if (!(widget->focusPolicy() & Qt::TabFocus) || !widget->isVisible())
            continue;
        auto *interface = QAccessible::queryAccessibleInterface(widget);
        INFO(widget->metaObject()->className());
        CHECK((!interface || !interface->text(QAccessible::Name).isEmpty()));
        if (qobject_cast<QPushButton *>(widget) && !widget->property("flat").toBool())
            CHECK(widget->height() >= 44);
    }
    QTest::keyClick(window.bench(), Qt::Key_Escape);
    CHECK_FALSE(window.bench());
    CHECK_FALSE(window.isFullScreen());
    CHECK(window.menuBar()->isVisible());
    QTest::keyClick(&window, Qt::Key_F11);
    REQUIRE(window.bench());
    QTest::keyClick(&window, Qt::Key_F11);
    CHECK_FALSE(window.bench());
    // A project that is closed takes its bench along.
    QTest::keyClick(&window, Qt::Key_F11);
    window.closeProject();
    CHECK_FALSE(window.bench());
    QCoreApplication::processEvents();
}

TEST_CASE("F11 takes the part that is chosen among the parts to the bench")
{
    test::WholeWindow opened;
    opened.openAndShow();
    MainWindow &window = opened.window;
    window.view()->goTo({RecordType::Component, opened.workshop.rudder.value()});
    QTest::keyClick(&window, Qt::Key_F11);
    REQUIRE(window.bench());
    CHECK(window.bench()->part() == opened.workshop.rudder);
    QTest::keyClick(&window, Qt::Key_F11);
    // From elsewhere it is the one that was worked on last.
    window.view()->open(PageId::Log);
    QTest::keyClick(&window, Qt::Key_F11);
    REQUIRE(window.bench());
    CHECK(window.bench()->part() == opened.workshop.bay);
    window.closeProject();
    QCoreApplication::processEvents();
}

} // namespace lastrivet::ui
