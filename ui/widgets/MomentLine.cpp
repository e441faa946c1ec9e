// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/MomentLine.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QKeyEvent>

namespace lastrivet::ui {

MomentLine::MomentLine(const Session &session, QWidget *parent)
    : QLineEdit(parent)
    , m_session(session)
{
    setPlaceholderText(tr("day, or day and time"));
}

void MomentLine::setMoment(std::optional<Moment> moment)
{
    setText(dateText(moment));
}

std::optional<Moment> MomentLine::moment() const
{
    return typedMoment(text(), m_session.today());
}

bool MomentLine::isWrong() const
{
    return !text().trimmed().isEmpty() && !moment();
}

QString MomentLine::whyNotHappened(Moment now) const
{
    if (isWrong())
        return tr("“%1” is no day; 14 March 2026 is written 2026-03-14.").arg(text().trimmed());
    const auto typed = moment();
    if (!typed)
        return tr("It needs the day.");
    return after(*typed, now)
               ? tr("%1 lies ahead: only what has happened is recorded.").arg(dateText(*typed))
               : QString();
}

void MomentLine::keyPressEvent(QKeyEvent *event)
{
    const int days = event->key() == Qt::Key_Up ? 1 : event->key() == Qt::Key_Down ? -1 : 0;
    const auto shown = moment();
    if (days == 0 || !shown) {
        QLineEdit::keyPressEvent(event);
        return;
    }
    if (const auto moved = shown->plusDays(days))
        setMoment(moved);
}

} // namespace lastrivet::ui
