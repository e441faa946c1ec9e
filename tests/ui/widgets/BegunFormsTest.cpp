// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/BegunForms.h"

#include "core/project/acts/Withdrawal.h"
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/InspectionLoop.h"
#include "tests/ui/support/SquawksWindow.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/closings/AnswerForm.h"
#include "ui/closings/CloseForm.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/NewClosingForm.h"
#include "ui/closings/VisitForm.h"
#include "ui/parts/BranchForm.h"
#include "ui/shell/ProjectView.h"

#include <QAbstractItemModel>
#include <QCoreApplication>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <vector>

namespace lastrivet::test {

namespace {

const auto notKept = QStringLiteral("What is begun here is not kept.");

/// A squawk that is about to be marked as fixed, with one more beside it.
struct BegunSquawk : SquawksWindow {
    BegunSquawk()
    {
        other = addSquawk();
        show(workshop.squawk);
        press("Mark as fixed");
        type(page, QStringLiteral("Correction"), QStringLiteral("Drilled out"));
        show(other);
    }
    ui::SquawkActForm &form() { return *page.findChild<ui::SquawkActForm *>(); }
    QString correction() { return field("Correction").text(); }

    Id<Squawk> other;
};

/// Two visits with a finding each.
struct TwoVisits : InspectionLoop {
    TwoVisits()
        : first(hold(workshop.aileronClosing, workshop.aileron))
        , second(hold(workshop.wingClosing, workshop.wing))
    {
        open(first);
        actOn(0);
        type(page, QStringLiteral("Correction"), QStringLiteral("Rerouted"));
        open(second);
    }
    Id<Inspection> hold(Id<Closing> closing, Id<Component> part)
    {
        const auto visit = ask({preCover(closing)});
        session->change(QStringLiteral("Held"), [&](Edit &edit) {
            acts::HeldInspection held{visit, InspectionKind::PreCover, edit.today(), {}, {}};
            held.inspector_id = workshop.inspector;
            held.verdicts = {{preCover(closing), SignOffResult::AcceptedWithFindings, {}}};
            held.findings = {{"Chafed wire", part, Severity::Workmanship, "1"}};
            acts::holdInspection(edit, held);
        });
        return visit;
    }
    void open(Id<Inspection> visit)
    {
        page.showRecord({RecordType::Inspection, visit.value()});
        QCoreApplication::processEvents();
    }
    ui::AnswerForm &form() { return page.inspection().answer(); }
    QString correction() { return field(page, QStringLiteral("Correction")).text(); }

    Id<Inspection> first;
    Id<Inspection> second;
};

/// The copy of the left wing with a name of its own.
struct BegunCopy : PartsWindow {
    BegunCopy()
    {
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complained = sentence; });
        copy(workshop.wing);
        CHECK(model().setData(model().index(0, 0), name));
    }
    void showPart(Id<Component> part) { show({RecordType::Component, part.value()}); }
    void copy(Id<Component> part)
    {
        showPart(part);
        tree().setFocus();
        QTest::keyClick(&tree(), Qt::Key_D, Qt::ControlModifier);
    }
    ui::BranchForm &form() { return *page.findChild<ui::BranchForm *>(); }
    QAbstractItemModel &model() { return *form().view().model(); }
    QString first() { return model().index(0, 0).data().toString(); }

    const QString name = QStringLiteral("Starboard wing");
    QString complained;
};

} // namespace

TEST_CASE("An act that is begun on a squawk waits while another squawk is looked at", "[squawks]")
{
    BegunSquawk window;
    CHECK_FALSE(window.form().isVisible());
    CHECK(window.form().isBegun());
    CHECK(window.complaints.isEmpty());
    SECTION("and is there with it again")
    {
        window.show(window.workshop.squawk);
        REQUIRE(window.form().isVisible());
        CHECK(window.correction() == QStringLiteral("Drilled out"));
        QTest::keyClick(&window.form(), Qt::Key_Escape);
        CHECK_FALSE(window.form().isBegun());
        window.show(window.other);
        window.show(window.workshop.squawk);
        CHECK_FALSE(window.form().isVisible());
    }
    SECTION("and holds one on another back once")
    {
        window.press("Mark as fixed");
        CHECK(window.editor().shown() == window.workshop.squawk);
        CHECK(window.correction() == QStringLiteral("Drilled out"));
        REQUIRE(window.complaints.size() == 1);
        CHECK(window.complaints.front().startsWith(notKept));
        window.show(window.other);
        window.press("Mark as fixed");
        CHECK(window.editor().shown() == window.other);
        CHECK(window.correction().isEmpty());
        CHECK(window.complaints.size() == 1);
    }
    SECTION("and goes with its squawk")
    {
        window.change([&](Edit &edit) {
            const RecordRef squawk{RecordType::Squawk, window.workshop.squawk.value()};
            acts::withdraw(edit, std::vector{squawk}, "twice");
        });
        CHECK_FALSE(window.form().isBegun());
        window.press("Mark as fixed");
        CHECK(window.editor().shown() == window.other);
        CHECK(window.complaints.isEmpty());
    }
}

TEST_CASE("A withdrawal that is begun is not dropped for an act on the same squawk", "[squawks]")
{
    SquawksWindow window;
    window.show(window.workshop.squawk);
    press(window.editor(), QStringLiteral("Withdraw"));
    type(window.page, QStringLiteral("Why"), QStringLiteral("written twice"));
    window.press("Mark as fixed");
    CHECK(window.field("Why").text() == QStringLiteral("written twice"));
    CHECK(window.complaints.size() == 1);
    window.press("Mark as fixed");
    CHECK(window.page.findChild<ui::SquawkActForm *>()->isVisible());
    CHECK(window.complaints.size() == 1);
}

TEST_CASE("What waits with its record holds the window back, and is shown with its record")
{
    WholeWindow opened;
    opened.openAndShow();
    ui::ProjectView &view = *opened.window.view();
    Id<Squawk> other;
    view.session().change(QStringLiteral("Setting"), [&](Edit &edit) {
        other = edit.put(Squawk{.number = "2",
                                .component_id = opened.workshop.bay,
                                .title = "Scratch",
                                .found_on = edit.today()});
    });
    view.goTo({RecordType::Squawk, opened.workshop.squawk.value()});
    auto *editor = view.findChild<ui::SquawkEditor *>();
    REQUIRE(editor);
    press(*editor, QStringLiteral("Mark as fixed"));
    type(*editor, QStringLiteral("Correction"), QStringLiteral("Drilled out"));
    view.goTo({RecordType::Squawk, other.value()});
    CHECK(editor->shown() == other);
    view.open(ui::PageId::Today);
    REQUIRE_FALSE(opened.window.close());
    CHECK(view.current() == ui::PageId::Squawks);
    CHECK(editor->shown() == opened.workshop.squawk);
    CHECK(field(*editor, QStringLiteral("Correction")).text() == QStringLiteral("Drilled out"));
    CHECK(opened.window.close());
}

TEST_CASE("A form that is begun on a closing waits while another closing is looked at")
{
    InspectionLoop loop;
    ui::ClosingView &view = loop.page.view();
    const RecordRef wing{RecordType::Closing, loop.workshop.wingClosing.value()};
    const RecordRef aileron{RecordType::Closing, loop.workshop.aileronClosing.value()};
    const auto reason = QStringLiteral("Reason");
    loop.page.showRecord(wing);
    view.startClosing();
    type(loop.page, reason, QStringLiteral("moved house"));
    SECTION("started once more it is as it was typed")
    {
        view.startClosing();
        CHECK(field(loop.page, reason).text() == QStringLiteral("moved house"));
        CHECK(loop.complained.isEmpty());
    }
    SECTION("it is there with its closing again")
    {
        loop.page.showRecord(aileron);
        CHECK(loop.page.shownClosing() == loop.workshop.aileronClosing);
        CHECK_FALSE(view.closeForm().isVisible());
        loop.page.showRecord(wing);
        CHECK(field(loop.page, reason).text() == QStringLiteral("moved house"));
        CHECK(loop.complained.isEmpty());
    }
    SECTION("it holds another form back once")
    {
        loop.page.showRecord(aileron);
        view.startSigning(loop.preCover(loop.workshop.aileronClosing));
        CHECK(loop.page.shownClosing() == loop.workshop.wingClosing);
        CHECK(field(loop.page, reason).text() == QStringLiteral("moved house"));
        CHECK(loop.complained.startsWith(notKept));
        loop.page.showRecord(aileron);
        view.startSigning(loop.preCover(loop.workshop.aileronClosing));
        CHECK(loop.page.shownClosing() == loop.workshop.aileronClosing);
        CHECK_FALSE(view.closeForm().isBegun());
    }
    SECTION("it goes with its closing")
    {
        loop.session->change(QStringLiteral("Withdrawn"), [&](Edit &edit) {
            auto all = acts::companions(edit.records(), std::vector{wing});
            all.push_back(wing);
            acts::withdraw(edit, all, "another aeroplane");
        });
        CHECK_FALSE(loop.page.shownClosing());
        CHECK_FALSE(view.closeForm().isBegun());
    }
}

TEST_CASE("An answer to a finding waits with its visit")
{
    TwoVisits loop;
    CHECK_FALSE(loop.form().isVisible());
    CHECK(loop.form().isBegun());
    SECTION("and is there with it again")
    {
        loop.open(loop.first);
        CHECK(loop.correction() == QStringLiteral("Rerouted"));
        CHECK(loop.complained.isEmpty());
    }
    SECTION("and holds one at another visit back once")
    {
        loop.actOn(0);
        CHECK(loop.page.inspection().shown() == loop.first);
        CHECK(loop.correction() == QStringLiteral("Rerouted"));
        CHECK(loop.complained.startsWith(notKept));
        loop.open(loop.second);
        loop.actOn(0);
        CHECK(loop.page.inspection().shown() == loop.second);
        CHECK(loop.correction().isEmpty());
    }
}

TEST_CASE("A visit that is half typed is not started over without a word")
{
    InspectionLoop loop;
    const auto number = QStringLiteral("Reference or number");
    const IdSet<Closing> aileron{loop.workshop.aileronClosing};
    const IdSet<Closing> wing{loop.workshop.wingClosing};
    loop.page.startVisit(aileron);
    type(loop.page, number, QStringLiteral("17-4"));
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    REQUIRE_FALSE(loop.page.visit().isVisible());
    SECTION("for the same closings it goes on")
    {
        loop.page.startVisit(aileron);
        CHECK(field(loop.page, number).text() == QStringLiteral("17-4"));
        CHECK(loop.complained.isEmpty());
    }
    SECTION("for others it holds back once")
    {
        loop.page.startVisit(wing);
        CHECK(field(loop.page, number).text() == QStringLiteral("17-4"));
        CHECK(loop.complained.startsWith(notKept));
        loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
        loop.page.startVisit(wing);
        CHECK(field(loop.page, number).text().isEmpty());
    }
    SECTION("Escape drops it")
    {
        loop.page.startVisit(aileron);
        QTest::keyClick(&loop.page.visit(), Qt::Key_Escape);
        loop.page.startVisit(wing);
        CHECK(field(loop.page, number).text().isEmpty());
        CHECK(loop.complained.isEmpty());
    }
}

TEST_CASE("A new closing that is half typed is there when a new one is wanted once more")
{
    InspectionLoop loop;
    loop.page.startNew();
    type(loop.page, QStringLiteral("Title"), QStringLiteral("Left wing tip"));
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    loop.page.startNew();
    CHECK(field(loop.page, QStringLiteral("Title")).text() == QStringLiteral("Left wing tip"));
    QTest::keyClick(&loop.page.newClosing(), Qt::Key_Escape);
    loop.page.startNew();
    CHECK(field(loop.page, QStringLiteral("Title")).text().isEmpty());
}

TEST_CASE("A copy of a part that is begun waits with its part")
{
    BegunCopy window;
    window.showPart(window.workshop.aileron);
    CHECK_FALSE(window.form().isVisible());
    CHECK(window.form().isBegun());
    SECTION("and is there with it again")
    {
        window.showPart(window.workshop.wing);
        CHECK(window.form().isVisible());
        CHECK(window.first() == window.name);
        QTest::keyClick(&window.form(), Qt::Key_Escape);
        CHECK_FALSE(window.form().isVisible());
    }
    SECTION("and holds the copy of another back once")
    {
        window.copy(window.workshop.aileron);
        CHECK(window.page.shownPart() == window.workshop.wing);
        CHECK(window.form().isVisible());
        CHECK(window.first() == window.name);
        CHECK(window.complained.startsWith(notKept));
        window.copy(window.workshop.aileron);
        CHECK(window.page.shownPart() == window.workshop.aileron);
        CHECK(window.form().isVisible());
        CHECK(window.first() != window.name);
    }
    SECTION("and goes with its part")
    {
        const RecordRef wing{RecordType::Component, window.workshop.wing.value()};
        window.session->change(QStringLiteral("Withdrawn"), [&](Edit &edit) {
            auto all = acts::companions(edit.records(), std::vector{wing});
            all.push_back(wing);
            acts::withdraw(edit, all, "sold");
        });
        REQUIRE_FALSE(window.records()->findLive(window.workshop.wing));
        CHECK_FALSE(window.form().isBegun());
        CHECK(window.page.shownPart() == window.workshop.aileron);
    }
}

} // namespace lastrivet::test
