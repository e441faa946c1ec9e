// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/certificate/FlightTest.h"

#include <algorithm>

namespace lastrivet::certificate {

FlightTest flightTest(const Records &records, Moment asOf)
{
    std::vector<const Flight *> flights;
    for (const auto &flight : records.flights) {
        if (!flight.withdrawn_on && flight.flown_on && !after(*flight.flown_on, asOf))
            flights.push_back(&flight);
    }
    // By text: a day without a time comes before its times. Ids break ties.
    std::stable_sort(flights.begin(), flights.end(), [](const Flight *a, const Flight *b) {
        return a->flown_on->text() < b->flown_on->text();
    });
    FlightTest test;
    for (const auto *flight : flights) {
        ++test.flights;
        test.landings += flight->landings;
        test.flown += flight->minutes;
        if (flight->faults.empty()) {
            ++test.faultless_flights;
            test.faultless += flight->minutes;
        } else {
            test.faultless_flights = 0;
            test.faultless = Minutes{0};
            test.last_fault = flight->id;
        }
    }
    return test;
}

std::vector<TestProgress> progress(const FlightTest &flown, const Profile &profile)
{
    std::vector<TestProgress> all;
    for (std::size_t i = 0; i < profile.test_period.size(); ++i) {
        const auto hours = profile.test_period[i].hours;
        if (!hours)
            continue;
        const Minutes needed{*hours * 60};
        all.push_back(
            {i, needed,
             Minutes{std::max<std::int64_t>(0, needed.count() - flown.faultless.count())}});
    }
    return all;
}

} // namespace lastrivet::certificate
