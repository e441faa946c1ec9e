// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Lengths on paper. The unit is a tenth of a point, so that fonts keep their widths when Qt rounds
// them to whole units.
namespace lastrivet::print {

inline constexpr int unitsPerInch = 720;

constexpr double points(double count)
{
    return count * 10.0;
}
constexpr double millimetres(double count)
{
    return count * unitsPerInch / 25.4;
}
constexpr double toPoints(double units)
{
    return units / 10.0;
}

} // namespace lastrivet::print
