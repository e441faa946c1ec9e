// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/WeightSection.h"

#include "ui/print/EnvelopeDrawing.h"
#include "ui/print/Facts.h"
#include "ui/print/Measures.h"
#include "ui/print/PartTable.h"

namespace lastrivet::print {

namespace {

using packet::WeightReport;

constexpr double drawingHeight = 250;
/// As many as the window shows.
constexpr int weightDecimals = 2;

int armDecimals(balance::Units units)
{
    return units.arm == ArmUnit::Inches ? 2 : 1;
}

/// Without a sign between thousands: in the next language it is the decimal point.
QString figure(const Wording &words, double value, int decimals)
{
    QLocale plain = words.locale();
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    return plain.toString(value, 'f', decimals);
}

QString figure(const Wording &words, const std::optional<double> &value, int decimals)
{
    return value ? figure(words, *value, decimals) : QString();
}

QString inUnit(const QString &head, std::string_view unit)
{
    return QStringLiteral("%1, %2").arg(head,
                                        QString::fromUtf8(unit.data(), qsizetype(unit.size())));
}

/// Heads with the report's units.
class Heads {
public:
    Heads(const Wording &words, balance::Units units)
        : m_words(words)
        , m_units(units)
    {
    }
    QString weight() const { return inUnit(m_words.text("Weight"), word(m_units.weight)); }
    QString arm() const { return inUnit(m_words.text("Arm"), word(m_units.arm)); }
    QString moment() const
    {
        return inUnit(m_words.text("Moment"),
                      std::string(word(m_units.weight)) + "·" + std::string(word(m_units.arm)));
    }
    QString cg() const { return inUnit(m_words.text("Centre of gravity"), word(m_units.arm)); }

private:
    const Wording &m_words;
    balance::Units m_units;
};

QString within(const Wording &words, const std::optional<bool> &isWithin)
{
    if (!isWithin)
        return {};
    return words.text(*isWithin ? "within the limits" : "OUTSIDE the limits");
}

QString calibration(const Wording &words, const WeightReport::Scale &scale)
{
    const QString until = words.day(scale.calibrated_until);
    if (!scale.was_uncalibrated)
        return until;
    const QString why = words.text("NOT in calibration when weighed");
    return until.isEmpty() ? why : until + QStringLiteral(", ") + why;
}

void drawHowWeighed(Pages &pages, const WeightReport &report)
{
    const Wording &words = pages.wording();
    const Weighing &weighing = *report.weighing;
    drawFacts(pages, {{words.text("Weighed"), words.date(weighing.weighed_on)},
                      {words.text("Where"), asIs(weighing.place)},
                      {words.text("Datum"), asIs(weighing.datum)},
                      {words.text("Levelled by"), asIs(weighing.level)},
                      {words.text("Fuel"), asIs(weighing.fuel_state)},
                      {words.text("Oil"), asIs(weighing.oil_state)},
                      {words.text("Equipment on board"), asIs(weighing.equipment_note)},
                      {words.text("Note"), asIs(weighing.note)}});
    const Heads heads(words, report.units);
    Table table;
    const auto weight = word(report.units.weight);
    table.columns = {{words.text("Scale under"), 3},
                     {inUnit(words.text("Reading"), weight), 1.8, true},
                     {inUnit(words.text("Tare"), weight), 1.5, true},
                     {inUnit(words.text("Net"), weight), 1.8, true},
                     {heads.arm(), 1.8, true},
                     {words.text("Scale"), 3},
                     {words.text("Calibrated until"), 2.2}};
    for (const auto &scale : report.scales)
        table.rows.push_back({{{asIs(scale.point)},
                               {figure(words, scale.reading, weightDecimals)},
                               {figure(words, scale.tare, weightDecimals)},
                               {figure(words, scale.reading - scale.tare, weightDecimals)},
                               {figure(words, scale.arm, armDecimals(report.units))},
                               {asIs(scale.tool)},
                               {calibration(words, scale)}}});
    drawTable(pages, table);
    pages.advance(points(8));
}

QString kindOf(const Wording &words, balance::Line::Kind kind)
{
    switch (kind) {
    case balance::Line::Kind::Scale:
        return words.text("scale, net");
    case balance::Line::Kind::Correction:
        return words.text("correction");
    case balance::Line::Kind::Fitted:
        return words.text("fitted since");
    case balance::Line::Kind::Removed:
        return words.text("removed since");
    }
    return {};
}

void drawEmpty(Pages &pages, const WeightReport &report)
{
    const Wording &words = pages.wording();
    const Heads heads(words, report.units);
    Table table;
    table.columns = {{words.text("What"), 4},
                     {words.text("How"), 2.4},
                     {heads.weight(), 2, true},
                     {heads.arm(), 2, true},
                     {heads.moment(), 2.6, true}};
    for (const auto &line : report.empty->lines)
        table.rows.push_back({{{asIs(line.item.name)},
                               {kindOf(words, line.kind)},
                               {figure(words, line.item.weight, weightDecimals)},
                               {figure(words, line.item.arm, armDecimals(report.units))},
                               {figure(words, line.item.weight * line.item.arm, 1)}}});
    const auto &sum = report.empty->sum;
    table.rows.push_back({{{words.text("Empty weight"), Mark::None, true},
                           {},
                           {figure(words, sum.weight, weightDecimals), Mark::None, true},
                           {figure(words, sum.cg, 2), Mark::None, true},
                           {figure(words, sum.moment, 1), Mark::None, true}}});
    pages.smallHeading(words.text("Empty weight and centre of gravity"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
    pages.advance(points(4));
    if (report.percent_mac)
        pages.text(words.text("The centre of gravity lies at {0} % of the mean aerodynamic chord.",
                              {figure(words, *report.percent_mac, 1).toStdString()}));
    if (!report.empty->without_weight.empty())
        pages.text(words.text("Of equipment fitted or removed since the weighing, items that are "
                              "not in the sum, without weight or arm on record: {0}.",
                              {words.count(report.empty->without_weight.size())}));
}

std::optional<double> momentOf(const WeightReport::EquipmentLine &item)
{
    if (!item.weight || !item.arm)
        return std::nullopt;
    return *item.weight * *item.arm;
}

/// Two in one column: in German nine heads are wider than the paper.
QString makerOf(const WeightReport::EquipmentLine &item)
{
    QStringList lines{asIs(item.maker), asIs(item.part_number)};
    lines.removeAll(QString());
    return lines.join(QLatin1Char('\n'));
}

QString fittedIn(const Wording &words, const WeightReport::EquipmentLine &item)
{
    QStringList lines{words.day(item.fitted_on)};
    if (item.removed_on)
        lines << words.text("removed {0}", {item.removed_on->dayOnly().text()});
    lines.removeAll(QString());
    return lines.join(QLatin1Char('\n'));
}

void drawEquipmentList(Pages &pages, const WeightReport &report)
{
    const Wording &words = pages.wording();
    const Heads heads(words, report.units);
    Table table;
    table.columns = {{words.text("Equipment"), 3.6},     {words.text("Maker, part number"), 2.8},
                     {words.text("Serial number"), 2.6}, {heads.weight(), 1.8, true},
                     {heads.arm(), 1.8, true},           {heads.moment(), 2.2, true},
                     {words.text("Fitted"), 2.4}};
    for (const auto &item : report.equipment)
        table.rows.push_back({{{asIs(item.name)},
                               {makerOf(item)},
                               {asIs(item.serial_number)},
                               {figure(words, item.weight, weightDecimals)},
                               {figure(words, item.arm, armDecimals(report.units))},
                               {figure(words, momentOf(item), 1)},
                               {fittedIn(words, item)}}});
    pages.smallHeading(words.text("Equipment list"), leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("No equipment is on record."));
    drawTable(pages, table);
}

QString inWeighing(const Wording &words, WeightReport::Weighed weighed)
{
    switch (weighed) {
    case WeightReport::Weighed::NotYet:
        return words.text("not weighed yet");
    case WeightReport::Weighed::In:
        return words.text("before the weighing: in it");
    case WeightReport::Weighed::NotIn:
        return words.text("after the weighing: not in it");
    }
    return {};
}

void drawEffects(Pages &pages, const WeightReport &report)
{
    if (report.effects.empty())
        return;
    const Wording &words = pages.wording();
    const Heads heads(words, report.units);
    Table table;
    table.columns = {{words.text("Deviation or bulletin"), 5},
                     {heads.weight(), 2, true},
                     {heads.arm(), 2, true},
                     {words.text("Done"), 2},
                     {words.text("Weighed"), 3}};
    for (const auto &effect : report.effects)
        table.rows.push_back({{{asIs(effect.title)},
                               {figure(words, effect.weight, weightDecimals)},
                               {figure(words, effect.arm, armDecimals(report.units))},
                               {words.day(effect.when)},
                               {inWeighing(words, effect.weighed)}}});
    pages.smallHeading(words.text("What changes the weight"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

void addSum(Table &table, const Wording &words, const QString &sign, const QString &name,
            const balance::Balance &sum, const std::optional<bool> &isWithin)
{
    table.rows.push_back({{{sign},
                           {name},
                           {figure(words, sum.weight, weightDecimals), Mark::None, true},
                           {figure(words, sum.cg, 2), Mark::None, true},
                           {figure(words, sum.percent_mac, 1)},
                           {within(words, isWithin), Mark::None, isWithin == false}}});
}

QString loadsIn(const Wording &words, const WeightReport &report, const balance::Loading &loading)
{
    QStringList lines;
    for (std::size_t i = 0; i < report.loads.size(); ++i)
        lines << words.text("{0}: {1}",
                            {report.loads[i].what,
                             figure(words, loading.weights[i], weightDecimals).toStdString()});
    return words.listed(lines);
}

/// No line ends between a figure and its unit.
std::string withUnit(const QString &value, std::string_view unit)
{
    return value.toStdString() + "\u00a0" + std::string(unit);
}

/// The name, and a line for each load with its weight and arm.
QString namedLoads(const Wording &words, const WeightReport &report,
                   const WeightReport::Case &loading)
{
    QStringList lines{asIs(loading.name)};
    for (const balance::Item &item : loading.items)
        lines << words.text(
            "{0}: {1} at {2}",
            {item.name,
             withUnit(figure(words, item.weight, weightDecimals), word(report.units.weight)),
             withUnit(figure(words, item.arm, armDecimals(report.units)), word(report.units.arm))});
    return lines.join(QLatin1Char('\n'));
}

Table loadingTable(const Wording &words, const WeightReport &report)
{
    const Heads heads(words, report.units);
    Table table;
    table.columns = {
        {QString(), 0.6},        {words.text("Loading"), 5.4},     {heads.weight(), 2, true},
        {heads.cg(), 2.2, true}, {words.text("% MAC"), 1.4, true}, {words.text("Limits"), 2.6}};
    for (std::size_t i = 0; i < report.cases.size(); ++i) {
        const auto &loading = report.cases[i];
        if (loading.refusal)
            table.rows.push_back(
                {{{signOfCase(i)},
                  {words.text("{0}: {1}", {loading.name, nested(*loading.refusal)})}}});
        else
            addSum(table, words, signOfCase(i), namedLoads(words, report, loading), loading.sum,
                   loading.is_within);
    }
    if (report.extremes) {
        const auto &[forward, aft] = *report.extremes;
        addSum(table, words, QStringLiteral("F"),
               words.text("Farthest forward") + QLatin1Char('\n') + loadsIn(words, report, forward),
               forward.sum, report.forward_is_within);
        addSum(table, words, QStringLiteral("A"),
               words.text("Farthest aft") + QLatin1Char('\n') + loadsIn(words, report, aft),
               aft.sum, report.aft_is_within);
    }
    return table;
}

void drawPicture(Pages &pages, const WeightReport &report)
{
    const Wording &words = pages.wording();
    const Heads heads(words, report.units);
    EnvelopePlot plot = envelopePlot(report);
    if (plot.corners.empty() && plot.points.empty())
        return;
    plot.arm_title = heads.cg();
    plot.weight_title = heads.weight();
    plot.number = [&](double value) { return words.number(value); };
    const double height = points(drawingHeight);
    constexpr double linesBelow = 4;
    pages.smallHeading(words.text("Loadings and limits in a picture"),
                       height + points(12) + linesBelow * lineHeight(Size::Small));
    const QRectF place(pages.body().left(), pages.y() + points(6), pages.body().width(), height);
    paintEnvelope(pages.painter(), place, plot,
                  {Qt::black, QColor(0x99, 0x99, 0x99), QColor(0xf2, 0xf2, 0xf2), font(Size::Small),
                   points(1)});
    pages.advance(height + points(12));
    pages.text(words.text("Square: the empty aeroplane. Discs: the loadings by their number. "
                          "Triangles: the extremes. E, F and A name them."),
               Size::Small);
    if (report.limits && !report.limits->source.empty())
        pages.text(words.text("Limits from: {0}", {report.limits->source}), Size::Small);
}

void drawLoading(Pages &pages, const WeightReport &report)
{
    const Wording &words = pages.wording();
    const Table table = loadingTable(words, report);
    pages.smallHeading(words.text("Loading and limits"),
                       leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("No loading is on record."));
    drawTable(pages, table);
    if (!table.rows.empty())
        pages.gap(points(4));
    if (!report.empty && !report.cases.empty()) {
        pages.text(
            words.text("There is no weighing to count on: each sum is of nothing but what the "
                       "loading itself names, and an empty weight among it is an estimate."));
    }
    if (report.no_extremes)
        pages.text(words.text(*report.no_extremes));
    if (report.extremes)
        pages.text(words.text("The extremes are searched over all loads that the cases name: of "
                              "each no less than the least and no more than the most of any case, "
                              "within the maximum weight."),
                   Size::Small);
    drawPicture(pages, report);
}

} // namespace

void drawWeight(Pages &pages, const WeightReport &report)
{
    const Wording &words = pages.wording();
    pages.heading(0, words.text("Weight and balance"), points(120));
    if (report.refusal)
        pages.text(words.text(*report.refusal));
    if (report.weighing)
        drawHowWeighed(pages, report);
    if (report.empty)
        drawEmpty(pages, report);
    drawEquipmentList(pages, report);
    drawEffects(pages, report);
    drawLoading(pages, report);
    pages.gap(points(8));
    pages.text(
        words.text("Weigh indoors, level, with scales whose calibration holds, and say which "
                   "fuel and oil were on board. The flight manual and the authority decide "
                   "on limits."),
        Size::Small);
}

} // namespace lastrivet::print
