// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HoursPrinter.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/Cautions.h"
#include "ui/print/Title.h"

namespace lastrivet::print {

namespace {

/// Of the chart that is played there, so that its letters are not drawn out on wider paper.
constexpr double heightOfWidth = 402.0 / 720;

void drawChart(Pages &pages, const HoursReport &report)
{
    if (!report.draw_chart)
        return;
    const double width = pages.body().width();
    const double height = width * heightOfWidth;
    pages.gap(millimetres(3));
    pages.need(height);
    report.draw_chart(pages.painter(), {pages.body().left(), pages.y(), width, height});
    pages.advance(height);
    pages.gap(millimetres(3));
}

void drawHours(Pages &pages, const HoursReport &report)
{
    drawTitle(pages, report.title, aircraftName(report.aircraft), {});
    for (const QString &sentence : report.sentences)
        pages.text(sentence);
    drawChart(pages, report);
    Table table = printed(report.table);
    table.kept_behind = heightOfCautions(pages, report.cautions, About::Figures);
    if (table.rows.empty())
        pages.text(report.table.when_empty);
    drawTable(pages, table);
    drawCautions(pages, report.cautions, About::Figures);
}

} // namespace

std::optional<Printed> printHours(const HoursReport &report, const Imprint &imprint,
                                  const Choices &choices, const std::filesystem::path &place,
                                  const OnPercent &onPercent)
{
    Document document = documentAbout(report.aircraft, report.title);
    document.sections = {[&](Pages &pages, PictureShelf &) { drawHours(pages, report); }};
    return printDocument(document, imprint, {}, choices, place, onPercent);
}

} // namespace lastrivet::print
