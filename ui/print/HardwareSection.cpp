// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Pages.h"
#include "ui/print/PartTable.h"
#include "ui/print/Phrases.h"

namespace lastrivet::print {

namespace {

using packet::FastenerEntry;
using packet::MeasurementEntry;

Table::Cell torqueOf(const Wording &words, const FastenerEntry &fastener)
{
    const bool hasLimit = fastener.torque_min || fastener.torque_max;
    if (!fastener.torqued_on)
        return {hasLimit ? words.text("not torqued") : QString(), Mark::None, hasLimit};
    QString text = torqueIn(words, fastener) + QLatin1Char('\n') + words.day(fastener.torqued_on);
    if (!fastener.tool.empty())
        text += QLatin1Char('\n') + asIs(fastener.tool);
    if (fastener.was_tool_uncalibrated)
        text += QLatin1Char('\n') + words.text("not in calibration");
    if (fastener.isOutOfLimits())
        return {text, Mark::NotMet, true};
    return {text, fastener.was_tool_uncalibrated ? Mark::Advice : Mark::None};
}

QString lockingOf(const Wording &words, const FastenerEntry &fastener)
{
    if (fastener.locking == Locking::None)
        return {};
    QString text = words.text(packet::inWords(fastener.locking));
    if (fastener.is_locked_by_hand)
        text += QLatin1Char('\n') +
                (fastener.locked_on ? words.day(fastener.locked_on) : words.text("not locked"));
    return text;
}

Table::Row rowOf(const Wording &words, const FastenerEntry &fastener)
{
    const QString unit = asIs(std::string(word(fastener.unit)));
    QString limits = rangeOf(words, fastener.torque_min, fastener.torque_max);
    if (!limits.isEmpty())
        limits += QLatin1Char('\n') + unit;
    return {{{asIs(fastener.place) + acceptanceIn(words, fastener.accepted_on, fastener.accepted_by,
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

Table::Cell toolOf(const Wording &words, const MeasurementEntry &measurement)
{
    if (!measurement.was_tool_uncalibrated)
        return {asIs(measurement.tool)};
    return {asIs(measurement.tool) + QLatin1Char('\n') + words.text("not in calibration"),
            Mark::Advice};
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
             toolOf(words, measurement)}};
}

} // namespace

void drawFasteners(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    // The torque has the most to say, down to the tool: in a narrow column it made rows of six
    // lines.
    table.columns = {{words.text("Place"), 3.5},     {words.text("Hardware"), 2.6},
                     {words.text("Qty"), 0.9, true}, {words.text("Fitted"), 2.6},
                     {words.text("Limits"), 1.9},    {words.text("Torque"), 4.4},
                     {words.text("Marked"), 2.6},    {words.text("Lock"), 2.3}};
    addByPart(table, packet.fasteners, [&](const auto &entry) { return rowOf(words, entry); });
    drawSection(pages, words.text("Fasteners and torque"), table,
                words.text("No fastener is on record for this region."));
}

void drawMeasurements(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Measurement"), 5},   {words.text("Limits"), 2.4},
                     {words.text("Value"), 1.9, true}, {words.text("Unit"), 1.2},
                     {words.text("Measured"), 2.2},    {words.text("Tool"), 3}};
    addByPart(table, packet.measurements, [&](const auto &entry) { return rowOf(words, entry); });
    drawSection(pages, words.text("Measurements"), table,
                words.text("No measurement is on record for this region."));
}

} // namespace lastrivet::print
