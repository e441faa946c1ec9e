// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Cone.h"
#include "core/forecast/LookBack.h"
#include "core/hours/Account.h"
#include "ui/print/ChartPlan.h"
#include "ui/print/Wording.h"

namespace lastrivet::print {

// What the charts of the hours show, in the language of `words`; the tables have every figure.

/// An empty plan that counts hours.
ChartPlan hoursPlan(const Wording &words, const QString &title);

/// Top parts by their hours with everything below.
ChartPlan partChart(const Wording &words, const Records &records, const hours::Totals &totals);
ChartPlan kindChart(const Wording &words, const hours::Totals &totals);
ChartPlan personChart(const Wording &words, const Records &records, const hours::Totals &totals);
/// The last year, week by week; work done again apart.
ChartPlan weekChart(const Wording &words, const std::vector<hours::CoursePoint> &course);
ChartPlan monthChart(const Wording &words, const hours::Totals &totals);
/// Estimates of top parts beside what came of them.
ChartPlan stepChart(const Wording &words, const Records &records,
                    const hours::Estimates &estimates);
/// How the hours grew, and the cone in which they may go on.
ChartPlan coneChart(const Wording &words, const std::vector<hours::CoursePoint> &course,
                    const std::vector<forecast::ConePoint> &cone);
/// What was said each month of the work that is done since, and what came.
ChartPlan lookBackChart(const Wording &words, const forecast::LookBack &told);

} // namespace lastrivet::print
