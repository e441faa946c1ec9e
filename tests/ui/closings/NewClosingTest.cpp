// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/NewClosingForm.h"

#include "core/profiles/ProfileDraft.h"
#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/RulesActs.h"
#include "core/project/acts/Withdrawal.h"
#include "tests/ui/support/ClosingsWindow.h"
#include "tests/ui/support/Hands.h"
#include "ui/closings/ClosingBoard.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/LedgerView.h"
#include "ui/closings/VisitForm.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/RowListView.h"

#include <QComboBox>
#include <QCompleter>
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

using Opened = test::ClosingsWindow;

} // namespace

TEST_CASE("A closing can begin with a part that is not in the tree yet")
{
    Opened opened;
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-part");
    field(opened.page, QStringLiteral("Title")).setText(QStringLiteral("Fin, right skin"));
    for (QComboBox *box : opened.page.findChildren<QComboBox *>()) {
        if (box->accessibleName() == QStringLiteral("Part") && box->isVisible())
            box->setEditText(QStringLiteral("Fin"));
    }
    press(opened.page, QStringLiteral("Make the closing"));
    const auto records = opened.session->records();
    const auto fin = std::ranges::find_if(records->components,
                                          [](const Component &part) { return part.name == "Fin"; });
    REQUIRE(fin != records->components.end());
    CHECK(std::ranges::any_of(records->closings, [&](const Closing &closing) {
        return closing.encloses == IdSet<Component>{fin->id};
    }));
}

TEST_CASE(
    "A closing on a part with parts hides those, or all of it, and never all when none is ticked")
{
    Opened opened;
    opened.page.startNew();
    opened.page.newClosing().start(opened.workshop.wing);
    test::picture(opened.page, 1110, 700, "new-closing-hides");
    QListWidget *hides = nullptr;
    for (auto *list : opened.page.newClosing().findChildren<QListWidget *>()) {
        if (list->accessibleName() == QStringLiteral("Hides"))
            hides = list;
    }
    REQUIRE(hides);
    REQUIRE(hides->count() == 2);
    CHECK(hides->item(0)->text().contains(QStringLiteral("all of it")));
    CHECK(hides->item(0)->checkState() == Qt::Unchecked);
    CHECK(hides->item(1)->checkState() == Qt::Checked);
    hides->item(1)->setCheckState(Qt::Unchecked);
    field(opened.page, QStringLiteral("Title")).setText(QStringLiteral("Wing, lower skin"));
    press(opened.page, QStringLiteral("Make the closing"));
    CHECK(test::says(opened.page, QStringLiteral("It hides nothing yet")));
    CHECK_FALSE(opened.page.shownClosing());
    hides->item(0)->setCheckState(Qt::Checked);
    press(opened.page, QStringLiteral("Make the closing"));
    const auto made = opened.page.shownClosing();
    REQUIRE(made);
    CHECK(opened.session->records()->find(made)->encloses ==
          IdSet<Component>{opened.workshop.wing});
}

TEST_CASE("A part that is typed for a new closing takes the place of the proposed one")
{
    Opened opened;
    test::picture(opened.page, 1110, 700, "new-closing-typed");
    opened.page.startNew();
    QComboBox &part = test::choice(opened.page, QStringLiteral("Part"));
    REQUIRE_FALSE(part.currentText().isEmpty());
    QTest::keyClicks(&part, QStringLiteral("Fin"));
    CHECK(part.currentText() == QStringLiteral("Fin"));
}

TEST_CASE("The part of a new closing is found by any letters of its line")
{
    Opened opened;
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-found");
    QComboBox &part = test::choice(opened.page, QStringLiteral("Part"));
    QCompleter &offered = *part.completer();
    offered.setCompletionPrefix(QStringLiteral("aileron"));
    REQUIRE(offered.completionCount() > 0);
    CHECK(offered.currentCompletion().contains(QStringLiteral("aileron"), Qt::CaseInsensitive));
    CHECK_FALSE(offered.currentCompletion().trimmed().startsWith(QStringLiteral("aileron"),
                                                                 Qt::CaseInsensitive));
}

TEST_CASE("A closing that is begun gets the lists of the rules that came meanwhile")
{
    Opened opened;
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-rules");
    field(opened.page, QStringLiteral("Title")).setText(QStringLiteral("Wing, lower skin"));
    const auto lists = [&] {
        for (const auto *list : opened.page.newClosing().findChildren<QListWidget *>()) {
            if (list->accessibleName() == QStringLiteral("Inspector's lists"))
                return list->count();
        }
        return -1;
    };
    REQUIRE(lists() > 0);
    Profile own = copyToEdit(opened.session->project().profile(), "Without lists", "2026-03-14");
    own.checklists.clear();
    REQUIRE(opened.session->change(QStringLiteral("Rules"),
                                   [&](Edit &edit) { acts::useRules(edit, own); }));
    CHECK(lists() == 0);
    CHECK(field(opened.page, QStringLiteral("Title")).text() == QStringLiteral("Wing, lower skin"));
    press(opened.page, QStringLiteral("Make the closing"));
    CHECK(opened.page.shownClosing());
}

TEST_CASE("A closing in which nothing was typed is not begun by the rules that came meanwhile")
{
    Opened opened;
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-untouched");
    REQUIRE_FALSE(opened.page.newClosing().isBegun());
    Profile own = copyToEdit(opened.session->project().profile(), "Without lists", "2026-03-14");
    own.checklists.clear();
    REQUIRE(opened.session->change(QStringLiteral("Rules"),
                                   [&](Edit &edit) { acts::useRules(edit, own); }));
    CHECK_FALSE(opened.page.newClosing().isBegun());
    field(opened.page, QStringLiteral("Title")).setText(QStringLiteral("Wing, lower skin"));
    CHECK(opened.page.newClosing().isBegun());
}

TEST_CASE("Of parts with the same name the chosen one is closed, and a typed name finds its part")
{
    Opened opened;
    Id<Component> second;
    opened.session->change(QStringLiteral("Ribs"), [&](Edit &edit) {
        Component rib;
        rib.name = "Rib 9";
        rib.parent_id = opened.workshop.wing;
        edit.put(rib);
        rib.parent_id = opened.workshop.aileron;
        second = edit.put(rib);
    });
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-ribs");
    QComboBox &part = test::choice(opened.page, QStringLiteral("Part"));
    const auto make = [&](const QString &title) {
        field(opened.page, QStringLiteral("Title")).setText(title);
        press(opened.page, QStringLiteral("Make the closing"));
    };
    const auto partOf = [&](std::string_view title) {
        for (const Closing &closing : opened.session->records()->closings) {
            if (closing.title == title)
                return closing.component_id;
        }
        return Id<Component>{};
    };
    const auto parts = opened.session->records()->components.size();
    part.setEditText(QStringLiteral("rib 9"));
    make(QStringLiteral("Rib, cap"));
    CHECK(test::says(opened.page, QStringLiteral("Several parts are called “rib 9”")));
    part.setCurrentIndex(part.findData(qlonglong(second.value())));
    make(QStringLiteral("Rib, cap"));
    CHECK(partOf("Rib, cap") == second);
    opened.page.startNew();
    part.setEditText(QStringLiteral("left aileron"));
    make(QStringLiteral("Aileron, nose"));
    CHECK(partOf("Aileron, nose") == opened.workshop.aileron);
    CHECK(opened.session->records()->components.size() == parts);
}

TEST_CASE("A new closing gets the hold points of the rules and the lists that fit")
{
    Opened opened;
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing");
    field(opened.page, QStringLiteral("Title")).setText(QStringLiteral("Left wing tip"));
    press(opened.page, QStringLiteral("Make the closing"));
    const auto records = opened.session->records();
    const auto made = std::ranges::find_if(
        records->closings, [](const Closing &closing) { return closing.title == "Left wing tip"; });
    REQUIRE(made != records->closings.end());
    CHECK(test::Workshop::point(*records, made->id, HoldPointKind::PreCover));
    CHECK(test::Workshop::point(*records, made->id, HoldPointKind::ToolAndDebrisCheck));
    CHECK(std::ranges::any_of(records->checks,
                              [&](const Check &check) { return check.closing_id == made->id; }));
    CHECK(opened.page.view().shown() == made->id);
}

TEST_CASE("A list that was unticked stays so when another part is chosen, not for the next closing")
{
    Opened opened;
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-unticked");
    QListWidget *lists = nullptr;
    for (auto *list : opened.page.findChildren<QListWidget *>()) {
        if (list->accessibleName() == QStringLiteral("Inspector's lists"))
            lists = list;
    }
    REQUIRE(lists);
    REQUIRE(lists->count() > 0);
    const QString first = lists->item(0)->text();
    lists->item(0)->setCheckState(Qt::Unchecked);
    QComboBox &parts = test::choice(opened.page, QStringLiteral("Part"));
    parts.setCurrentIndex(parts.count() - 1);
    REQUIRE(lists->count() > 0);
    REQUIRE(lists->item(0)->text() == first);
    CHECK(lists->item(0)->checkState() == Qt::Unchecked);
    QTest::keyClick(lists, Qt::Key_Escape);
    opened.page.startNew();
    CHECK(lists->item(0)->checkState() == Qt::Checked);
}

TEST_CASE("Of two parts of one name a closing is made of the one that was chosen")
{
    Opened opened;
    Id<Component> right;
    REQUIRE(opened.session->change(QStringLiteral("Ribs"), [&](Edit &edit) {
        edit.put(Component{.parent_id = opened.workshop.aileron, .name = "Rib"});
        right = edit.put(Component{.parent_id = opened.workshop.rudder, .name = "Rib"});
    }));
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-one-name");
    QComboBox &parts = test::choice(opened.page, QStringLiteral("Part"));
    for (int row = 0; row < parts.count(); ++row) {
        if (parts.itemText(row).trimmed() == QStringLiteral("Rib"))
            parts.setCurrentIndex(row);
    }
    REQUIRE(parts.currentData().toLongLong() == right.value());
    field(opened.page, QStringLiteral("Title")).setText(QStringLiteral("Rib, right side"));
    press(opened.page, QStringLiteral("Make the closing"));
    const auto records = opened.session->records();
    const Closing &made = *records->find(Id<Closing>{records->closings.greatestId()});
    CHECK(made.title == "Rib, right side");
    CHECK(made.component_id == right);
    CHECK(made.encloses == IdSet<Component>{right});
}

TEST_CASE("A part inside another is no new one where its name is typed")
{
    Opened opened;
    const auto before = opened.session->records()->components.size();
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-typed");
    test::choice(opened.page, QStringLiteral("Part")).setEditText(QStringLiteral("lw-b3  bay 3"));
    field(opened.page, QStringLiteral("Title")).setText(QStringLiteral("Bay 3, lid"));
    press(opened.page, QStringLiteral("Make the closing"));
    const auto records = opened.session->records();
    CHECK(records->components.size() == before);
    const Closing &made = *records->find(Id<Closing>{records->closings.greatestId()});
    CHECK(made.component_id == opened.workshop.bay);
}

TEST_CASE("That the name typed for a closing will be a new part is told before it is made")
{
    Opened opened;
    opened.page.startNew();
    test::picture(opened.page, 1110, 700, "new-closing-new-part");
    QComboBox &parts = test::choice(opened.page, QStringLiteral("Part"));
    auto &hidden = test::list(opened.page, QStringLiteral("Hides"));
    const auto shown = [&] { return hidden.model()->index(0, 0).data().toString(); };
    parts.setEditText(QStringLiteral("Bay 3a"));
    REQUIRE(hidden.model()->rowCount() == 1);
    CHECK(shown() == QStringLiteral("“Bay 3a” will be a new part"));
    parts.setEditText(QStringLiteral("lw-b3  bay 3"));
    CHECK_FALSE(shown().contains(QStringLiteral("new part")));
    parts.setEditText({});
    CHECK(hidden.model()->rowCount() == 0);
}

} // namespace lastrivet::ui
