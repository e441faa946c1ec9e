// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/ByHand.h"

#include "ui/print/Pages.h"

#include <utility>

namespace lastrivet::print {

void drawWritingLine(Pages &pages, double left, double width, double y, const QString &name)
{
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(0.6)));
    painter.drawLine(QLineF(left, y, left + width, y));
    painter.setPen(Qt::black);
    fitted(name, Size::Small, width, 1).draw(painter, {left, y + points(1.5)});
}

void drawTableToSign(Pages &pages, const QString &title, std::vector<Table::Column> columns,
                     const QStringList &signers)
{
    Table table;
    table.has_grid = true;
    table.columns = std::move(columns);
    for (Table::Column &column : table.columns)
        column.is_kept = true;
    for (const QString &signer : signers)
        table.rows.push_back({{{signer}}, Table::Bar::None, false, points(36)});
    pages.smallHeading(title, wholeHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

} // namespace lastrivet::print
