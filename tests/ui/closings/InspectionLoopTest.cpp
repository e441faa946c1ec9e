// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/InspectionLoop.h"
#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/Inspecting.h"
#include "ui/closings/AnswerForm.h"
#include "ui/closings/CloseForm.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/ClosingsPage.h"
#include "ui/closings/FindingParts.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/InspectionView.h"
#include "ui/closings/LedgerView.h"
#include "ui/closings/PacketTask.h"
#include "ui/closings/VisitBoard.h"
#include "ui/closings/VisitForm.h"
#include "ui/closings/VisitPlanModel.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/SheetBox.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QHeaderView>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::ui {

namespace {

using Loop = test::InspectionLoop;
using test::press;
using test::says;
using test::type;

} // namespace

TEST_CASE("The plan says what one visit could cover, and a request is made from what is picked")
{
    Loop loop;
    press(loop.page, QStringLiteral("Plan a visit"));
    test::picture(loop.page, 1110, 700, "visit-board");
    const auto &plan = loop.page.visits().plan();
    REQUIRE(plan.rowCount() == 3);
    CHECK(plan.closing(0) == loop.workshop.aileronClosing);
    CHECK(plan.closing(2) == loop.workshop.rudderClosing);
    CHECK(plan.data(plan.index(2, VisitPlanModel::State), Qt::DisplayRole).toString() ==
          QStringLiteral("not begun"));
    // The clamping is estimated at 1 h 30; neither the closing step nor the squawk is.
    const auto work = [&](Id<Closing> closing) {
        for (int row = 0; row < plan.rowCount(); ++row) {
            if (plan.closing(row) == closing)
                return plan.data(plan.index(row, VisitPlanModel::Work), Qt::DisplayRole).toString();
        }
        return QString();
    };
    CHECK(work(loop.workshop.wingClosing) == QStringLiteral("1 h 30"));
    CHECK(work(loop.workshop.aileronClosing) == QStringLiteral("none"));
    CHECK(work(loop.workshop.rudderClosing).isEmpty());
    CHECK_FALSE(test::button(loop.page, QStringLiteral("Inspection visit")));
    loop.pick(loop.workshop.aileronClosing);
    press(loop.page, QStringLiteral("Inspection visit"));
    test::picture(loop.page, 1110, 700, "visit-ask");
    type(loop.page, QStringLiteral("Reference or number"), QStringLiteral("17-4"));
    press(loop.page, QStringLiteral("Record the request"));
    REQUIRE(loop.records()->inspections.size() == 1);
    const Inspection &asked = *loop.records()->inspections.begin();
    CHECK(asked.asked_on == Moment::parse("2026-03-14"));
    CHECK(asked.reference == "17-4");
    CHECK(asked.kind == InspectionKind::PreCover);
    CHECK(asked.hold_point_ids == IdSet<HoldPoint>{loop.preCover(loop.workshop.aileronClosing)});
    CHECK(loop.page.inspection().isVisible());
}

TEST_CASE("In a narrow plan the names of closings are not cut for what else is in their way")
{
    Loop loop;
    press(loop.page, QStringLiteral("Plan a visit"));
    test::picture(loop.page, 860, 700, "visit-board-narrow");
    const QTreeView &table = loop.page.visits().table();
    const int head = table.header()->sectionSizeHint(VisitPlanModel::Open);
    CHECK(table.columnWidth(VisitPlanModel::Open) <=
          std::max(head, loop.page.visits().width() / 5));
    CHECK(table.columnWidth(VisitPlanModel::Title) > 200);
}

TEST_CASE("Enter on a row of the plan opens its closing, and Esc leads back to the plan")
{
    Loop loop;
    press(loop.page, QStringLiteral("Plan a visit"));
    test::picture(loop.page, 1110, 700, "visit-board-enter");
    QTreeView &table = loop.page.visits().table();
    table.setCurrentIndex(loop.page.visits().plan().index(0, VisitPlanModel::Title));
    QTest::keyClick(&table, Qt::Key_Return);
    CHECK(loop.page.shownClosing() == loop.workshop.aileronClosing);
    QTest::keyClick(&loop.page.view().ledger(), Qt::Key_Escape);
    CHECK_FALSE(loop.page.shownClosing());
    CHECK(table.isVisible());
}

TEST_CASE("One sheet signs several hold points, and its pasted lines become numbered squawks")
{
    Loop loop;
    const auto visit = loop.ask(
        {loop.preCover(loop.workshop.aileronClosing), loop.preCover(loop.workshop.wingClosing)});
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    QGuiApplication::clipboard()->setText(
        QStringLiteral("3. LW-B3: Chafed wire\n   behind the rib\n4. airworthiness: Crack"));
    QLineEdit &first = test::field(loop.page, QStringLiteral("Finding 1"));
    first.setFocus();
    QTest::keyClick(&first, Qt::Key_V, Qt::ControlModifier);
    test::choice(loop.page, QStringLiteral("Who may verify finding 2"))
        .setCurrentText(QStringLiteral("inspector, by photo"));
    loop.page.visit().sheet().setFile(loop.photo(QStringLiteral("sheet.png"), 30));
    type(loop.page, QStringLiteral("Also there"), QStringLiteral("Robin Vale, Jo Tamm"));
    test::picture(loop.page, 1110, 1300, "visit-held");
    press(loop.page, QStringLiteral("Record the visit"));
    // The result still says that there were no findings.
    CHECK(says(loop.page, QStringLiteral("by the result everything is accepted")));
    CHECK_FALSE(loop.records()->find(visit)->held_on);
    press(loop.page, QStringLiteral("Record the visit"));

    const auto records = loop.records();
    const Inspection &held = *records->find(visit);
    CHECK(held.held_on == Moment::parse("2026-03-14"));
    CHECK(held.inspector_id == loop.workshop.inspector);
    CHECK(held.present.size() == 2);
    REQUIRE(held.media_ids.size() == 1);
    REQUIRE(records->sign_offs.size() == 2);
    for (const SignOff &signature : records->sign_offs) {
        CHECK(signature.scan_id == held.media_ids.front());
        CHECK(signature.credential == "I-204");
    }
    REQUIRE(loop.finding("3"));
    CHECK(loop.finding("3")->title == "Chafed wire behind the rib");
    CHECK(loop.finding("3")->component_id == loop.workshop.bay);
    CHECK(loop.finding("3")->number == "2");
    REQUIRE(loop.finding("4"));
    CHECK(loop.finding("4")->severity == Severity::Airworthiness);
    CHECK(loop.finding("4")->verify_by == SignerRole::Inspector);
    CHECK_FALSE(loop.finding("4")->note.empty());
    CHECK(loop.finding("3")->note.empty());
}

TEST_CASE("In a narrow form what was found has most of a line, and Tab goes on to paste more")
{
    Loop loop;
    const auto visit = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    test::picture(loop.page, 800, 700, "visit-narrow");
    const QLineEdit &found = test::field(loop.page, QStringLiteral("Finding 1"));
    CHECK(found.width() > 200);
    auto &severity = test::choice(loop.page, QStringLiteral("Severity of finding 1"));
    CHECK(severity.mapTo(&loop.page, QPoint()).y() > found.mapTo(&loop.page, QPoint()).y());
    auto &verifying = test::choice(loop.page, QStringLiteral("Who may verify finding 1"));
    QApplication::setActiveWindow(&loop.page);
    verifying.setFocus();
    QTest::keyClick(&verifying, Qt::Key_Tab);
    const auto *next = qobject_cast<QPushButton *>(QApplication::focusWidget());
    REQUIRE(next);
    CHECK(next->text() == QStringLiteral("Paste the lines of the sheet"));
}

TEST_CASE("The part that is proposed for a finding lies in the reach of the closing looked at")
{
    Loop loop;
    Id<Component> nose;
    Id<Closing> closing;
    loop.session->change(QStringLiteral("Nose"), [&](Edit &edit) {
        Component part;
        part.code = "LW-N";
        part.name = "Left wing nose";
        part.kind = ComponentKind::Part;
        part.parent_id = loop.workshop.wing;
        nose = edit.put(part);
        Closing made;
        made.component_id = loop.workshop.wing;
        made.title = "Left wing, nose skin";
        made.encloses = {nose};
        closing = acts::addClosing(edit, made, {});
    });
    const auto parts = partsWithin(*loop.records(), *loop.session->answer(), {closing});
    REQUIRE(parts.size() == 2);
    CHECK(parts.front() == nose);
    CHECK(parts.back() == loop.workshop.wing);
}

TEST_CASE(
    "A finding is corrected with a picture, verified by who may, and then the visit is complete")
{
    Loop loop;
    const auto visit = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.session->change(QStringLiteral("Held"), [&](Edit &edit) {
        acts::HeldInspection held{visit, InspectionKind::PreCover, edit.today(), {}, {}};
        held.inspector_id = loop.workshop.inspector;
        held.verdicts = {
            {loop.preCover(loop.workshop.aileronClosing), SignOffResult::AcceptedWithFindings, {}}};
        held.findings = {{"Chafed wire", loop.workshop.aileron, Severity::Workmanship, "1"}};
        acts::holdInspection(edit, held);
    });
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Mark as complete"));
    CHECK_FALSE(loop.records()->find(visit)->completed_on);

    loop.actOn(0);
    press(loop.page, QStringLiteral("Record the correction"));
    CHECK_FALSE(loop.finding("1")->fixed_on);
    type(loop.page, QStringLiteral("Correction"), QStringLiteral("Sleeve fitted, clamped anew"));
    loop.page.inspection().answer().picture().setFile(loop.photo(QStringLiteral("after.png"), 90));
    test::picture(loop.page, 1110, 700, "finding-correct");
    press(loop.page, QStringLiteral("Record the correction"));
    CHECK(loop.finding("1")->fixed_on == Moment::parse("2026-03-14"));
    REQUIRE(loop.records()->media.size() == 1);
    CHECK(loop.records()->media.begin()->shows.contains(Shows::Repair));

    loop.actOn(0);
    QComboBox &by = test::choice(loop.page, QStringLiteral("By"));
    by.setEditText(QStringLiteral("Robin Vale"));
    press(loop.page, QStringLiteral("Record the verification"));
    CHECK_FALSE(loop.finding("1")->verified_on);
    CHECK(says(loop.page, QStringLiteral("not as an inspector")));
    by.setCurrentIndex(0);
    press(loop.page, QStringLiteral("Record the verification"));
    CHECK(loop.finding("1")->verified_by == loop.workshop.inspector);

    const QString report = loop.file(QStringLiteral("report.pdf"));
    makeCorrectionsReport(*loop.session, visit, report);
    CHECK(QFile::exists(report));
    press(loop.page, QStringLiteral("Mark as complete"));
    CHECK(loop.records()->find(visit)->completed_on == Moment::parse("2026-03-14"));
    CHECK(loop.complained.isEmpty());
}

TEST_CASE("What is signed and clear is closed with day, person and photo, and no reason")
{
    Loop loop;
    const auto closing = loop.workshop.aileronClosing;
    loop.session->change(QStringLiteral("Held"), [&](Edit &edit) {
        acts::HeldInspection held{
            {}, InspectionKind::PreCover, *Moment::parse("2026-03-12"), {}, {}};
        held.inspector_id = loop.workshop.inspector;
        held.verdicts = {{loop.preCover(closing), SignOffResult::Accepted, {}}};
        acts::holdInspection(edit, held);
    });
    loop.page.showRecord({RecordType::Closing, closing.value()});
    press(loop.page, QStringLiteral("Sign"));
    press(loop.page, QStringLiteral("Record the signature"));
    REQUIRE(loop.session->answer()->closing(closing)->state == readiness::State::Clear);
    loop.page.view().startClosing();
    loop.page.view().closeForm().picture().setFile(loop.photo(QStringLiteral("lid.png"), 200));
    QTest::keyClick(&test::field(loop.page, QStringLiteral("On")), Qt::Key_Return,
                    Qt::ControlModifier);
    const Closing &closed = *loop.records()->find(closing);
    REQUIRE(closed.events.size() == 1);
    CHECK(closed.events[0].closed_on == Moment::parse("2026-03-14"));
    CHECK(closed.events[0].by == loop.workshop.builder);
    CHECK(closed.events[0].reason.empty());
    REQUIRE(loop.records()->media.size() == 1);
    CHECK(loop.records()->media.begin()->links ==
          std::vector<Media::Link>{{RecordType::Closing, closing.value()}});
    CHECK(loop.session->answer()->closing(closing)->state == readiness::State::Closed);

    loop.page.view().startClosing();
    test::picture(loop.page, 1110, 700, "reopen");
    CHECK(says(loop.page, QStringLiteral("No longer holds: Left aileron, lower skin")));
}

TEST_CASE("A hold point is planned besides those of the rules, once")
{
    Loop loop;
    loop.page.showRecord({RecordType::Closing, loop.workshop.aileronClosing.value()});
    press(loop.page, QStringLiteral("Plan another"));
    press(loop.page, QStringLiteral("Plan the hold point"));
    const auto planned = test::Workshop::point(*loop.records(), loop.workshop.aileronClosing,
                                               HoldPointKind::IndependentCheck);
    REQUIRE(planned);
    CHECK(loop.records()->find(planned)->planned_on == Moment::parse("2026-03-14"));
    const auto count = loop.records()->hold_points.size();
    press(loop.page, QStringLiteral("Plan another"));
    press(loop.page, QStringLiteral("Plan the hold point"));
    CHECK(loop.records()->hold_points.size() == count);
}

TEST_CASE("Work after a signature gives a page to send, and the answer is a signature by message")
{
    Loop loop;
    const auto closing = loop.workshop.aileronClosing;
    loop.session->change(QStringLiteral("Held, then worked on"), [&](Edit &edit) {
        acts::HeldInspection held{
            {}, InspectionKind::PreCover, *Moment::parse("2026-03-10"), {}, {}};
        held.inspector_id = loop.workshop.inspector;
        held.verdicts = {{loop.preCover(closing), SignOffResult::Accepted, {}}};
        acts::holdInspection(edit, held);
        WorkSession session;
        session.component_id = loop.workshop.aileron;
        session.began = Moment::parse("2026-03-12");
        session.changed_inspected = true;
        edit.put(session);
    });
    loop.page.showRecord({RecordType::Closing, closing.value()});
    CHECK(test::button(loop.page, QStringLiteral("What changed since")));
    CHECK(says(loop.page, QStringLiteral("out of date")));
    const QString page = loop.file(QStringLiteral("changed.pdf"));
    makeChangesPage(*loop.session, loop.preCover(closing), page);
    CHECK(QFile::exists(page));
    press(loop.page, QStringLiteral("Answered by message"));
    press(loop.page, QStringLiteral("Record the signature"));
    const auto &signatures = loop.records()->sign_offs;
    REQUIRE(signatures.size() == 2);
    CHECK(std::ranges::any_of(signatures, [&](const SignOff &signature) {
        return signature.seen == Seen::ByMessage && signature.person_id == loop.workshop.inspector;
    }));
    CHECK_FALSE(test::button(loop.page, QStringLiteral("What changed since")));
}

} // namespace lastrivet::ui
