// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/HoursView.h"

#include "core/exchange/csv/ForecastCsv.h"
#include "core/exchange/csv/HoursCsv.h"
#include "ui/print/HoursCharts.h"
#include "ui/print/HoursSentences.h"
#include "ui/print/HoursTables.h"

#include <QCoreApplication>

#include <ostream>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("HoursView", text);
}

hours::Grouping groupingOf(HoursView view)
{
    switch (view) {
    case HoursView::Steps:
        return hours::Grouping::Step;
    case HoursView::Kinds:
        return hours::Grouping::Kind;
    case HoursView::People:
        return hours::Grouping::Person;
    case HoursView::Weeks:
        return hours::Grouping::Week;
    case HoursView::Months:
        return hours::Grouping::Month;
    default:
        return hours::Grouping::Component;
    }
}

} // namespace

QString nameOf(HoursView view)
{
    switch (view) {
    case HoursView::Ahead:
        return tr("To go");
    case HoursView::Parts:
        return tr("By part");
    case HoursView::Steps:
        return tr("Estimates");
    case HoursView::Kinds:
        return tr("By kind");
    case HoursView::People:
        return tr("By person");
    case HoursView::Weeks:
        return tr("By week");
    case HoursView::Months:
        return tr("By month");
    case HoursView::LookBack:
        return tr("Look back");
    }
    return {};
}

bool isThere(HoursView view, const HoursAnswer &answer)
{
    if (view == HoursView::Ahead)
        return answer.account && answer.outlook;
    return view == HoursView::LookBack ? answer.look_back != nullptr : answer.account != nullptr;
}

QString titleOf(HoursView view, const print::Wording &words)
{
    switch (view) {
    case HoursView::Ahead:
        return print::forecastTitle(words);
    case HoursView::LookBack:
        return print::lookBackTitle(words);
    default:
        return print::hoursTitle(words);
    }
}

QStringList sentencesOf(HoursView view, const HoursAnswer &answer, const print::Wording &words)
{
    switch (view) {
    case HoursView::Ahead:
        return print::forecastSentences(words, *answer.records, answer.outlook->told);
    case HoursView::LookBack:
        return print::lookBackSentences(words, *answer.look_back);
    case HoursView::Steps:
        return print::estimateSentences(words, answer.account->estimates);
    default:
        return {print::hoursSentence(words, answer.account->totals)};
    }
}

print::FigureTable tableOf(HoursView view, const HoursAnswer &answer, const print::Wording &words)
{
    const Records &records = *answer.records;
    switch (view) {
    case HoursView::Ahead:
        return print::forecastTable(words, records, *answer.outlook,
                                    answer.account->totals.total.worker_minutes);
    case HoursView::Parts:
        return print::partHours(words, records, answer.account->totals);
    case HoursView::Steps:
        return print::stepHours(words, records, answer.account->estimates);
    case HoursView::Kinds:
        return print::kindHours(words, answer.account->totals);
    case HoursView::People:
        return print::personHours(words, records, answer.account->totals);
    case HoursView::Weeks:
        return print::weekHours(words, answer.account->totals);
    case HoursView::Months:
        return print::monthHours(words, answer.account->totals);
    case HoursView::LookBack:
        return print::lookBackTable(words, *answer.look_back);
    }
    return {};
}

print::ChartPlan chartOf(HoursView view, const HoursAnswer &answer, const print::Wording &words)
{
    const Records &records = *answer.records;
    switch (view) {
    case HoursView::Ahead:
        return print::coneChart(words, answer.account->course, answer.outlook->cone);
    case HoursView::Parts:
        return print::partChart(words, records, answer.account->totals);
    case HoursView::Steps:
        return print::stepChart(words, records, answer.account->estimates);
    case HoursView::Kinds:
        return print::kindChart(words, answer.account->totals);
    case HoursView::People:
        return print::personChart(words, records, answer.account->totals);
    case HoursView::Weeks:
        return print::weekChart(words, answer.account->course);
    case HoursView::Months:
        return print::monthChart(words, answer.account->totals);
    case HoursView::LookBack:
        return print::lookBackChart(words, *answer.look_back);
    }
    return {};
}

void writeCsv(HoursView view, const HoursAnswer &answer, std::ostream &out)
{
    switch (view) {
    case HoursView::Ahead:
        exchange::writeForecast(answer.outlook->told, *answer.records, out);
        out << "\r\n";
        exchange::writeCourse(answer.account->course, answer.outlook->cone, out);
        break;
    case HoursView::LookBack:
        exchange::writeLookBack(*answer.look_back, out);
        break;
    default:
        exchange::writeHours(*answer.records, answer.as_of, groupingOf(view), out);
        break;
    }
}

} // namespace lastrivet::ui
