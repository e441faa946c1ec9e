// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace lastrivet {

/// Exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (international yard and pound, 1959).
inline constexpr double millimetresOfInch = 25.4;
inline constexpr double kilogramsOfPound = 0.45359237;

} // namespace lastrivet
