// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Title.h"

#include "ui/print/Pages.h"

namespace lastrivet::print {

void drawTitle(Pages &pages, const QString &kind, const QString &name, const QString &subject)
{
    const QRectF &body = pages.body();
    pages.painter().fillRect(QRectF(body.left(), body.top(), body.width(), points(3)), Qt::black);
    pages.advance(points(14));
    pages.text(kind.toUpper(), Size::Small, true);
    pages.advance(points(2));
    pages.text(name, Size::Title, true);
    pages.advance(points(2));
    if (!subject.isEmpty())
        pages.text(subject, Size::Subheading);
    pages.advance(points(8));
}

} // namespace lastrivet::print
