// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Density.h"

#include "ui/shell/Theme.h"

namespace lastrivet::ui {

namespace {

constexpr int tallRowHeight = 36;
/// One for the whole application, as font and style are.
int chosenHeight = Theme::rowHeight;

} // namespace

int rowHeight()
{
    return chosenHeight;
}

void setTallRows(bool areTall)
{
    chosenHeight = areTall ? tallRowHeight : Theme::rowHeight;
}

} // namespace lastrivet::ui
