// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/BranchForm.h"

#include "core/project/acts/PartActs.h"
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/ModelWatch.h"
#include "ui/parts/BranchModel.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

TEST_CASE("The left wing is copied for the other side by keyboard, after a look at the names")
{
    PartsWindow window;
    window.show({RecordType::Component, window.workshop.wing.value()});
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_D, Qt::ControlModifier);
    auto &form = *window.page.findChild<ui::BranchForm *>();
    REQUIRE(form.isVisible());
    QTreeView &preview = form.view();
    CHECK(preview.hasFocus());
    REQUIRE(preview.model()->rowCount() == 2);
    CHECK(preview.model()->index(0, 0).data().toString() == QStringLiteral("Right wing"));
    CHECK(preview.model()->index(1, 1).data().toString() == QStringLiteral("RW-B3"));
    // The name of the bay is written anew before the copy is made.
    preview.setCurrentIndex(preview.model()->index(1, 0));
    QTest::keyClick(&preview, Qt::Key_F2);
    auto *editor = preview.findChild<QLineEdit *>();
    REQUIRE(editor);
    editor->setText(QStringLiteral("Bay 3, tank side"));
    QTest::keyClick(editor, Qt::Key_Return);
    QTest::mouseClick(&window.button(QStringLiteral("Make the copy")), Qt::LeftButton);

    const auto records = window.records();
    const auto top = acts::partsInside(*records, {});
    REQUIRE(top.size() == 4);
    const auto place = std::ranges::find(top, window.workshop.wing);
    const Id<Component> made = *(place + 1);
    CHECK(records->find(made)->code == "RW");
    const auto inside = acts::partsInside(*records, made);
    REQUIRE(inside.size() == 1);
    CHECK(records->find(inside.front())->name == "Bay 3, tank side");
    CHECK(records->steps.size() == 4);
    CHECK(records->squawks.size() == 1);
    CHECK_FALSE(form.isVisible());
    window.session->undo();
    CHECK(acts::partsInside(*window.records(), {}).size() == 3);
    CHECK_FALSE(window.records()->find(made));
}

TEST_CASE("A code that another part has is refused where it stands")
{
    PartsWindow window;
    auto &form = *window.page.findChild<ui::BranchForm *>();
    window.show({RecordType::Component, window.workshop.wing.value()});
    window.tree().setFocus();
    QTest::keyClick(&window.tree(), Qt::Key_D, Qt::ControlModifier);
    auto &model = *form.view().model();
    CHECK(model.setData(model.index(0, 1), QStringLiteral("RU")));
    QTest::mouseClick(&window.button(QStringLiteral("Make the copy")), Qt::LeftButton);
    CHECK(form.isVisible());
    CHECK(window.records()->components.size() == 4);
    CHECK(form.view().currentIndex() == model.index(0, 1));
}

TEST_CASE("The preview of a copy keeps to the rules of models")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::BranchModel model(*session);
    ModelWatch watch(model);
    model.show(acts::planBranchCopy(*session->records(), workshop.wing));
    CHECK(model.setData(model.index(1, 0), QStringLiteral("Bay"), Qt::EditRole));
    CHECK_FALSE(model.setData(model.index(1, 0), QString(), Qt::EditRole));
    CHECK_FALSE(model.setData(model.index(1, 2), QStringLiteral("Bay"), Qt::EditRole));
    watch.check();
}

} // namespace lastrivet::test
