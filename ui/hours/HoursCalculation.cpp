// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/HoursCalculation.h"

#include "ui/shell/Session.h"

#include <functional>

namespace lastrivet::ui {

namespace {

bool areSame(const HoursAnswer &a, const HoursAnswer &b)
{
    return a.records == b.records && a.as_of == b.as_of && a.wish == b.wish;
}

bool isOfSameRecords(const HoursAnswer &a, const HoursAnswer &b)
{
    return a.records == b.records && a.as_of == b.as_of;
}

} // namespace

HoursCalculation::HoursCalculation(Session &session, Extent extent, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_extent(extent)
    , m_answer{nullptr, session.today(), {}, {}, {}, {}}
{
}

void HoursCalculation::refresh()
{
    // A wish that cannot be read stays what it was.
    const auto wish = ForecastWish::kept(m_session).value_or(m_next ? m_next->wish : m_answer.wish);
    const HoursAnswer asked{m_session.records(), m_session.today(), wish, {}, {}, {}};
    if (m_next && areSame(*m_next, asked))
        return;
    m_next = std::make_shared<HoursAnswer>(asked);
    // A wish changes nothing of what was worked. What is being worked out belongs to a worker.
    if (isOfSameRecords(m_answer, asked))
        m_next->account = m_answer.account;
    workOn();
}

void HoursCalculation::wantLookBack(bool isWanted)
{
    m_wantsLookBack = isWanted;
    workOn();
}

bool HoursCalculation::canReplace(const HoursAnswer &next) const
{
    return (next.account || !m_answer.account) && (next.outlook || !m_answer.outlook) &&
           (next.look_back || !m_answer.look_back || !m_wantsLookBack);
}

std::function<void()> HoursCalculation::nextPiece(const std::shared_ptr<HoursAnswer> &answer) const
{
    if (m_extent == Extent::Everything && !answer->account)
        return [answer] {
            answer->account =
                std::make_shared<hours::Account>(hours::account(*answer->records, answer->as_of));
        };
    if (!answer->outlook)
        return [answer, extent = m_extent] {
            const auto options = answer->wish.options();
            answer->outlook = std::make_shared<forecast::Outlook>(
                extent == Extent::Everything
                    ? forecast::outlook(*answer->records, answer->as_of, options)
                    : forecast::Outlook{
                          forecast::forecast(*answer->records, answer->as_of, options), {}});
        };
    if (m_wantsLookBack && !answer->look_back)
        return [answer] {
            auto options = answer->wish.options();
            options.draws = forecast::drawsLookingBack;
            answer->look_back = std::make_shared<forecast::LookBack>(
                forecast::lookBack(*answer->records, answer->as_of, options));
        };
    return {};
}

void HoursCalculation::workOn()
{
    if (m_isRunning || !m_next)
        return;
    const auto answer = m_next;
    auto piece = nextPiece(answer);
    if (!piece)
        return;
    m_isRunning = true;
    m_session.executor().run(this, std::move(piece), [this, answer] {
        m_isRunning = false;
        // Meanwhile something else may have been asked for.
        if (answer == m_next && canReplace(*answer)) {
            m_answer = *answer;
            Q_EMIT changed();
        }
        workOn();
    });
}

} // namespace lastrivet::ui
