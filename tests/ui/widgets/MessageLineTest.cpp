// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/MessageLine.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/shell/Progress.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QVBoxLayout>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("Work that goes on is shown, and can be stopped, when other work has come and gone")
{
    test::theme();
    MessageLine line;
    const auto photos = std::make_shared<Progress>(QStringLiteral("Taking in photos"));
    const auto lists = std::make_shared<Progress>(QStringLiteral("Writing lists"));
    line.follow(photos);
    line.follow(lists);
    test::picture(line, 900, 40, "message-line");
    CHECK(test::says(line, QStringLiteral("Writing lists; 1 more at work")));
    line.forget(lists);
    CHECK(test::says(line, QStringLiteral("Taking in photos")));
    test::press(line, QStringLiteral("Cancel"));
    CHECK(photos->isCancelled());
    CHECK_FALSE(lists->isCancelled());
    CHECK_FALSE(test::button(line, QStringLiteral("Cancel")));
    line.forget(photos);
    CHECK_FALSE(test::says(line, QStringLiteral("Taking in photos")));
}

TEST_CASE("A complaint outlasts what comes by itself, and gives way to what a person does")
{
    test::theme();
    QWidget window;
    auto *edit = new QLineEdit(&window);
    auto *line = new MessageLine(&window);
    auto *layout = new QVBoxLayout(&window);
    layout->addWidget(edit);
    layout->addWidget(line);
    test::picture(window, 900, 90, "message-line-complaint");
    const QString complaint = QStringLiteral("The disk is full.");
    const QString byItself = QStringLiteral("1 came in from the watched folder.");
    SECTION("it is shown when the complaint is dismissed")
    {
        line->complain(complaint);
        line->say(byItself, false);
        CHECK(line->text() == complaint);
        test::press(*line, QStringLiteral("Dismiss"));
        CHECK(line->text() == byItself);
    }
    SECTION("what a person did since is said at once")
    {
        line->complain(complaint);
        line->say(byItself, false);
        QTest::keyClick(edit, Qt::Key_A);
        CHECK(line->text() == complaint);
        line->say(QStringLiteral("Squawk 12 fixed"), true);
        CHECK(line->text() == QStringLiteral("Squawk 12 fixed"));
        CHECK(test::button(*line, QStringLiteral("Undo")));
    }
    SECTION("the key that was complained about is none since")
    {
        QObject::connect(edit, &QLineEdit::returnPressed, line, [&] { line->complain(complaint); });
        QTest::keyClick(edit, Qt::Key_Return);
        line->say(byItself, false);
        CHECK(line->text() == complaint);
        QTest::keyClick(edit, Qt::Key_Return);
        line->say(byItself, false);
        CHECK(line->text() == complaint);
        QTest::keyClick(edit, Qt::Key_B);
        line->say(byItself, false);
        CHECK(line->text() == byItself);
    }
    SECTION("it goes with its page when it stood for some seconds")
    {
        auto *hold = line->findChild<QTimer *>(QStringLiteral("hold"));
        REQUIRE(hold);
        line->complain(complaint);
        // As when what was complained about led to another page.
        line->turnAway();
        hold->setInterval(0);
        CHECK(line->text() == complaint);
        QTest::keyClick(edit, Qt::Key_A);
        line->turnAway();
        QTest::qWait(20);
        CHECK(line->text().isEmpty());
        CHECK_FALSE(test::button(*line, QStringLiteral("Dismiss")));
    }
}

} // namespace lastrivet::ui
