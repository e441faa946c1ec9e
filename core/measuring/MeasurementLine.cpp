// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measuring/MeasurementLine.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Trimmed.h"
#include "core/base/TypedNumber.h"
#include "core/measuring/LimitWords.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <fmt/format.h>
#include <optional>
#include <string>
#include <utility>

namespace lastrivet::measuring {

namespace {

/// A sum of decimals as paper has it: 1.4 - 0.1 is 1.3, and not a binary fraction below it.
double decimal(double sum)
{
    const std::string written = fmt::format("{:.12g}", sum);
    double value = sum;
    std::from_chars(written.data(), written.data() + written.size(), value);
    return value;
}

/// "20 ± 0.5 mm", "20 +/- 0.5 mm", "20 +0.5/-0.2 mm": what it is to be, and how far off it may be.
bool takeTolerance(Measurement &measurement, std::string_view text, DecimalSign sign)
{
    const auto wanted = takeNumber(text, sign);
    if (!wanted)
        return false;
    for (const std::string_view either : {"±", "+/-", "+-"}) {
        if (!text.starts_with(either))
            continue;
        text = trimmed(text.substr(either.size()));
        const auto off = takeNumber(text, sign);
        if (!off || *off < 0)
            return false;
        measurement.minimum = decimal(*wanted - *off);
        measurement.maximum = decimal(*wanted + *off);
        measurement.unit = text;
        return true;
    }
    const auto above = text.starts_with('+') ? takeNumber(text, sign) : std::nullopt;
    text = trimmed(text.substr(text.starts_with('/') ? 1 : 0));
    const auto below = above ? takeNumber(text, sign) : std::nullopt;
    if (!below || *below > 0)
        return false;
    measurement.minimum = decimal(*wanted + *below);
    measurement.maximum = decimal(*wanted + *above);
    measurement.unit = text;
    return true;
}

/// How much of the front says that a limit follows; 0 when nothing does.
std::size_t lengthOfWord(std::string_view small, const auto &words)
{
    const auto word = std::find_if(words.begin(), words.end(), [&](std::string_view known) {
        return small.starts_with(known);
    });
    return word == words.end() ? 0 : word->size();
}

/// The front of "< 5 ohm", "> 1.4 mm", "max 5 ohm" and "mindestens 1,4 mm".
bool takeLimit(Measurement &measurement, std::string_view &text, DecimalSign sign)
{
    const std::string small = folded(text);
    const auto most = lengthOfWord(small, words::most);
    const auto length = most > 0 ? most : lengthOfWord(small, words::least);
    auto &limit = most > 0 ? measurement.maximum : measurement.minimum;
    if (length == 0 || limit)
        return false;
    auto rest = trimmed(text.substr(length));
    limit = takeNumber(rest, sign);
    text = limit ? rest : text;
    return limit.has_value();
}

/// "< 5 ohm", "min 1.4 max 1.6 mm", "28-36 ohm", "-2 to 2 mm", "20 ± 0.5 mm".
bool takeLimits(Measurement &measurement, std::string_view text, DecimalSign sign)
{
    if (takeLimit(measurement, text, sign)) {
        takeLimit(measurement, text, sign);
        measurement.unit = text;
        return true;
    }
    const auto range = takeRange(text, sign);
    if (!range)
        return takeTolerance(measurement, text, sign);
    measurement.minimum = range->first;
    measurement.maximum = range->second;
    measurement.unit = text;
    return true;
}

/// "1.4 mm to 1.6 mm" as "1.4 to 1.6 mm": the unit that ends the text is said once.
std::string withUnitOnce(std::string_view text)
{
    std::string plain(text);
    const auto figure = plain.find_last_of("0123456789");
    const std::string unit(figure == std::string::npos ? std::string_view()
                                                       : trimmed(text.substr(figure + 1)));
    if (unit.empty())
        return plain;
    for (auto at = plain.find(unit); at < figure; at = plain.find(unit, at + 1)) {
        const auto before = plain.find_last_not_of(' ', at == 0 ? 0 : at - 1);
        const bool isBehindFigure = before != std::string::npos && isDigit(plain[before]);
        const char behind = plain[at + unit.size()];
        if (isBehindFigure && !isDigit(behind) && !isAsciiLetter(behind))
            plain.replace(at, unit.size(), unit.size(), ' ');
    }
    return plain;
}

/// A limit that was taken for part of the unit: "cm max 16 mm".
bool holdsLimit(std::string_view unit, DecimalSign sign)
{
    for (auto at = unit.find(' '); at != std::string_view::npos; at = unit.find(' ', at + 1)) {
        Measurement other;
        auto rest = trimmed(unit.substr(at));
        if (takeLimit(other, rest, sign))
            return true;
    }
    return false;
}

/// "max.0,5 mm", "between 3 mm and more": begun as a limit is, and read as none.
bool beginsAsLimit(std::string_view text)
{
    const std::string small = folded(text);
    return std::any_of(words::begins.begin(), words::begins.end(), [&](std::string_view word) {
        const auto behind = small.starts_with(word) ? small.find_first_not_of(" .:", word.size())
                                                    : std::string::npos;
        return behind != std::string::npos && isDigit(small[behind]);
    });
}

Message notUnderstood(std::string_view text)
{
    return {"“{0}” was not understood: write limits as 1.4-1.6 mm, max 1.6 mm or 20 ± 0.5 mm.",
            {std::string(text)}};
}

/// Adds the limit in front of the last: "min 1.4, max 1.6 mm". Nothing when there is none.
std::optional<Message> addOther(Measurement &measurement, std::string_view &place,
                                std::string_view before, DecimalSign sign)
{
    Measurement other;
    auto unit = before;
    const bool isOneSided = measurement.minimum.has_value() != measurement.maximum.has_value();
    if (!isOneSided || !takeLimit(other, unit, sign) ||
        other.minimum.has_value() == measurement.minimum.has_value())
        return std::nullopt;
    if (!unit.empty() && !measurement.unit.empty() && unit != measurement.unit)
        return Message{"The limits are in {0} and in {1}; write both in one unit.",
                       {std::string(unit), measurement.unit}};
    (other.minimum ? measurement.minimum : measurement.maximum) =
        other.minimum ? other.minimum : other.maximum;
    if (measurement.unit.empty())
        measurement.unit = unit;
    place = before;
    return std::nullopt;
}

/// The limits at the end of a line, if there are any, and the name in front of them.
std::optional<Message> takeParts(Measurement &measurement, std::string_view whole, DecimalSign sign)
{
    const auto parts = partsOfLine(whole);
    const bool isParted = parts.size() > 1 || whole.starts_with(',') || whole.starts_with(';');
    const std::string last = parts.empty() ? std::string() : withUnitOnce(parts.back());
    Measurement limits;
    if (!isParted || !takeLimits(limits, last, sign)) {
        Measurement other;
        measurement.what = whole;
        // A thousand to one is decimals to another.
        const bool isLimit = takeLimits(other, last, DecimalSign::Comma) || beginsAsLimit(last);
        return isParted && isLimit ? std::optional(notUnderstood(parts.back())) : std::nullopt;
    }
    if (holdsLimit(limits.unit, sign))
        return notUnderstood(parts.back());
    auto place = parts.back();
    if (parts.size() > 2) {
        if (auto wrong = addOther(limits, place, parts[parts.size() - 2], sign))
            return wrong;
    }
    const auto end = std::size_t(place.data() - whole.data());
    limits.what = trimmed(whole.substr(0, whole.find_last_of(",;", end)));
    measurement = std::move(limits);
    return std::nullopt;
}

} // namespace

Result<Measurement, Message> readMeasurementLine(std::string_view line, DecimalSign sign)
{
    Measurement measurement;
    if (auto wrong = takeParts(measurement, trimmed(line), sign))
        return *wrong;
    if (measurement.what.empty())
        return Message{"Say what is measured.", {}};
    if (measurement.minimum && measurement.maximum && *measurement.minimum > *measurement.maximum)
        return Message{"The lower limit {0} is above the upper limit {1}.",
                       {fmt::format("{:.6g}", *measurement.minimum),
                        fmt::format("{:.6g}", *measurement.maximum)}};
    return measurement;
}

} // namespace lastrivet::measuring
