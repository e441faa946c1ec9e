// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/StandingPanel.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/Hatch.h"
#include "ui/widgets/Marks.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

namespace lastrivet::ui {

namespace {

constexpr int markSize = 20;
constexpr QSize swatchSize(32, 18);

} // namespace

StandingPanel::StandingPanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_lines(new QGridLayout(this))
{
    m_lines->setContentsMargins(12, 8, 12, 8);
    m_lines->setHorizontalSpacing(10);
    m_lines->setVerticalSpacing(4);
    m_lines->setColumnStretch(3, 1);
    // No fixed height: that would be the one of lines that are not wrapped.
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
}

void StandingPanel::show(const today::Tally &tally)
{
    while (QLayoutItem *item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    using enum readiness::State;
    const std::int64_t held = tally.must_stay_open - tally.wait_for_signature;
    const std::int64_t others = tally.wait_for_signature - tally.wait_for_own;
    // The count stands beside its words, which bend with it all the same.
    addLine(Hold, true, held, tr("stay open, work left", nullptr, int(held)));
    addLine(ReadyToInspect, true, others,
            tr("stay open, wait for somebody from outside", nullptr, int(others)));
    addLine(ReadyToSign, true, tally.wait_for_own,
            tr("stay open, wait for your signature", nullptr, int(tally.wait_for_own)));
    addLine(Clear, true, tally.clear, tr("nothing on record against closing"));
    addLine(Closed, true, tally.closed, tr("closed", nullptr, int(tally.closed)));
    addLine(ClosedEarly, true, tally.closed_early,
            tr("closed with gaps", nullptr, int(tally.closed_early)));
    addLine(Hold, false, tally.not_begun, tr("not begun", nullptr, int(tally.not_begun)));
}

void StandingPanel::addLine(readiness::State state, bool begun, std::int64_t count,
                            const QString &words)
{
    if (count == 0)
        return;
    const Colours &colours = m_theme.colours();
    // A grid never has fewer rows than it had: only what is in it counts.
    const int row = m_lines->count() / m_lines->columnCount();
    auto *hatch = new QLabel(this);
    hatch->setPixmap(swatch(state, begun));
    auto *mark = new QLabel(this);
    const QColor colour = begun ? colours.state(state) : colours.notBegun;
    mark->setPixmap(m_theme.icon(stateIcon(state, begun), colour)
                        .pixmap(QSize(markSize, markSize), devicePixelRatioF()));
    auto *number = new QLabel(QLocale().toString(qlonglong(count)), this);
    QFont bold = font();
    bold.setBold(true);
    number->setFont(bold);
    auto *label = new QLabel(words, this);
    label->setWordWrap(true);
    m_lines->addWidget(hatch, row, 0);
    m_lines->addWidget(mark, row, 1);
    m_lines->addWidget(number, row, 2, Qt::AlignRight);
    m_lines->addWidget(label, row, 3);
}

QPixmap StandingPanel::swatch(readiness::State state, bool begun) const
{
    const qreal ratio = devicePixelRatioF();
    QPixmap pixmap((QSizeF(swatchSize) * ratio).toSize());
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    QPainterPath box;
    box.addRect(QRectF(QPointF(), QSizeF(swatchSize)).adjusted(1, 1, -1, -1));
    paintHatched(painter, box, state, begun, m_theme.colours());
    return pixmap;
}

void StandingPanel::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setPen(m_theme.colours().line);
    painter.setBrush(m_theme.colours().surface);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace lastrivet::ui
