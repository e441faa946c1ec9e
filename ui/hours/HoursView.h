// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/hours/HoursCalculation.h"
#include "ui/print/ChartPlan.h"
#include "ui/print/FigureTable.h"
#include "ui/print/Wording.h"

#include <QStringList>

#include <iosfwd>

namespace lastrivet::ui {

/// What the page of hours can show.
enum class HoursView { Ahead, Parts, Steps, Kinds, People, Weeks, Months, LookBack };
inline constexpr int hoursViewCount = 8;

/// "By part"
QString nameOf(HoursView view);
/// False until the answer has what the view shows.
bool isThere(HoursView view, const HoursAnswer &answer);

// All of these in the language of `words`, and of a view that is there.
QString titleOf(HoursView view, const print::Wording &words);
QStringList sentencesOf(HoursView view, const HoursAnswer &answer, const print::Wording &words);
print::FigureTable tableOf(HoursView view, const HoursAnswer &answer, const print::Wording &words);
print::ChartPlan chartOf(HoursView view, const HoursAnswer &answer, const print::Wording &words);
/// Every figure of it, in whole minutes.
void writeCsv(HoursView view, const HoursAnswer &answer, std::ostream &out);

} // namespace lastrivet::ui
