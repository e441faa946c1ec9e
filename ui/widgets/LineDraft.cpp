// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/LineDraft.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QLineEdit>

#include <optional>
#include <string_view>
#include <utility>

namespace lastrivet::ui {

LineDraft::LineDraft(Session &session, std::string key, QLineEdit &line)
    : m_session(session)
    , m_key(std::move(key))
    , m_line(line)
{
}

void LineDraft::takeUp()
{
    if (m_isRead)
        return;
    const LocalState stored = m_session.localState(m_key);
    m_isRead = stored.isRead;
    m_kept = stored.value.value_or("");
    if (m_kept.empty())
        return;
    const QString typed = m_line.text();
    m_line.setText(typed.isEmpty() ? toQt(m_kept) : toQt(m_kept) + QLatin1Char(' ') + typed);
}

void LineDraft::keep()
{
    if (m_session.isReadOnly())
        return;
    takeUp();
    const std::string typed = toStd(m_line.text());
    if (!m_isRead || typed == m_kept)
        return;
    if (m_session.keepLocalState(m_key, typed.empty() ? std::nullopt
                                                      : std::optional<std::string_view>(typed)))
        m_kept = typed;
}

} // namespace lastrivet::ui
