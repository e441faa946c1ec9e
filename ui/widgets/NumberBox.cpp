// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/NumberBox.h"

#include <QKeyEvent>
#include <QLineEdit>

#include <utility>

namespace lastrivet::ui {

NumberBox::NumberBox(QWidget *parent)
    : QSpinBox(parent)
{
    connect(lineEdit(), &QLineEdit::textEdited, this, &NumberBox::noteTyping);
}

/// The next text typed is a new attempt.
void NumberBox::noteTyping()
{
    m_refused.clear();
    // The box takes what is typed for its number only after this.
    if (!m_before)
        m_before = value();
}

void NumberBox::setValue(int value)
{
    m_refused.clear();
    m_before.reset();
    QSpinBox::setValue(value);
}

void NumberBox::stepBy(int steps)
{
    m_refused.clear();
    m_before.reset();
    QSpinBox::stepBy(steps);
}

QValidator::State NumberBox::validate(QString &input, int &position) const
{
    const auto state = QSpinBox::validate(input, position);
    return state == QValidator::Invalid ? QValidator::Intermediate : state;
}

/// What stands there, before the box itself would put a number in its place: the first digits of
/// what was typed have been one, and the one from before is to come back.
void NumberBox::look()
{
    const QString typed = cleanText().trimmed();
    const auto before = std::exchange(m_before, std::nullopt);
    if (hasAcceptableInput())
        return;
    if (before)
        QSpinBox::setValue(*before);
    if (typed.isEmpty())
        return;
    m_refused = tr("“%1” cannot stand there: it is a whole number from %2 to %3.")
                    .arg(typed, locale().toString(minimum()), locale().toString(maximum()));
    Q_EMIT refused(m_refused);
}

QString NumberBox::takeRefused()
{
    look();
    return std::exchange(m_refused, QString());
}

void NumberBox::focusOutEvent(QFocusEvent *event)
{
    look();
    QSpinBox::focusOutEvent(event);
}

void NumberBox::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        look();
    QSpinBox::keyPressEvent(event);
}

} // namespace lastrivet::ui
