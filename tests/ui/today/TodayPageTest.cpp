// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/TodayPage.h"

#include "core/project/acts/Signing.h"
#include "tests/ui/support/Workshop.h"
#include "ui/widgets/RowListView.h"

#include <QLabel>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

bool says(const QWidget &page, const QString &words)
{
    for (const QLabel *label : page.findChildren<QLabel *>()) {
        if (label->text().contains(words))
            return true;
    }
    return false;
}

RowListView *list(const QWidget &page, const QString &name)
{
    for (RowListView *list : page.findChildren<RowListView *>()) {
        if (list->accessibleName() == name)
            return list;
    }
    return nullptr;
}

} // namespace

TEST_CASE("The first page counts what must stay open and leaves out what is not begun")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    CHECK(says(page, QStringLiteral("2 closings must stay open, 1 of them waits only for a "
                                    "signature.")));
    const auto *open = list(page, QStringLiteral("Stays open"));
    REQUIRE(open->rows().rowCount() == 2);
    for (int i = 0; i < 2; ++i)
        CHECK(open->rows().row(i).record.id != workshop.rudderClosing.value());
}

TEST_CASE("The first page follows the answer after a change")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    session->change(QStringLiteral("Signed"), [&](Edit &edit) {
        for (const HoldPoint &point : session->records()->hold_points) {
            if (point.closing_id != workshop.aileronClosing)
                continue;
            SignOff signature;
            signature.hold_point_id = point.id;
            signature.person_id = workshop.inspector;
            signature.signed_on = edit.today();
            acts::sign(edit, signature);
        }
    });
    CHECK(says(page, QStringLiteral("1 closing must stay open.")));
    CHECK(says(page, QStringLiteral("Against 1, nothing on record stands.")));
}

TEST_CASE("The start button of a step starts the clock, once")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    auto *work = list(page, QStringLiteral("Workable now"));
    REQUIRE(work->rows().rowCount() == 1);
    work->setFocus();
    work->setCurrentIndex(work->model()->index(0, 0));
    QTest::keyClick(work, Qt::Key_Space);
    const auto timer = session->timer();
    REQUIRE(timer);
    CHECK(timer->step_id == workshop.wires);
    CHECK(timer->component_id == workshop.bay);
    CHECK(work->rows().row(0).action == QStringLiteral("Running"));
}

TEST_CASE("An empty project says what the first page will show")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    session->undo();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today-empty");
    CHECK(says(page, QStringLiteral("Nothing is recorded yet.")));
}

} // namespace lastrivet::ui
