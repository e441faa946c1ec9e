// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/hours/ChartInk.h"
#include "ui/print/ChartPlan.h"

#include <QPicture>
#include <QSize>

#include <memory>

class QChart;

namespace lastrivet::ui {

/// The chart of a plan.
std::unique_ptr<QChart> drawn(const print::ChartPlan &plan, const ChartInk &ink);

/// A chart drawn once in this thread, to be played by any: lines and letters, no dots.
QPicture recorded(const print::ChartPlan &plan, const ChartInk &ink, QSize size);

} // namespace lastrivet::ui
