// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <optional>
#include <vector>

namespace lastrivet::certificate {

/// The flights of the test period, added up exactly.
struct FlightTest {
    std::int64_t flights = 0;
    std::int64_t landings = 0;
    Minutes flown{0};
    /// After the last flight that had a fault; all of them when none had.
    std::int64_t faultless_flights = 0;
    Minutes faultless{0};
    /// The last flight with a fault; none when there was none.
    Id<Flight> last_fault;
};

/// Live flights up to `asOf`. Of two flights at one moment the one with the greater id is the
/// later.
FlightTest flightTest(const Records &records, Moment asOf);

/// How far a country's test period has come, of the faultless time.
struct TestProgress {
    /// In the profile's list.
    std::size_t rule = 0;
    Minutes needed{0};
    Minutes left{0};

    bool isDone() const { return left.count() == 0; }
};

/// For each rule of the profile that names hours.
std::vector<TestProgress> progress(const FlightTest &flown, const Profile &profile);

} // namespace lastrivet::certificate
