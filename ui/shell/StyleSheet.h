// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace lastrivet::ui {

struct Colours;

/// What a palette cannot say: focus is a ring of 2 pixels, frames are hairlines, boxes to tick show
/// in the dark.
///
/// Widgets take part by the properties `primary` and `flat` of buttons, and `ownRing` of lists that
/// draw the ring around a row.
QString styleSheetOf(const Colours &colours);

} // namespace lastrivet::ui
