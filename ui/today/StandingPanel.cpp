// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/StandingPanel.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/Marks.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>

namespace lastrivet::ui {

StandingPanel::StandingPanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_lines(new QGridLayout(this))
{
    m_lines->setContentsMargins(16, 12, 16, 12);
    m_lines->setHorizontalSpacing(10);
    m_lines->setVerticalSpacing(8);
    m_lines->setColumnStretch(2, 1);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void StandingPanel::show(const today::Tally &tally)
{
    while (QLayoutItem *item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const Colours &colours = m_theme.colours();
    const auto work = tally.must_stay_open - tally.wait_for_signature;
    addLine(stateIcon(readiness::State::Hold), colours.hold, work, tr("stay open, work left"));
    addLine(stateIcon(readiness::State::ReadyToSign), colours.waits, tally.wait_for_signature,
            tr("stay open, wait for a signature"));
    addLine(stateIcon(readiness::State::Clear), colours.clear, tally.clear,
            tr("nothing on record against closing"));
    addLine(stateIcon(readiness::State::Closed), colours.closed, tally.closed, tr("closed"));
    addLine(stateIcon(readiness::State::ClosedEarly), colours.closedEarly, tally.closed_early,
            tr("closed with gaps"));
    addLine(stateIcon(readiness::State::Hold, false), colours.notBegun, tally.not_begun,
            tr("not begun"));
}

void StandingPanel::addLine(const QString &icon, const QColor &colour, std::int64_t count,
                            const QString &words)
{
    if (count == 0)
        return;
    const int row = m_lines->rowCount();
    auto *mark = new QLabel(this);
    mark->setPixmap(m_theme.icon(icon, colour).pixmap(QSize(24, 24), devicePixelRatioF()));
    auto *number = new QLabel(QLocale().toString(qlonglong(count)), this);
    QFont bold = font();
    bold.setBold(true);
    number->setFont(bold);
    auto *label = new QLabel(words, this);
    label->setWordWrap(true);
    m_lines->addWidget(mark, row, 0);
    m_lines->addWidget(number, row, 1, Qt::AlignRight);
    m_lines->addWidget(label, row, 2);
}

void StandingPanel::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setPen(m_theme.colours().line);
    painter.setBrush(m_theme.colours().surface);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace lastrivet::ui
