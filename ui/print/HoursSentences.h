// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Forecast.h"
#include "core/forecast/LookBack.h"
#include "core/hours/Estimates.h"
#include "core/hours/Hours.h"
#include "ui/print/Wording.h"

#include <QStringList>

namespace lastrivet::print {

QString hoursTitle(const Wording &words);
QString forecastTitle(const Wording &words);
QString lookBackTitle(const Wording &words);

/// How many hours there are, and the share that was done again.
QString hoursSentence(const Wording &words, const hours::Totals &totals);
QStringList estimateSentences(const Wording &words, const hours::Estimates &estimates);
/// "96 to 210 h to go": never one number.
QString rangeSentence(const Wording &words, const forecast::Forecast &told);
/// What is left and how long it may take, what was guessed, what carries the spread, what is left
/// out by choice.
QStringList forecastSentences(const Wording &words, const Records &records,
                              const forecast::Forecast &told);
QStringList lookBackSentences(const Wording &words, const forecast::LookBack &told);

} // namespace lastrivet::print
