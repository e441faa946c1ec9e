// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/workshop/Sum.h"

#include <string_view>
#include <vector>

namespace lastrivet::ui {

/// What belongs together at the bench: sums to fill in, and the tables behind them.
struct Topic {
    QString title;
    /// Empty when there is nothing to work out.
    std::vector<Sum> (*sums)() = nullptr;
    std::vector<std::string_view> tables;
};

/// In the order in which they are offered; every table stands in one of them.
std::vector<Topic> topics();

} // namespace lastrivet::ui
