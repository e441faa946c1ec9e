// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"
#include "core/base/Message.h"
#include "core/base/Result.h"

#include <QString>

#include <cstdint>
#include <string>

namespace lastrivet::ui {

/// A number with so many figures at most, in the person's language. What is shown can be typed
/// again: no thousands are parted. With `QLocale::FloatingPointShortest` in place of a count it has
/// all figures and never an exponent.
QString numberText(double value, int figures = 6);

/// The same with so many decimals at most, and without zeros at the end.
QString plainNumber(double value, int decimals = 3);

/// A count, its thousands parted as the person's language does: it is never typed again.
QString countText(std::int64_t count);

/// What stands before decimals in the person's language.
DecimalSign decimalSign();

/// What a person typed, with a point for the language's own sign for decimals: where that is a
/// comma, it is never a thousand, because "1,125" was shown like this; and "1.125" could be one,
/// but for inches, so it becomes "1125 or 1,125", which no reader takes for a number.
std::string withPoint(const QString &typed);

/// The first number among words that `withPoint` would not tell, in both its readings: in the
/// limits "2.740-2.746 mm". Empty when there is none.
QString twoReadings(const QString &words);

/// What a person typed as a number; a point and the language's own sign are both understood, but
/// for a point that may part thousands.
Result<double, Message> readNumber(const QString &text);

} // namespace lastrivet::ui
