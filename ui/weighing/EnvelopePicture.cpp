// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/EnvelopePicture.h"

#include "ui/convert/NumberText.h"
#include "ui/print/EnvelopeDrawing.h"
#include "ui/shell/Theme.h"
#include "ui/weighing/WeightTables.h"
#include "ui/weighing/WeightText.h"

#include <QPainter>

namespace lastrivet::ui {

EnvelopePicture::EnvelopePicture(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Limits of weight and centre of gravity"));
    setMinimumSize(280, 240);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void EnvelopePicture::show(const packet::WeightReport &report)
{
    m_report = report;
    QStringList lines;
    for (const FigureRow &row : loadingTable(report).rows)
        lines << row.cells.join(QLatin1Char(' '));
    setAccessibleDescription(lines.join(QStringLiteral("; ")));
    update();
}

void EnvelopePicture::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Colours &colours = m_theme.colours();
    print::EnvelopePlot plot = print::envelopePlot(m_report);
    plot.arm_title = headWithUnit(tr("Centre of gravity"), word(m_report.units.arm));
    plot.weight_title = headWithUnit(tr("Weight"), word(m_report.units.weight));
    plot.number = [](double value) { return plainNumber(value); };
    print::paintEnvelope(painter, QRectF(rect()).adjusted(2, 2, -2, -2), plot,
                         {colours.text, colours.line, colours.surface, font(), 1.6});
}

} // namespace lastrivet::ui
