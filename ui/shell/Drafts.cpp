// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Drafts.h"

#include "ui/shell/Session.h"

#include <optional>
#include <string_view>
#include <utility>

namespace lastrivet::ui {

namespace {

QString joined(const QString &before, const QString &after)
{
    return before.isEmpty() || after.isEmpty() ? before + after : before + QLatin1Char(' ') + after;
}

} // namespace

Drafts::Drafts(Session &session, std::string kind)
    : m_session(session)
    , m_kind(std::move(kind))
{
}

std::string Drafts::key(const std::string &subject) const
{
    return subject.empty() ? m_kind : m_kind + ":" + subject;
}

void Drafts::read(const std::string &subject, Draft &draft)
{
    const LocalState stored = m_session.localState(key(subject));
    draft.isRead = stored.isRead;
    draft.isUnread = draft.isUnread || !stored.isRead;
    draft.written = QString::fromStdString(stored.value.value_or(std::string()));
}

QString Drafts::of(const std::string &subject)
{
    const QString kept = m_drafts[subject].text;
    return takeUp(subject, kept);
}

QString Drafts::takeUp(const std::string &subject, const QString &typed)
{
    Draft &draft = m_drafts[subject];
    draft.text = typed;
    if (!draft.isRead) {
        read(subject, draft);
        draft.text = joined(draft.written, typed);
    }
    return draft.text;
}

QString Drafts::keep(const std::string &subject, const QString &text)
{
    Draft &kept = m_drafts[subject];
    kept.text = text;
    if (!kept.isRead) {
        const bool wasUnread = kept.isUnread;
        read(subject, kept);
        if (wasUnread)
            kept.text = joined(kept.written, text);
    }
    if (!kept.isRead || kept.text == kept.written || m_session.isReadOnly())
        return kept.text;
    const std::string words = kept.text.toStdString();
    const auto value = words.empty() ? std::nullopt : std::optional<std::string_view>(words);
    if (m_session.keepLocalState(key(subject), value))
        kept.written = kept.text;
    return kept.text;
}

bool Drafts::isWritten(const std::string &subject) const
{
    const auto kept = m_drafts.find(subject);
    return kept != m_drafts.end() && kept->second.isRead &&
           kept->second.text == kept->second.written;
}

} // namespace lastrivet::ui
