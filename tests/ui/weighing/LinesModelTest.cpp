// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LinesModel.h"

#include <catch2/catch.hpp>

#include <vector>

namespace lastrivet::ui {

TEST_CASE("What was typed into a line and not kept is there for whoever edits the cell again")
{
    LinesColumn head;
    head.head = QStringLiteral("Arm");
    LinesModel model(std::vector<LinesColumn>(2, head));
    const auto show = [&model](const QString &text) {
        const QStringList line{text, QStringLiteral("40")};
        model.setLines(std::vector<QStringList>(1, line));
    };
    show(QStringLiteral("1.20"));
    int told = 0;
    QObject::connect(&model, &LinesModel::typed, &model, [&told] { ++told; });
    const QModelIndex arm = model.index(0, 0);
    CHECK(model.setData(arm, QStringLiteral("1.25"), Qt::EditRole));
    CHECK(told == 1);
    CHECK(arm.data().toString() == QStringLiteral("1.20"));
    CHECK(arm.data(Qt::EditRole).toString() == QStringLiteral("1.25"));
    // The same once more is another try.
    CHECK(model.setData(arm, QStringLiteral("1.25"), Qt::EditRole));
    CHECK(told == 2);
    show(QStringLiteral("1.25"));
    CHECK(arm.data().toString() == QStringLiteral("1.25"));
    CHECK(model.setData(arm, QStringLiteral("1.25"), Qt::EditRole));
    CHECK(told == 2);
}

} // namespace lastrivet::ui
