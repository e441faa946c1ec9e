// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measuring/MeasurementLine.h"

#include "core/base/Trimmed.h"
#include "core/base/TypedNumber.h"

#include <fmt/format.h>
#include <utility>

namespace lastrivet::measuring {

namespace {

/// "20 ± 0.5 mm", "20 +/- 0.5 mm": what it is to be, and how far off it may be.
bool takeTolerance(Measurement &measurement, std::string_view text)
{
    const auto wanted = takeNumber(text);
    for (const std::string_view sign : {"±", "+/-", "+-"}) {
        if (!wanted || !text.starts_with(sign))
            continue;
        text = trimmed(text.substr(sign.size()));
        const auto off = takeNumber(text);
        if (!off || *off < 0)
            return false;
        measurement.minimum = *wanted - *off;
        measurement.maximum = *wanted + *off;
        measurement.unit = text;
        return true;
    }
    return false;
}

/// The front of "< 5 ohm", "> 1.4 mm" and "max 5 ohm".
bool takeLimit(Measurement &measurement, std::string_view &text)
{
    for (const auto &[sign, limit] : {std::pair{"<", &Measurement::maximum},
                                      {"≤", &Measurement::maximum},
                                      {">", &Measurement::minimum},
                                      {"≥", &Measurement::minimum},
                                      {"max. ", &Measurement::maximum},
                                      {"max ", &Measurement::maximum},
                                      {"min. ", &Measurement::minimum},
                                      {"min ", &Measurement::minimum}}) {
        if (!text.starts_with(sign))
            continue;
        auto rest = trimmed(text.substr(std::string_view(sign).size()));
        const auto number = takeNumber(rest);
        if (!number || measurement.*limit)
            return false;
        measurement.*limit = number;
        text = rest;
        return true;
    }
    return false;
}

/// "< 5 ohm", "min 1.4 max 1.6 mm", "28-36 ohm", "-2 to 2 mm", "20 ± 0.5 mm".
bool takeLimits(Measurement &measurement, std::string_view text)
{
    if (takeLimit(measurement, text)) {
        takeLimit(measurement, text);
        measurement.unit = text;
        return true;
    }
    const auto range = takeRange(text);
    if (!range)
        return takeTolerance(measurement, text);
    measurement.minimum = range->first;
    measurement.maximum = range->second;
    measurement.unit = text;
    return true;
}

} // namespace

Result<Measurement, Message> readMeasurementLine(std::string_view line)
{
    const auto whole = trimmed(line);
    const auto parts = partsOfLine(whole);
    Measurement measurement;
    if ((parts.size() > 1 || whole.starts_with(',')) && !parts.empty() &&
        takeLimits(measurement, parts.back())) {
        const auto end = std::size_t(parts.back().data() - whole.data());
        measurement.what = trimmed(whole.substr(0, whole.find_last_of(',', end)));
    } else {
        measurement = {};
        measurement.what = whole;
    }
    if (measurement.what.empty())
        return Message{"Say what is measured.", {}};
    if (measurement.minimum && measurement.maximum && *measurement.minimum > *measurement.maximum)
        return Message{"The lower limit {0} is above the upper limit {1}.",
                       {fmt::format("{:.6g}", *measurement.minimum),
                        fmt::format("{:.6g}", *measurement.maximum)}};
    return measurement;
}

} // namespace lastrivet::measuring
