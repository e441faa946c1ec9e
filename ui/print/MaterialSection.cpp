// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Pages.h"
#include "ui/print/PartTable.h"
#include "ui/print/Phrases.h"

#include <string>

namespace lastrivet::print {

namespace {

using packet::MaterialEntry;
using packet::ToolEntry;

QString lotIn(const Wording &words, const MaterialEntry::Lot &lot)
{
    QString text = asIs(lot.name);
    if (!lot.specification.empty())
        text += QStringLiteral(", ") + asIs(lot.specification);
    if (!lot.lot_number.empty())
        text += QLatin1Char('\n') + words.text("lot {0}", {lot.lot_number});
    if (lot.expires_on)
        text += QLatin1Char('\n') +
                words.text(lot.was_expired ? "used after its date, {0}" : "use before {0}",
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
        lines << temperature + QStringLiteral(" °") + asIs(std::string(word(use.temperature_unit)));
    if (use.humidity)
        lines << words.number(*use.humidity) + QStringLiteral(" %");
    return lines.join(QLatin1Char('\n'));
}

Table::Row rowOf(const Wording &words, const MaterialEntry &use)
{
    QStringList lots;
    for (const MaterialEntry::Lot &lot : use.lots)
        lots << lotIn(words, lot);
    return {
        {{lots.join(QLatin1Char('\n')) +
          acceptanceIn(words, use.accepted_on, use.accepted_by, use.accepted_basis)},
         {words.day(use.used_on, use.approximate)},
         {conditionsIn(words, use)},
         {use.cure_minutes ? words.span(*use.cure_minutes) : QString()},
         {words.text(packet::inWords(use.sample)),
          use.sample == Sample::Failed ? Mark::NotMet : Mark::None, use.sample == Sample::Failed}}};
}

QString calibrationsIn(const Wording &words, const ToolEntry &tool)
{
    if (tool.calibrations.empty())
        return words.text(tool.needs_calibration ? "no calibration on record" : "not needed");
    QStringList lines;
    for (const ToolEntry::Calibration &calibration : tool.calibrations) {
        QString line = words.date(calibration.calibrated_on);
        if (calibration.due_on)
            line += QStringLiteral(", ") + words.text("due {0}", {calibration.due_on->text()});
        if (calibration.has_certificate)
            line += QStringLiteral(", ") + words.text("certificate filed");
        lines << line;
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace

void drawMaterials(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Material and lot"), 5},
                     {words.text("Used"), 2.3},
                     {words.text("Conditions"), 2.4},
                     {words.text("Cure time"), 1.6, true},
                     {words.text("Sample"), 2.2}};
    addByPart(table, packet.materials, [&](const auto &entry) { return rowOf(words, entry); });
    drawSection(pages, words.text("Materials and lots"), table,
                words.text("No use of material is on record for this region."));
}

void drawTools(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Tool"), 3.5},
                     {words.text("Serial number"), 2.4},
                     {words.text("Used here"), 3.6},
                     {words.text("Calibrated"), 5}};
    for (const ToolEntry &tool : packet.tools) {
        QString used = words.day(tool.first_used);
        if (words.day(tool.first_used) != words.day(tool.last_used))
            used += QStringLiteral(" – ") + words.day(tool.last_used);
        const bool isAmiss = tool.uncalibrated_uses > 0;
        if (isAmiss)
            used +=
                QLatin1Char('\n') + words.text("{0} of {1} uses not in calibration",
                                               {words.count(std::size_t(tool.uncalibrated_uses)),
                                                words.count(std::size_t(tool.uses))});
        table.rows.push_back({{{asIs(tool.name)},
                               {asIs(tool.serial_number)},
                               {used, isAmiss ? Mark::Advice : Mark::None},
                               {calibrationsIn(words, tool)}}});
    }
    drawSection(pages, words.text("Tool calibration"), table,
                words.text("No torque or measurement of this region names its tool."));
}

} // namespace lastrivet::print
