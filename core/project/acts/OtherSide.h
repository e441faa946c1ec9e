// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet::acts {

/// A side of the aeroplane, as seen by the pilot.
enum class Side { Left, Right };

/// The side that a name names first ("Left wing", "Aileron LH", "linke Fläche"); none when it names
/// no side.
std::optional<Side> sideNamed(std::string_view name);

/// The name with left and right exchanged, word by word, in English, German and French.
std::string nameOnOtherSide(std::string_view name);

/// The code that the matching part has on the other side. Only a letter L or R that stands alone
/// ("W-L-3") or begins the code ("LW-R3") names a side: R3 is rib 3 on both sides.
std::string codeOnOtherSide(std::string_view code, Side from);

} // namespace lastrivet::acts
