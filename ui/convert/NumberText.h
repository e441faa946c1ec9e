// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"

#include <QString>

namespace lastrivet::ui {

/// A number with so many figures at most, in the person's language. What is shown can be typed
/// again: no thousands are parted.
QString numberText(double value, int figures = 6);

/// What a person typed as a number; a point and the language's own sign are both understood.
Result<double, Message> readNumber(const QString &text);

} // namespace lastrivet::ui
