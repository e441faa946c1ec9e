// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"
#include "core/base/Message.h"
#include "core/base/Result.h"

#include <QString>

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>

namespace lastrivet::ui {

/// A number with at most `figures` significant digits, in the person's language. It can be typed
/// again as it is shown: nothing separates its thousands. With `QLocale::FloatingPointShortest` for
/// `figures` it has all its digits and never an exponent.
QString numberText(double value, int figures = 6);

/// The same with at most `decimals` decimals, and without zeros at the end.
QString plainNumber(double value, int decimals = 3);

/// A count, its thousands separated as in the person's language: it is only shown, never typed
/// again.
QString countText(std::int64_t count);

/// What stands before decimals in the person's language.
DecimalSign decimalSign();

/// A typed text whose number can be read in two ways, and both of them: "1125 mm" and "1,125 mm".
struct BothReadings {
    std::string typed;
    std::string thousand;
    std::string decimals;
};

/// A typed text with a point for the language's own decimal sign. Where that is a comma, a comma
/// never separates thousands, because the program shows "1,125" so; but the point of "1.125" may,
/// except in inches, which drawings write with a point.
Result<std::string, BothReadings> withPoint(const QString &typed);

/// The question which of the two is meant.
Message askWhich(const BothReadings &both);

/// The first number among words that `withPoint` would refuse, in both its readings, as in the
/// limits "2.740-2.746 mm". Empty when there is none.
std::optional<BothReadings> twoReadings(const QString &words);

/// What a reader of the core makes of a typed text: `readTyped(balance::readArm, text, unit)`. A
/// number that can be read in two ways is refused. What is refused is shown as it was typed.
template <class Reader, class... Context>
Result<double, Message> readTyped(Reader reader, const QString &typed, Context... context)
{
    const auto plain = withPoint(typed);
    if (plain) {
        const Result<double, Message> read = reader(*plain, context...);
        if (read)
            return read;
        Message why = read.reason();
        std::replace(why.arguments.begin(), why.arguments.end(), *plain, typed.toStdString());
        return why;
    }
    return askWhich(plain.reason());
}

/// A typed number, with a point or the language's own decimal sign; refused when it can be read in
/// two ways.
Result<double, Message> readNumber(const QString &text);

} // namespace lastrivet::ui
