// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/LineDraft.h"

#include "ui/convert/QtText.h"

#include <QLineEdit>

#include <utility>

namespace lastrivet::ui {

LineDraft::LineDraft(Session &session, std::string kind, QLineEdit &line)
    : m_drafts(session, std::move(kind))
    , m_line(line)
{
    QObject::connect(&m_line, &QLineEdit::textEdited, &m_soon, qOverload<>(&QTimer::start));
    QObject::connect(&m_soon, &QTimer::timeout, &m_soon, [this] { keep(); });
}

void LineDraft::takeUp()
{
    put(m_drafts.takeUp(m_subject, m_line.text()));
}

void LineDraft::keep()
{
    takeUp();
    put(m_drafts.keep(m_subject, m_line.text()));
}

void LineDraft::turnTo(const std::string &subject)
{
    if (subject == m_subject) {
        takeUp();
        return;
    }
    // Nothing can have been typed before the line had a subject.
    if (!m_subject.empty())
        keep();
    m_subject = subject;
    // Also when the text is the same, so that the line's own undo does not bring back another
    // subject's.
    m_line.setText(toQt(m_drafts.of(subject).toStdString()));
}

/// The cursor stays where it is as long as the words do.
void LineDraft::put(const QString &text)
{
    if (text != m_line.text())
        m_line.setText(toQt(text.toStdString()));
}

} // namespace lastrivet::ui
