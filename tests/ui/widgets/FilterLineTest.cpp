// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/FilterLine.h"

#include "tests/ui/support/WholeWindow.h"
#include "ui/shell/PageList.h"
#include "ui/shell/ProjectView.h"

#include <QCoreApplication>

namespace lastrivet::ui {

TEST_CASE("Ctrl+F leads to the filter of the page that is shown, and Escape empties it")
{
    test::WholeWindow opened;
    opened.openAndShow();
    ProjectView &view = *opened.window.view();
    for (const PageId id :
         {PageId::Parts, PageId::Log, PageId::Squawks, PageId::Closings, PageId::Journal}) {
        CAPTURE(int(id));
        view.open(id);
        QCoreApplication::processEvents();
        QTest::keyClick(opened.window.focusWidget(), Qt::Key_F, Qt::ControlModifier);
        auto *line = qobject_cast<FilterLine *>(opened.window.focusWidget());
        REQUIRE(line);
        CHECK(line->isVisible());
        QTest::keyClicks(line, QStringLiteral("zz"));
        CHECK(line->text() == QStringLiteral("zz"));
        QTest::keyClick(line, Qt::Key_Escape);
        CHECK(line->text().isEmpty());
        CHECK(view.current() == id);
    }
}

} // namespace lastrivet::ui
