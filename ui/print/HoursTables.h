// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Cone.h"
#include "core/forecast/LookBack.h"
#include "core/hours/Account.h"
#include "ui/print/FigureTable.h"
#include "ui/print/Wording.h"

namespace lastrivet::print {

// Every figure of the hours, in the language of `words`.

/// Own hours of each part and with everything below it.
FigureTable partHours(const Wording &words, const Records &records, const hours::Totals &totals);
FigureTable kindHours(const Wording &words, const hours::Totals &totals);
/// Everybody on record, those without hours last.
FigureTable personHours(const Wording &words, const Records &records, const hours::Totals &totals);
/// The latest first.
FigureTable weekHours(const Wording &words, const hours::Totals &totals);
FigureTable monthHours(const Wording &words, const hours::Totals &totals);
/// Estimates beside what came of them, step by step in the tree of parts.
FigureTable stepHours(const Wording &words, const Records &records,
                      const hours::Estimates &estimates);
/// Hours to go and days, for the whole and for each assembly, those that carry the spread first;
/// then how the hours may go on from those `done` by now.
FigureTable forecastTable(const Wording &words, const Records &records,
                          const forecast::Outlook &outlook, Minutes done);
/// What the forecast said each month and what came, the latest first.
FigureTable lookBackTable(const Wording &words, const forecast::LookBack &told);

/// "14 % of it done again": rework in all work, of all who worked.
QString reworkWords(const Wording &words, const hours::Totals &totals);
/// "130 %"; a dash without a whole.
QString shareOf(const Wording &words, Minutes part, Minutes whole);
/// Whole hours: "310".
QString wholeHours(const Wording &words, std::int64_t minutes);

} // namespace lastrivet::print
