// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Drafts.h"

#include "core/base/Error.h"
#include "ui/shell/Session.h"

#include <optional>
#include <string_view>
#include <utility>

namespace lastrivet::ui {

Drafts::Drafts(Session &session, std::string kind)
    : m_session(session)
    , m_kind(std::move(kind))
{
}

std::string Drafts::key(const std::string &subject) const
{
    return m_kind + ":" + subject;
}

Drafts::Draft &Drafts::draft(const std::string &subject)
{
    const auto [place, isNew] = m_drafts.try_emplace(subject);
    if (!isNew)
        return place->second;
    try {
        const auto written = m_session.project().localState(key(subject));
        place->second.written = QString::fromStdString(written.value_or(std::string()));
    } catch (const Fault &) {
        // A disk that fails says so elsewhere; here the line begins empty.
    }
    place->second.text = place->second.written;
    return place->second;
}

QString Drafts::of(const std::string &subject)
{
    return draft(subject).text;
}

void Drafts::keep(const std::string &subject, const QString &text)
{
    Draft &kept = draft(subject);
    kept.text = text;
    if (kept.text == kept.written || m_session.isReadOnly())
        return;
    const std::string words = text.toStdString();
    const auto value = words.empty() ? std::nullopt : std::optional<std::string_view>(words);
    if (m_session.keepLocalState(key(subject), value))
        kept.written = kept.text;
}

} // namespace lastrivet::ui
