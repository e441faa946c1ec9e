// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LinesModel.h"

#include <catch2/catch.hpp>

#include <vector>

namespace lastrivet::ui {

TEST_CASE("What was typed into a line and could not be saved is there for whoever edits it again")
{
    LinesColumn head;
    head.head = QStringLiteral("Arm");
    LinesModel model(std::vector<LinesColumn>(2, head));
    const auto show = [&model](std::int64_t record, const QString &text) {
        const QStringList line{text, QStringLiteral("40")};
        model.setLines(record, std::vector<QStringList>(1, line));
    };
    show(1, QStringLiteral("1.20"));
    int told = 0;
    model.setKeep([&told](int, const LinesModel::Cells &, bool) {
        ++told;
        return Session::Outcome::NotSaved;
    });
    const QModelIndex arm = model.index(0, 0);
    CHECK(model.setData(arm, QStringLiteral("1.25"), Qt::EditRole));
    CHECK(told == 1);
    CHECK(arm.data().toString() == QStringLiteral("1.20"));
    CHECK(arm.data(Qt::EditRole).toString() == QStringLiteral("1.25"));
    CHECK(model.unkeptRecord() == 1);
    // Another record is shown, and this one again.
    show(2, QStringLiteral("1.20"));
    CHECK(arm.data(Qt::EditRole).toString() == QStringLiteral("1.20"));
    CHECK(model.unkeptRecord() == 1);
    show(1, QStringLiteral("1.20"));
    CHECK(arm.data(Qt::EditRole).toString() == QStringLiteral("1.25"));
    // The same once more is another try.
    CHECK(model.setData(arm, QStringLiteral("1.25"), Qt::EditRole));
    CHECK(told == 2);
    show(1, QStringLiteral("1.25"));
    CHECK(arm.data().toString() == QStringLiteral("1.25"));
    CHECK(model.setData(arm, QStringLiteral("1.25"), Qt::EditRole));
    CHECK(told == 2);
    CHECK(model.unkeptRecord() == 0);
}

} // namespace lastrivet::ui
