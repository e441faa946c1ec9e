// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

class QWidget;

namespace lastrivet::ui {

/// Has what lies over its parent placed anew each time that the parent changes its size while it is
/// shown.
void keepPlaced(QWidget &overlay, const std::function<void()> &place);

} // namespace lastrivet::ui
