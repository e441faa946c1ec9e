// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/StateBadge.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/Marks.h"

#include <QPainter>

namespace lastrivet::ui {

namespace {

constexpr int iconSize = 24;
constexpr int between = 2 * Theme::space;

} // namespace

StateBadge::StateBadge(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void StateBadge::show(const readiness::ClosingAnswer &answer, const QString &gap)
{
    m_state = answer.state;
    m_begun = answer.begun;
    m_words = stateWords(answer.state, answer.begun, waitsForAdviser(answer));
    if (!gap.isEmpty())
        m_words = tr("%1: %2").arg(m_words, gap);
    setAccessibleName(m_words);
    setToolTip(m_words);
    updateGeometry();
    update();
}

QSize StateBadge::sizeHint() const
{
    return {iconSize + between + fontMetrics().horizontalAdvance(m_words) + Theme::space,
            std::max(iconSize, fontMetrics().height())};
}

void StateBadge::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const QRectF icon(0, (height() - iconSize) / 2.0, iconSize, iconSize);
    paintState(painter, icon, m_state, m_begun, m_theme.colours());
    const QRect words = rect().adjusted(iconSize + between, 0, 0, 0);
    painter.setPen(m_theme.colours().text);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(m_words, Qt::ElideRight, words.width()));
}

} // namespace lastrivet::ui
