// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Type.h"

#include "core/base/Error.h"
#include "ui/print/Measures.h"

#include <QFontDatabase>
#include <QString>
#include <QStringList>

#include <array>

namespace lastrivet::print {

namespace {

constexpr std::array<double, 6> sizes{8, 10, 12.5, 15.5, 19.5, 30.5};
const QString family = QStringLiteral("DejaVu Sans");

} // namespace

QFont font(Size size, bool isBold)
{
    QFont font(family);
    font.setPixelSize(int(points(sizes[std::size_t(size)])));
    font.setBold(isBold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferOutline);
    // Spaced by nothing to speak of, because Qt then joins no letters: "file" written with a
    // ligature is not found when somebody searches the document for it.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

double lineHeight(Size size)
{
    constexpr double leading = 1.32;
    return points(sizes[std::size_t(size)]) * leading;
}

void requireFonts()
{
    if (!QFontDatabase::families().contains(family))
        throw Fault("The typeface DejaVu Sans is not installed, so nothing can be printed. "
                    "Install the package fonts-dejavu-core.");
}

} // namespace lastrivet::print
