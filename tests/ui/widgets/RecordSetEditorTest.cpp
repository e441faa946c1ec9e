// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordSetEditor.h"

#include "tests/ui/support/Workshop.h"

#include <QCoreApplication>
#include <QLabel>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("The names of a set never stand on top of the names that were there before")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const Field &parts = *describe(RecordType::Deviation).find("component_ids");
    RecordSetEditor editor(*session, parts);
    Deviation deviation;
    deviation.component_ids = {workshop.wing, workshop.bay};
    editor.show(&deviation);
    test::picture(editor, 400, 120, "record-set");
    deviation.component_ids = {workshop.rudder};
    editor.show(&deviation);
    // Shows the new name, but deletes nothing: only the loop that the test was called from does.
    QCoreApplication::processEvents();
    int seen = 0;
    for (const QLabel *label : editor.findChildren<QLabel *>())
        seen += label->isVisible() ? 1 : 0;
    CHECK(seen == 1);
}

} // namespace lastrivet::ui
