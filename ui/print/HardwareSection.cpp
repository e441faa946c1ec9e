// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Pages.h"
#include "ui/print/Table.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::FastenerEntry;
using packet::MaterialEntry;
using packet::MeasurementEntry;
using packet::ToolEntry;

QString rangeOf(const Wording &words, const std::optional<double> &least,
                const std::optional<double> &most)
{
    if (least && most)
        return words.number(*least) + QStringLiteral(" – ") + words.number(*most);
    if (least)
        return QStringLiteral("≥ ") + words.number(*least);
    return most ? QStringLiteral("≤ ") + words.number(*most) : QString();
}

QString acceptanceIn(const Wording &words, const std::optional<Moment> &on, const std::string &by,
                     const std::string &basis)
{
    return on ? QLatin1Char('\n') +
                    words.text("Accepted on {0} by {1}: {2}", {on->text(), by, basis})
              : QString();
}

/// Torque as it counts: what the wrench showed, less the drag of a self-locking nut.
std::optional<double> netTorque(const FastenerEntry &fastener)
{
    if (!fastener.torque_value)
        return std::nullopt;
    return *fastener.torque_value - fastener.torque_drag.value_or(0);
}

bool isOutOfLimits(const FastenerEntry &fastener)
{
    const std::optional<double> net = netTorque(fastener);
    return net && ((fastener.torque_min && *net < *fastener.torque_min) ||
                   (fastener.torque_max && *net > *fastener.torque_max));
}

Table::Cell torqueOf(const Wording &words, const FastenerEntry &fastener)
{
    const bool hasLimit = fastener.torque_min || fastener.torque_max;
    if (!fastener.torqued_on)
        return {hasLimit ? words.text("not torqued") : QString(), Mark::None, hasLimit};
    QString text = fastener.torque_value ? words.number(*fastener.torque_value)
                                         : words.text("torqued");
    if (fastener.torque_drag)
        text += words.text(", drag {0}", {words.number(*fastener.torque_drag).toStdString()});
    text += QLatin1Char('\n') + words.day(fastener.torqued_on);
    if (!fastener.tool.empty())
        text += QLatin1Char('\n') + asIs(fastener.tool);
    return {text, isOutOfLimits(fastener) ? Mark::NotMet : Mark::None, isOutOfLimits(fastener)};
}

QString lockingOf(const Wording &words, const FastenerEntry &fastener)
{
    if (fastener.locking == Locking::None)
        return {};
    QString text = words.text(packet::inWords(fastener.locking));
    if (fastener.is_locked_by_hand)
        text += QLatin1Char('\n') + (fastener.locked_on ? words.day(fastener.locked_on)
                                                        : words.text("not locked"));
    return text;
}

Table::Row rowOf(const Wording &words, const FastenerEntry &fastener)
{
    const QString unit = asIs(std::string(word(fastener.unit)));
    QString limits = rangeOf(words, fastener.torque_min, fastener.torque_max);
    if (!limits.isEmpty())
        limits += QLatin1Char('\n') + unit;
    return {{{asIs(fastener.place) +
              acceptanceIn(words, fastener.accepted_on, fastener.accepted_by,
                           fastener.accepted_basis)},
             {asIs(fastener.hardware)},
             {words.number(fastener.quantity)},
             {fastener.fitted_on ? words.day(fastener.fitted_on) : words.text("not fitted"),
              Mark::None, !fastener.fitted_on},
             {limits},
             torqueOf(words, fastener),
             {words.day(fastener.marked_on)},
             {lockingOf(words, fastener)}}};
}

Table::Row rowOf(const Wording &words, const MeasurementEntry &measurement)
{
    const bool isOut = measurement.isOutOfLimits();
    const QString value =
        measurement.value ? words.number(*measurement.value) : words.text("not measured");
    return {{{asIs(measurement.what) + acceptanceIn(words, measurement.accepted_on,
                                                    measurement.accepted_by,
                                                    measurement.accepted_basis)},
             {rangeOf(words, measurement.minimum, measurement.maximum)},
             {value, isOut ? Mark::NotMet : Mark::None, isOut || !measurement.value},
             {asIs(measurement.unit)},
             {words.day(measurement.measured_on)},
             {asIs(measurement.tool)}}};
}

QString lotIn(const Wording &words, const MaterialEntry::Lot &lot)
{
    QString text = asIs(lot.name);
    if (!lot.specification.empty())
        text += QStringLiteral(", ") + asIs(lot.specification);
    if (!lot.lot_number.empty())
        text += QLatin1Char('\n') + words.text("lot {0}", {lot.lot_number});
    if (lot.expires_on)
        text += QLatin1Char('\n') + words.text(lot.was_expired ? "used after its date, {0}"
                                                               : "use before {0}",
                                               {lot.expires_on->text()});
    if (lot.has_certificate)
        text += QLatin1Char('\n') + words.text("certificate filed");
    return text;
}

QString conditionsIn(const Wording &words, const MaterialEntry &use)
{
    QStringList lines;
    if (!use.mix_ratio.empty())
        lines << words.text("mix {0}", {use.mix_ratio});
    const QString temperature = rangeOf(words, use.temperature_min, use.temperature_max);
    if (!temperature.isEmpty())
        lines << temperature + QStringLiteral(" °") +
                     asIs(std::string(word(use.temperature_unit)));
    if (use.humidity)
        lines << words.number(*use.humidity) + QStringLiteral(" %");
    return lines.join(QLatin1Char('\n'));
}

Table::Row rowOf(const Wording &words, const MaterialEntry &use)
{
    QStringList lots;
    for (const MaterialEntry::Lot &lot : use.lots)
        lots << lotIn(words, lot);
    return {{{lots.join(QLatin1Char('\n')) + acceptanceIn(words, use.accepted_on,
                                                          use.accepted_by, use.accepted_basis)},
             {words.day(use.used_on, use.approximate)},
             {conditionsIn(words, use)},
             {use.cure_minutes ? words.hours(*use.cure_minutes) : QString()},
             {words.text(packet::inWords(use.sample)),
              use.sample == Sample::Failed ? Mark::NotMet : Mark::None,
              use.sample == Sample::Failed}}};
}

QString calibrationsIn(const Wording &words, const ToolEntry &tool)
{
    if (tool.calibrations.empty())
        return words.text(tool.needs_calibration ? "no calibration on record" : "not needed");
    QStringList lines;
    for (const ToolEntry::Calibration &calibration : tool.calibrations) {
        QString line = words.date(calibration.calibrated_on);
        if (calibration.due_on)
            line += QStringLiteral(", ") +
                    words.text("due {0}", {calibration.due_on->text()});
        if (calibration.has_certificate)
            line += QStringLiteral(", ") + words.text("certificate filed");
        lines << line;
    }
    return lines.join(QLatin1Char('\n'));
}

/// Rows of one part below a row that names it.
template <class Entry>
void addByPart(Table &table, const Wording &words, const std::vector<Entry> &entries)
{
    const std::string *part = nullptr;
    for (const Entry &entry : entries) {
        if (!part || *part != entry.part)
            table.rows.push_back({{{asIs(entry.part)}}, Table::Bar::None, true});
        part = &entry.part;
        table.rows.push_back(rowOf(words, entry));
    }
}

void drawSection(Pages &pages, const QString &title, const Table &table, const QString &ifEmpty)
{
    pages.heading(0, title, std::max(leastHeightOf(table, pages.body().width()), points(30)));
    if (table.rows.empty())
        pages.text(ifEmpty);
    drawTable(pages, table);
}

} // namespace

void drawFasteners(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Place"), 3.8},     {words.text("Hardware"), 2.8},
                     {words.text("Qty"), 0.9, true}, {words.text("Fitted"), 2.7},
                     {words.text("Limits"), 1.9},    {words.text("Torque"), 3.3},
                     {words.text("Marked"), 2.7},    {words.text("Lock"), 2.7}};
    addByPart(table, words, packet.fasteners);
    drawSection(pages, words.text("Fasteners and torque"), table,
                words.text("No fastener is on record for this region."));
}

void drawMeasurements(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Measurement"), 5},    {words.text("Limits"), 2.4},
                     {words.text("Value"), 1.9, true}, {words.text("Unit"), 1.2},
                     {words.text("Measured"), 2.2},     {words.text("Tool"), 3}};
    addByPart(table, words, packet.measurements);
    drawSection(pages, words.text("Measurements"), table,
                words.text("No measurement is on record for this region."));
}

void drawMaterials(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Material and lot"), 5}, {words.text("Used"), 2.3},
                     {words.text("Conditions"), 2.4}, {words.text("Cure time"), 1.6, true},
                     {words.text("Sample"), 2.2}};
    addByPart(table, words, packet.materials);
    drawSection(pages, words.text("Materials and lots"), table,
                words.text("No use of material is on record for this region."));
}

void drawTools(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Tool"), 3.5}, {words.text("Serial number"), 2.4},
                     {words.text("Used here"), 3.6}, {words.text("Calibrated"), 5}};
    for (const ToolEntry &tool : packet.tools) {
        QString used = words.day(tool.first_used);
        if (words.day(tool.first_used) != words.day(tool.last_used))
            used += QStringLiteral(" – ") + words.day(tool.last_used);
        table.rows.push_back({{{asIs(tool.name)}, {asIs(tool.serial_number)}, {used},
                               {calibrationsIn(words, tool)}}});
    }
    drawSection(pages, words.text("Tool calibration"), table,
                words.text("No torque or measurement of this region names its tool."));
}

} // namespace lastrivet::print
