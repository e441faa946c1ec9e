// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchView.h"

#include "tests/ui/support/BenchWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/shell/MainWindow.h"
#include "ui/widgets/ActLine.h"

// What is typed at the bench and not written down yet.
namespace lastrivet::ui {

namespace {

using Bench = test::BenchWindow;

} // namespace

TEST_CASE("A torque that is half typed waits while another part is looked at")
{
    Bench bench;
    const auto torque = QStringLiteral("Torque and lock");
    const auto value = QStringLiteral("Torque in in-lb");
    bench.actOnFirst(torque);
    bench.actOnFirst(torque);
    QTest::keyClicks(&bench.line(value), QStringLiteral("22"));
    auto *ask = bench.view->findChild<ActLine *>();
    REQUIRE(ask);
    bench.view->showPart(bench.workshop.aileron);
    CHECK_FALSE(ask->isVisible());
    CHECK(ask->isBegun());
    SECTION("and is there with its part again")
    {
        bench.view->showPart(bench.workshop.bay);
        CHECK(bench.line(value).text() == QStringLiteral("22"));
    }
    SECTION("also when the keyboard goes to it")
    {
        bench.key(Qt::Key_F6);
        ask->takeKeyboard();
        CHECK(bench.view->part() == bench.workshop.bay);
        CHECK(bench.says(QStringLiteral("LW-B3 Bay 3")));
    }
    QTest::keyClicks(&bench.line(value), QStringLiteral(".5"));
    QTest::keyClick(&bench.line(value), Qt::Key_Return);
    CHECK(bench.hinge().torque_value == 22.5);
    CHECK_FALSE(ask->isBegun());
}

TEST_CASE("What is typed at the bench and not written down is there when the bench is back")
{
    Bench bench;
    QTest::keyClicks(&bench.line(QStringLiteral("New squawk")), QStringLiteral("Crack at the"));
    QTest::keyClicks(&bench.line(QStringLiteral("Note")), QStringLiteral("Mind the"));
    bench.view->hide();
    bench.view = std::make_unique<BenchView>(*bench.session);
    test::picture(*bench.view, 1280, 720, "bench-again");
    QLineEdit &squawk = bench.line(QStringLiteral("New squawk"));
    CHECK(squawk.text() == QStringLiteral("Crack at the"));
    CHECK(bench.line(QStringLiteral("Note")).text() == QStringLiteral("Mind the"));
    QTest::keyClick(&squawk, Qt::Key_Return);
    // At once: after a crash it would be written down twice.
    CHECK_FALSE(bench.session->project().localState("bench_squawk"));
    bench.view->hide();
    CHECK(bench.session->project().localState("bench_note") == "Mind the");
}

TEST_CASE("Whose note it is that was typed for another part is said when the part is changed")
{
    Bench bench;
    const auto goesTo = QStringLiteral("goes to LA Left aileron now");
    bench.view->showPart(bench.workshop.aileron);
    CHECK_FALSE(bench.says(goesTo));
    bench.view->showPart(bench.workshop.bay);
    QTest::keyClicks(&bench.line(QStringLiteral("Note")), QStringLiteral("Mind the grommet"));
    bench.view->showPart(bench.workshop.aileron);
    CHECK(bench.says(goesTo));
    QTest::keyClick(&bench.line(QStringLiteral("Note")), Qt::Key_Return);
    CHECK(bench.records().find(bench.workshop.bay)->note.empty());
    CHECK(bench.records().find(bench.workshop.aileron)->note == "2026-03-14: Mind the grommet");
}

TEST_CASE("A torque that is half typed holds the bench back once")
{
    test::WholeWindow opened;
    opened.openAndShow();
    MainWindow &window = opened.window;
    window.toggleBench();
    REQUIRE(window.bench());
    auto *ask = window.bench()->findChild<ActLine *>();
    REQUIRE(ask);
    const ActLine::Question question{
        .words = QStringLiteral("Which torque?"),
        .confirm = QStringLiteral("Record it"),
        .textLabel = QStringLiteral("Torque"),
    };
    ask->ask(question, [](const ActLine::Answer &) { return true; });
    ask->findChild<QLineEdit *>()->setText(QStringLiteral("22"));
    REQUIRE(ask->isBegun());
    SECTION("F11 once more leaves it")
    {
        window.toggleBench();
        REQUIRE(window.bench());
        CHECK(test::says(*window.bench(), QStringLiteral("What is begun here is not kept.")));
        window.toggleBench();
        CHECK_FALSE(window.bench());
    }
    SECTION("so does Escape, after it has dropped the torque")
    {
        QTest::keyClick(ask, Qt::Key_Escape);
        CHECK_FALSE(ask->isBegun());
        REQUIRE(window.bench());
        QTest::keyClick(window.bench(), Qt::Key_Escape);
        CHECK_FALSE(window.bench());
    }
}

} // namespace lastrivet::ui
