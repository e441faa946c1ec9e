// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/BlankForm.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/ByHand.h"
#include "ui/print/Cautions.h"
#include "ui/print/Table.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

constexpr double fieldHeight = millimetres(11);

/// A line to write on, its name small below it, as wide as its share of the page.
struct Field {
    QString name;
    double share = 1;
};

/// One kind of form: what is filled in once, and the empty table below.
struct Sheet {
    std::vector<Field> fields;
    std::vector<Table::Column> columns;
    /// First cells of the rows, over and over; a handwritten row is at least `least_height` high.
    std::vector<Table::Cell> firstCells;
    double least_height = millimetres(10);
    QString note;
    /// Filled in last, below the table.
    std::vector<Field> ending = {};
};

Table::Column column(const QString &head, double share)
{
    return {head, share, false, true};
}

Sheet torqueSheet(const Wording &words)
{
    return {
        {{words.text("Part"), 2.8},
         {words.text("Wrench and its number"), 2.4},
         {words.text("Unit"), 0.9},
         {words.text("Who"), 1.9}},
        {column(words.text("Place"), 3.4), column(words.text("Hardware"), 2.6),
         column(words.text("Qty"), 0.9), column(words.text("Limits"), 2),
         column(words.text("Reading"), 1.6), column(words.text("Drag in it"), 1.3),
         column(words.text("Day"), 1.5), column(words.text("Marked"), 1.4),
         column(words.text("Locked"), 1.4)},
        {},
        millimetres(10),
        words.text("Limits are the maker's; general tables come after them. The reading is what "
                   "the wrench showed, with the drag of a self-locking nut still in it.")};
}

Sheet batchSheet(const Wording &words, UnitSystem units)
{
    const std::string degrees = units == UnitSystem::Metric ? "°C" : "°F";
    return {
        {{words.text("Part"), 3}, {words.text("Place of work"), 2}, {words.text("Who"), 2}},
        {column(words.text("Day, time"), 1.9), column(words.text("Material and lot"), 3.4),
         column(words.text("Use before"), 1.6), column(words.text("Mix"), 1.3),
         column(words.text("{0} from – to", {degrees}), 1.5), column(words.text("% humidity"), 1.3),
         column(words.text("Cure time"), 1.4), column(words.text("Sample kept, good"), 1.6)},
        {},
        millimetres(14),
        words.text("Cure times hold at the maker's temperature; a cold workshop needs longer.")};
}

std::vector<Table::Cell> days(const Wording &words)
{
    constexpr int rowsADay = 3;
    std::vector<Table::Cell> cells;
    // The week begins as the country has it, in whichever language form and screen are.
    const int first = int(QLocale::system().firstDayOfWeek());
    for (int day = 0; day < 7; ++day) {
        const QString name =
            words.locale().standaloneDayName((first - 1 + day) % 7 + 1, QLocale::ShortFormat);
        cells.push_back({name, Mark::None, true});
        cells.resize(cells.size() + rowsADay - 1);
    }
    return cells;
}

Sheet weekSheet(const Wording &words)
{
    return {{{words.text("Week from"), 1}, {words.text("to"), 1}, {words.text("Who"), 2}},
            {column(words.text("Day"), 0.9), column(words.text("From"), 0.9),
             column(words.text("Time"), 0.9), column(words.text("Part, step"), 2.4),
             column(words.text("What was done"), 5), column(words.text("Kind"), 1.4),
             column(words.text("With"), 1.5)},
            days(words),
            millimetres(7),
            words.text("Kinds: fabrication, assembly, finishing, rework, inspection, planning, "
                       "other. Pictures taken: say so beside the line.")};
}

Sheet findingSheet(const Wording &words)
{
    return {
        {{words.text("Inspector, name and number"), 2.8},
         {words.text("Day"), 1.3},
         {words.text("What was looked at"), 2.9},
         {words.text("Report number"), 2}},
        {column(words.text("No."), 0.6), column(words.text("Finding"), 4.6),
         column(words.text("Part, place"), 2), column(words.text("A, W or C"), 0.9),
         column(words.text("Looked at again by"), 1.7), column(words.text("Corrected on, by"), 1.8),
         column(words.text("Seen again"), 1.7)},
        {},
        millimetres(17),
        words.text("A airworthiness, W workmanship, C cosmetic. The authority's own report form "
                   "governs."),
        {{words.text("Signature of the inspector, day"), 1},
         {words.text("Signature of the builder, day"), 1}}};
}

Sheet sheetOf(const Wording &words, const BlankForm &form)
{
    switch (form.kind) {
    case BlankFormKind::Torque:
        return torqueSheet(words);
    case BlankFormKind::Batches:
        return batchSheet(words, form.units);
    case BlankFormKind::Week:
        return weekSheet(words);
    case BlankFormKind::Findings:
        return findingSheet(words);
    }
    return {};
}

void drawHead(Pages &pages, const BlankForm &form)
{
    pages.text(aircraftName(form.aircraft) + QStringLiteral("  ·  ") + asIs(form.aircraft.builder),
               Size::Small);
    pages.text(nameOf(pages.wording(), form.kind), Size::Heading, true);
    pages.rule(points(1.2));
}

void drawFields(Pages &pages, const std::vector<Field> &fields)
{
    const double gap = points(12);
    double shares = 0;
    for (const Field &field : fields)
        shares += field.share;
    const double free = pages.body().width() - gap * double(fields.size() - 1);
    pages.advance(fieldHeight);
    double left = pages.body().left();
    for (const Field &field : fields) {
        const double width = free * field.share / shares;
        drawWritingLine(pages, left, width, pages.y(), field.name);
        left += width + gap;
    }
    pages.advance(lineHeight(Size::Small) + points(8));
}

/// Empty rows that fill the page down to what stands below them.
Table emptyTable(const Sheet &sheet, double space, double width)
{
    Table table;
    table.columns = sheet.columns;
    table.has_grid = true;
    table.rows.resize(1);
    table.rows[0].least_height = sheet.least_height;
    const double ruled = sheet.least_height + points(0.25);
    const double head = leastHeightOf(table, width) - sheet.least_height;
    std::size_t count = std::size_t(std::max(1.0, (space - head) / ruled));
    double height = sheet.least_height;
    if (!sheet.firstCells.empty()) {
        count = sheet.firstCells.size();
        height = (space - head) / double(count) - points(0.25);
    }
    table.rows.resize(count);
    for (std::size_t i = 0; i < count; ++i) {
        table.rows[i].least_height = height;
        if (!sheet.firstCells.empty())
            table.rows[i].cells = {sheet.firstCells[i % sheet.firstCells.size()]};
    }
    return table;
}

double heightOf(const QString &text, double width)
{
    return TextBlock(text, Size::Small, width).height();
}

void drawSheet(Pages &pages, const BlankForm &form)
{
    const Sheet sheet = sheetOf(pages.wording(), form);
    const double width = pages.body().width();
    drawHead(pages, form);
    drawFields(pages, sheet.fields);
    // The caution of every sheet takes two lines, three in longer languages.
    const double ending =
        sheet.ending.empty() ? 0 : fieldHeight + lineHeight(Size::Small) + points(8);
    const double below =
        ending + heightOf(sheet.note, width) + 3 * lineHeight(Size::Small) + points(10);
    drawTable(pages, emptyTable(sheet, pages.spaceLeft() - below, width));
    if (!sheet.ending.empty())
        drawFields(pages, sheet.ending);
    pages.advance(points(5));
    pages.text(sheet.note, Size::Small);
    drawFormCaution(pages);
}

} // namespace

QString nameOf(const Wording &words, BlankFormKind kind)
{
    switch (kind) {
    case BlankFormKind::Torque:
        return words.text("Torque list");
    case BlankFormKind::Batches:
        return words.text("Lay-up and glue batches");
    case BlankFormKind::Week:
        return words.text("Log of a week");
    case BlankFormKind::Findings:
        return words.text("Findings of a visit");
    }
    return {};
}

std::optional<Printed> printBlankForm(const BlankForm &form, const Imprint &imprint,
                                      const Choices &choices, const std::filesystem::path &place,
                                      const OnPercent &onPercent)
{
    Document document = documentAbout(form.aircraft, nameOf(choices.wording, form.kind));
    for (int sheet = 0; sheet < form.sheets; ++sheet)
        document.sections.push_back([&form, sheet](Pages &pages, PictureShelf &) {
            if (sheet > 0)
                pages.breakPage();
            drawSheet(pages, form);
        });
    return printDocument(document, imprint, {}, choices, place, onPercent);
}

} // namespace lastrivet::print
