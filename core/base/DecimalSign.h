// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace lastrivet {

/// What stands before the decimals where a person writes; the other of the two may part thousands.
enum class DecimalSign { Unknown, Point, Comma };

} // namespace lastrivet
