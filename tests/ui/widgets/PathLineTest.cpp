// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PathLine.h"

#include <QFontMetrics>
#include <QImage>
#include <QPixmap>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("A path that is too long for its line shows its beginning and its end in whole letters")
{
    const QString path = QStringLiteral(
        "/home/somebody/Documents/aeroplane/papers for the inspector/Tags 2026-03-14.pdf");
    PathLine line;
    line.setText(path);
    line.resize(260, line.sizeHint().height());
    const QString shown = line.shownPath();
    CHECK(shown != path);
    CHECK(shown.startsWith(QLatin1String("/home")));
    CHECK(shown.endsWith(QLatin1String(".pdf")));
    CHECK(line.fontMetrics().horizontalAdvance(shown) < line.width());
    CHECK(line.text() == path);
    CHECK(line.toolTip() == path);
    PathLine empty;
    empty.resize(line.size());
    CHECK(line.grab().toImage() != empty.grab().toImage());
    line.resize(1600, line.height());
    CHECK(line.shownPath() == path);
}

} // namespace lastrivet::ui
