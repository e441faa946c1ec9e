// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measuring/MeasurementLine.h"

#include "core/base/Trimmed.h"

#include <charconv>
#include <fmt/format.h>
#include <optional>

namespace lastrivet::measuring {

namespace {

std::optional<double> takeNumber(std::string_view &text)
{
    double number = 0;
    const auto [end, error] =
        std::from_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    if (error != std::errc{})
        return std::nullopt;
    text = trimmed(text.substr(std::size_t(end - text.data())));
    return number;
}

/// "< 5 ohm", "> 1.4 mm", "28-36 ohm", "-2 to 2 mm".
bool takeLimits(Measurement &measurement, std::string_view text)
{
    for (const auto &[sign, limit] : {std::pair{"<", &Measurement::maximum},
                                      {"≤", &Measurement::maximum},
                                      {">", &Measurement::minimum},
                                      {"≥", &Measurement::minimum}}) {
        if (!text.starts_with(sign))
            continue;
        text = trimmed(text.substr(std::string_view(sign).size()));
        measurement.*limit = takeNumber(text);
        measurement.unit = text;
        return (measurement.*limit).has_value();
    }
    const auto least = takeNumber(text);
    for (const std::string_view between : {"-", "–", "to ", "bis ", "à "}) {
        if (!least || !text.starts_with(between))
            continue;
        text = trimmed(text.substr(between.size()));
        const auto most = takeNumber(text);
        measurement.minimum = least;
        measurement.maximum = most;
        measurement.unit = text;
        return most.has_value();
    }
    return false;
}

} // namespace

Result<Measurement, Message> readMeasurementLine(std::string_view line)
{
    const auto whole = trimmed(line);
    const auto comma = whole.rfind(',');
    Measurement measurement;
    if (comma != std::string_view::npos &&
        takeLimits(measurement, trimmed(whole.substr(comma + 1)))) {
        measurement.what = trimmed(whole.substr(0, comma));
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
