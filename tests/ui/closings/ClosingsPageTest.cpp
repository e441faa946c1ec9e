// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingsPage.h"

#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/Withdrawal.h"
#include "tests/ui/support/ClosingsWindow.h"
#include "tests/ui/support/Hands.h"
#include "ui/closings/ClosingBoard.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/LedgerView.h"
#include "ui/closings/Mend.h"
#include "ui/closings/VisitForm.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/RowDelegate.h"
#include "ui/widgets/RowListView.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

namespace lastrivet::ui {

using test::field;
using test::press;

namespace {

readiness::State stateOf(const Session &session, Id<Closing> closing)
{
    return session.answer()->closing(closing)->state;
}

using Opened = test::ClosingsWindow;

} // namespace

TEST_CASE("Closings stand in the column of their state")
{
    Opened opened;
    test::picture(opened.page, 1110, 640, "closings-board");
    CHECK(stateOf(*opened.session, opened.workshop.wingClosing) == readiness::State::Hold);
    CHECK(stateOf(*opened.session, opened.workshop.aileronClosing) ==
          readiness::State::ReadyToInspect);
    int listed = 0;
    for (const RowListView *list : opened.page.board().findChildren<RowListView *>())
        listed += list->isVisible() ? list->rows().rowCount() : 0;
    CHECK(listed == 3);
}

TEST_CASE("With every closing withdrawn the page teaches again, and its button has the keyboard")
{
    Opened opened;
    opened.session->change(QStringLiteral("Withdrawn"), [&](Edit &edit) {
        std::vector<RecordRef> closings;
        for (const auto closing : {opened.workshop.wingClosing, opened.workshop.aileronClosing,
                                   opened.workshop.rudderClosing})
            closings.push_back({RecordType::Closing, closing.value()});
        auto all = acts::companions(edit.records(), closings);
        all.insert(all.end(), closings.begin(), closings.end());
        acts::withdraw(edit, all, "another aeroplane");
    });
    test::picture(opened.page, 1110, 640, "closings-withdrawn");
    CHECK(test::says(opened.page, QStringLiteral("Here stand the closings")));
    CHECK_FALSE(test::says(opened.page, QStringLiteral("No closing has these words.")));
    const auto *first = qobject_cast<QPushButton *>(opened.page.firstFocus()->focusProxy());
    REQUIRE(first);
    CHECK(first->text() == QStringLiteral("Make the first closing"));
}

TEST_CASE("A signature is recorded in place and can be withdrawn with a reason")
{
    Opened opened;
    const auto closing = opened.workshop.aileronClosing;
    opened.open(closing, "closing-aileron");
    opened.page.view().startSigning(test::Workshop::point(*opened.session->records(), closing,
                                                          HoldPointKind::ToolAndDebrisCheck));
    press(opened.page, QStringLiteral("Record the signature"));
    const auto &signatures = opened.session->records()->sign_offs;
    REQUIRE(signatures.size() == 1);
    CHECK(signatures.begin()->person_id == opened.workshop.builder);
    CHECK(signatures.begin()->signed_on == Moment::parse("2026-03-14"));

    press(opened.page, QStringLiteral("Withdraw signature"));
    press(opened.page, QStringLiteral("Withdraw it"));
    CHECK_FALSE(opened.session->records()->sign_offs.begin()->withdrawn_on);
    field(opened.page, QStringLiteral("Reason")).setText(QStringLiteral("wrong line"));
    press(opened.page, QStringLiteral("Withdraw it"));
    CHECK(opened.session->records()->sign_offs.begin()->withdrawn_why == "wrong line");
}

TEST_CASE("A name that is typed takes the place of the one that is proposed for a signature")
{
    Opened opened;
    const auto closing = opened.workshop.aileronClosing;
    opened.open(closing, "closing-typed-name");
    opened.page.view().startSigning(test::Workshop::point(*opened.session->records(), closing,
                                                          HoldPointKind::ToolAndDebrisCheck));
    QComboBox &by = test::choice(opened.page, QStringLiteral("Signed by"));
    REQUIRE(by.currentText() == QStringLiteral("Robin Vale"));
    QTest::keyClicks(&by, QStringLiteral("Kim Alder"));
    CHECK(by.currentText() == QStringLiteral("Kim Alder"));
}

TEST_CASE("Of people with the same name the one that is chosen signs")
{
    Opened opened;
    const auto closing = opened.workshop.aileronClosing;
    Id<Person> second;
    opened.session->change(QStringLiteral("Namesakes"), [&](Edit &edit) {
        Person namesake;
        namesake.name = "Robin Vale";
        namesake.roles.insert(Role::Builder);
        edit.put(namesake);
        second = edit.put(namesake);
    });
    opened.open(closing, "closing-namesakes");
    opened.page.view().startSigning(test::Workshop::point(*opened.session->records(), closing,
                                                          HoldPointKind::ToolAndDebrisCheck));
    QComboBox &by = test::choice(opened.page, QStringLiteral("Signed by"));
    by.setCurrentIndex(by.findData(qlonglong(second.value())));
    press(opened.page, QStringLiteral("Record the signature"));
    const auto &signatures = opened.session->records()->sign_offs;
    REQUIRE(signatures.size() == 1);
    CHECK(signatures.begin()->person_id == second);
}

TEST_CASE("A closing that is not clear is recorded only with a reason, and can be undone")
{
    Opened opened;
    const auto closing = opened.workshop.wingClosing;
    opened.open(closing, "closing-wing");
    press(opened.page, QStringLiteral("Record the closing"));
    test::picture(opened.page, 1110, 700, "closing-form");
    opened.page.view().startClosing();
    const auto buttons = opened.page.findChildren<QPushButton *>();
    const auto doIt = std::ranges::find_if(buttons, [](QPushButton *candidate) {
        return candidate->isVisible() && candidate->property("primary").toBool() &&
               candidate->text() == QStringLiteral("Record the closing");
    });
    REQUIRE(doIt != buttons.end());
    (*doIt)->click();
    CHECK(opened.session->records()->find(closing)->events.empty());
    field(opened.page, QStringLiteral("Reason")).setText(QStringLiteral("moved house"));
    (*doIt)->click();
    REQUIRE(opened.session->records()->find(closing)->events.size() == 1);
    CHECK(stateOf(*opened.session, closing) == readiness::State::ClosedEarly);
    CHECK(opened.session->records()->find(opened.workshop.skin)->done_on ==
          Moment::parse("2026-03-14"));
    opened.session->undo();
    CHECK(stateOf(*opened.session, closing) == readiness::State::Hold);
    CHECK_FALSE(opened.session->records()->find(opened.workshop.skin)->done_on);
}

TEST_CASE("What was closed with gaps is accepted afterwards, and opened again only with a reason")
{
    Opened opened;
    const auto closing = opened.workshop.wingClosing;
    opened.session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        acts::close(edit, closing, {edit.today(), opened.workshop.builder, "moved house"});
    });
    opened.open(closing, "closing-early");
    REQUIRE(stateOf(*opened.session, closing) == readiness::State::ClosedEarly);
    for (const auto *button : opened.page.findChildren<QPushButton *>())
        CHECK_FALSE((button->isVisible() && button->text() == QStringLiteral("Sign")));
    press(opened.page, QStringLiteral("Accepted afterwards"));
    press(opened.page, QStringLiteral("Record the signature"));
    CHECK(stateOf(*opened.session, closing) == readiness::State::Closed);

    press(opened.page, QStringLiteral("Record an opening"));
    press(opened.page, QStringLiteral("Record the opening"));
    CHECK(opened.session->records()->find(closing)->events.size() == 1);
    field(opened.page, QStringLiteral("Reason")).setText(QStringLiteral("a rag is missing"));
    press(opened.page, QStringLiteral("Record the opening"));
    CHECK(opened.session->records()->find(closing)->events.size() == 2);
}

TEST_CASE("A signature for what an undo took away is refused in one sentence")
{
    Opened opened;
    const auto closing = opened.workshop.aileronClosing;
    opened.open(closing, "closing-undone-point");
    Id<HoldPoint> planned;
    opened.session->change(QStringLiteral("Planned"), [&](Edit &edit) {
        HoldPoint point;
        point.closing_id = closing;
        point.kind = HoldPointKind::IndependentCheck;
        point.signer_role = SignerRole::Builder;
        point.planned_on = edit.today();
        planned = edit.put(point);
    });
    opened.page.view().startSigning(planned);
    opened.session->undo();
    press(opened.page, QStringLiteral("Record the signature"));
    CHECK(test::says(opened.page, QStringLiteral("no longer on record")));
    CHECK(opened.session->records()->sign_offs.isEmpty());
}

TEST_CASE("Who was named for a visit stays named when one more hold point is chosen")
{
    Opened opened;
    opened.open(opened.workshop.aileronClosing, "closing-visit-named");
    press(opened.page, QStringLiteral("Inspection visit"));
    QComboBox &who = test::choice(opened.page, QStringLiteral("Who comes"));
    who.setEditText(QStringLiteral("Kim Arden"));
    int chosen = 0;
    for (QAbstractButton *box : opened.page.visit().findChildren<QAbstractButton *>()) {
        if (!box->text().startsWith(QStringLiteral("Left wing")))
            continue;
        box->click();
        ++chosen;
    }
    CHECK(chosen > 0);
    CHECK(who.currentText() == QStringLiteral("Kim Arden"));
}

TEST_CASE("The day of a visit is kept for either choice while the other is looked at")
{
    Opened opened;
    opened.open(opened.workshop.aileronClosing, "closing-visit-day");
    press(opened.page, QStringLiteral("Inspection visit"));
    QTest::qWait(0);
    const auto choose = [&](const QString &words) {
        for (QAbstractButton *choice : opened.page.visit().findChildren<QAbstractButton *>()) {
            if (choice->text() == words)
                choice->click();
        }
    };
    const QString today = field(opened.page, QStringLiteral("Asked for on")).text();
    CHECK(field(opened.page, QStringLiteral("Day")).text().isEmpty());
    CHECK_FALSE(opened.page.visit().isBegun());
    test::type(opened.page, QStringLiteral("Day"), QStringLiteral("2026-03-20"));
    choose(QStringLiteral("it was held"));
    CHECK(field(opened.page, QStringLiteral("Day")).text() == today);
    test::type(opened.page, QStringLiteral("Day"), QStringLiteral("2026-03-12"));
    choose(QStringLiteral("ask for it"));
    CHECK(field(opened.page, QStringLiteral("Day")).text() == QStringLiteral("2026-03-20"));
    choose(QStringLiteral("it was held"));
    CHECK(field(opened.page, QStringLiteral("Day")).text() == QStringLiteral("2026-03-12"));
    CHECK(opened.page.visit().isBegun());
}

TEST_CASE("One visit signs several hold points, and its findings become squawks")
{
    Opened opened;
    opened.open(opened.workshop.aileronClosing, "closing-visit-before");
    press(opened.page, QStringLiteral("Inspection visit"));
    QTest::qWait(0);
    for (QAbstractButton *choice : opened.page.visit().findChildren<QAbstractButton *>()) {
        if (choice->text() == QStringLiteral("it was held"))
            choice->click();
        if (choice->text().startsWith(QStringLiteral("Left wing")))
            choice->click();
    }
    auto *finding = &field(opened.page, QStringLiteral("Finding 1"));
    REQUIRE(finding);
    QTest::keyClicks(finding, QStringLiteral("Chafed wire"));
    test::picture(opened.page, 1110, 700, "visit-form");
    // The result still says that there were no findings, which is asked about.
    press(opened.page, QStringLiteral("Record the visit"));
    CHECK(opened.session->records()->inspections.isEmpty());
    press(opened.page, QStringLiteral("Record the visit"));
    const auto records = opened.session->records();
    CHECK(records->sign_offs.size() == 2);
    REQUIRE(records->inspections.size() == 1);
    CHECK(records->inspections.begin()->hold_point_ids.size() == 2);
    const auto found = std::ranges::find_if(
        records->squawks, [](const Squawk &squawk) { return squawk.title == "Chafed wire"; });
    REQUIRE(found != records->squawks.end());
    CHECK(found->inspection_id == records->inspections.begin()->id);
    CHECK(found->verify_by == SignerRole::Inspector);
    CHECK(found->number == "2");
}

TEST_CASE("Going back to the board leads to the closing that was looked at")
{
    Opened opened;
    opened.page.resize(1110, 700);
    opened.page.show();
    for (const auto closing : {opened.workshop.aileronClosing, opened.workshop.wingClosing}) {
        opened.page.showRecord({RecordType::Closing, closing.value()});
        QTest::keyClick(&opened.page.view().ledger(), Qt::Key_Escape);
        const auto *list = qobject_cast<RowListView *>(opened.page.focusWidget());
        REQUIRE(list);
        CHECK(list->rows().row(list->currentIndex().row()).record ==
              RecordRef{RecordType::Closing, closing.value()});
    }
}

TEST_CASE("A row of the ledger leads to its record, and Space mends it in place")
{
    Opened opened;
    opened.open(opened.workshop.wingClosing, "closing-ledger");
    LedgerView &view = opened.page.view().ledger();
    const LedgerModel &model = view.ledger();
    std::optional<RecordRef> wanted;
    QObject::connect(opened.session.get(), &Session::recordWanted, &opened.page,
                     [&](RecordRef record) { wanted = record; });
    for (int row = 0; row < model.rowCount(); ++row) {
        const auto rule = model.index(row, 0);
        const auto kind = model.line(rule).rule;
        if (kind == readiness::Rule::OpenSquawk) {
            view.setCurrentIndex(model.index(0, 0, rule));
            QTest::keyClick(&view, Qt::Key_Return);
        } else if (kind == readiness::Rule::UntickedCheck) {
            view.setCurrentIndex(model.index(0, 0, rule));
            QTest::keyClick(&view, Qt::Key_Space);
        }
    }
    CHECK(wanted == RecordRef{RecordType::Squawk, opened.workshop.squawk.value()});
    const auto &checks = opened.session->records()->checks;
    CHECK(std::ranges::count_if(checks,
                                [](const Check &check) { return check.done_on.has_value(); }) == 1);
}

TEST_CASE("A ledger that is only read says why nothing is mended in it")
{
    test::Workshop workshop;
    const auto writer = workshop.session();
    const auto reader = workshop.session();
    ClosingsPage page(*reader);
    page.showRecord({RecordType::Closing, workshop.aileronClosing.value()});
    QString complaint;
    QObject::connect(reader.get(), &Session::complained, &page,
                     [&](const QString &words) { complaint = words; });
    const RecordRef closing{RecordType::Closing, workshop.aileronClosing.value()};
    Q_EMIT page.view().ledger().mendWanted(Mend::AddPhoto, closing);
    CHECK(complaint.contains(QStringLiteral("open for writing")));
}

TEST_CASE("A row of the ledger is mended only where the mouse went down on it, too")
{
    Opened opened;
    opened.open(opened.workshop.wingClosing, "closing-ledger-slip");
    LedgerView &view = opened.page.view().ledger();
    const LedgerModel &model = view.ledger();
    const auto ticked = [&] {
        const auto &checks = opened.session->records()->checks;
        return std::ranges::count_if(checks,
                                     [](const Check &check) { return check.done_on.has_value(); });
    };
    QModelIndex rule = model.index(0, 0);
    while (rule.isValid() && model.line(rule).rule != readiness::Rule::UntickedCheck)
        rule = model.index(rule.row() + 1, 0);
    REQUIRE(rule.isValid());
    view.expand(rule);
    view.scrollTo(rule, QAbstractItemView::PositionAtTop);
    const QModelIndex line = model.index(0, 0, rule);
    const QRect button = RowDelegate::actionPlace(view.visualRect(line), view.fontMetrics(),
                                                  mendWords(model.mend(line)));
    REQUIRE(view.viewport()->rect().contains(button.center()));
    QTest::mousePress(view.viewport(), Qt::LeftButton, {}, view.visualRect(rule).center());
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, button.center());
    CHECK(ticked() == 0);
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, button.center());
    CHECK(ticked() == 1);
}

TEST_CASE("Only who looks for words is told that no closing has them")
{
    Opened opened;
    const auto isTold = [&] {
        return test::says(opened.page, QStringLiteral("No closing has these words"));
    };
    const auto withdraw = [&](Id<Closing> closing) {
        REQUIRE(opened.session->change(QStringLiteral("Withdrawn"), [&](Edit &edit) {
            const std::vector<RecordRef> one{{RecordType::Closing, closing.value()}};
            auto all = acts::companions(edit.records(), one);
            all.insert(all.end(), one.begin(), one.end());
            acts::withdraw(edit, all, "not built");
        }));
    };
    withdraw(opened.workshop.wingClosing);
    withdraw(opened.workshop.aileronClosing);
    test::picture(opened.page, 1110, 640, "closings-few");
    opened.page.board().setFilter(QStringLiteral("tailwheel"));
    CHECK(isTold());
    opened.page.board().setFilter({});
    CHECK_FALSE(isTold());
    withdraw(opened.workshop.rudderClosing);
    CHECK(test::says(opened.page, QStringLiteral("Here stand the closings")));
    CHECK_FALSE(isTold());
}

} // namespace lastrivet::ui
