// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Families.h"

namespace lastrivet::invariants {

namespace {

/// The event's one moment; none when it has both or neither.
std::optional<Moment> momentOf(const Closing::Event &event)
{
    if (event.closed_on.has_value() == event.opened_on.has_value())
        return std::nullopt;
    return event.closed_on ? event.closed_on : event.opened_on;
}

void checkTurns(Review &review, const Closing &closing)
{
    for (std::size_t i = 0; i < closing.events.size(); ++i) {
        const auto row = std::to_string(i + 1);
        const bool isClosingsTurn = i % 2 == 0;
        if (!momentOf(closing.events[i]))
            review.report(closing,
                          "{0}: event {1} must say either when it was closed or when it "
                          "was opened.",
                          {row});
        else if (isClosingsTurn && !closing.events[i].closed_on)
            review.report(closing, "{0}: event {1} opens it while it is open.", {row});
        else if (!isClosingsTurn && !closing.events[i].opened_on)
            review.report(closing, "{0}: event {1} closes it while it is closed.", {row});
    }
}

/// A day without a time ties with every time of that day, so the latest day alone does not do.
void checkOrder(Review &review, const Closing &closing)
{
    std::optional<Moment> latestDay;
    std::optional<Moment> latestTime;
    for (std::size_t i = 0; i < closing.events.size(); ++i) {
        const auto moment = momentOf(closing.events[i]);
        if (!moment)
            continue;
        for (const auto &earlier : {latestDay, latestTime}) {
            if (earlier && after(*earlier, *moment)) {
                review.report(closing, "{0}: event {1} of {2} is listed after one of {3}.",
                              {std::to_string(i + 1), moment->text(), earlier->text()});
                break;
            }
        }
        if (!latestDay || moment->day() > latestDay->day())
            latestDay = moment->dayOnly();
        if (moment->hasTime() && (!latestTime || sortsBefore(*latestTime, *moment)))
            latestTime = moment;
    }
}

} // namespace

void checkEvents(Review &review)
{
    review.each<Closing>([&](const Closing &closing) {
        checkTurns(review, closing);
        checkOrder(review, closing);
    });
}

} // namespace lastrivet::invariants
