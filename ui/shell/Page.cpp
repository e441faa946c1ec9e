// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Page.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace lastrivet::ui {

namespace {

std::vector<RecordRef> together(const std::vector<RecordRef> &a, const std::vector<RecordRef> &b)
{
    std::vector<RecordRef> all;
    std::ranges::set_union(a, b, std::back_inserter(all));
    return all;
}

} // namespace

Page::Page(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
{
    connect(&session, &Session::changed, this,
            [this](const ChangeNotice &notice) { hear(notice); });
    connect(&session, &Session::answerChanged, this, [this] { hearAnswer(); });
    connect(&session.theme(), &Theme::changed, this, [this] { themeChanged(); });
}

void Page::setAway(bool isAway)
{
    m_isAway = isAway;
    if (m_isAway)
        return;
    if (const auto missed = std::exchange(m_missed, std::nullopt))
        recordsChanged(*missed);
    if (std::exchange(m_missedAnswer, false))
        answerChanged();
}

void Page::hear(const ChangeNotice &notice)
{
    if (!m_isAway) {
        recordsChanged(notice);
    } else if (!m_missed) {
        m_missed = notice;
    } else {
        m_missed->after = notice.after;
        m_missed->touched = together(m_missed->touched, notice.touched);
        m_missed->label = notice.label;
    }
}

void Page::hearAnswer()
{
    if (m_isAway)
        m_missedAnswer = true;
    else
        answerChanged();
}

} // namespace lastrivet::ui
