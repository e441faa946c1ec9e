// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Claim.h"

#include "core/base/Tongue.h"
#include "core/stores/MoneyText.h"

#include <algorithm>
#include <fmt/format.h>

namespace lastrivet::stores {

namespace {

using Lines = std::vector<Message>;

void addPrice(Claim &claim, const PartLine &line, std::int64_t count)
{
    std::int64_t price = 0;
    if (!line.unit_price || __builtin_mul_overflow(*line.unit_price, count, &price))
        ++claim.without_price;
    else
        claim.value.add(price, line.currency);
}

void addGap(Lines &lines)
{
    lines.push_back(verbatim({}));
}

void addText(Lines &lines, const std::string &text)
{
    if (!text.empty())
        lines.push_back(verbatim(text));
}

void addSender(Lines &lines, const Records &records, Moment asOf)
{
    const Person *builder = records.findLive(records.project.builder_id);
    addText(lines, builder ? builder->name : std::string());
    addText(lines, records.project.builder_address);
    addText(lines, asOf.dayOnly().text());
    addGap(lines);
}

/// "Bolts AN3-5A (AN3-5A)": the name, and the part number where it is not in it.
std::string nameOf(const PartLine &line)
{
    if (line.part_number.empty() || line.name.find(line.part_number) != std::string::npos)
        return line.name;
    return fmt::format("{} ({})", line.name, line.part_number);
}

void addSubject(Lines &lines, const Records &records, const Claim &claim)
{
    const ProjectFacts &project = records.project;
    if (!claim.shipment.empty())
        lines.push_back({"Shipment: {0}", {claim.shipment}});
    lines.push_back(
        {"Aircraft: {0}", {project.aircraft_type.empty() ? project.name : project.aircraft_type}});
    if (!project.kit_number.empty())
        lines.push_back({"Kit number: {0}", {project.kit_number}});
    addGap(lines);
    lines.push_back({"I have counted this shipment against its packing list. These lines do not "
                     "agree with it:",
                     {}});
}

/// The photographs that show a line, by the names of their files.
std::string photosOf(const Records &records, Id<PartLine> line)
{
    std::string names;
    for (const Media &media : records.media) {
        const bool isOf =
            std::any_of(media.links.begin(), media.links.end(), [&](const Media::Link &link) {
                return link.subject == RecordType::PartLine && link.id == line.value();
            });
        if (!isOf || media.withdrawn_on)
            continue;
        names += (names.empty() ? "" : ", ") + media.file.substr(media.file.rfind('/') + 1);
    }
    return names;
}

void addRemarks(Lines &lines, const Records &records, const PartLine &line)
{
    if (!line.note.empty())
        lines.push_back(verbatim("    " + line.note));
    if (const auto photos = photosOf(records, line.id); !photos.empty())
        lines.push_back({"    Photographs: {0}", {photos}});
}

void addMissing(Lines &lines, const Records &records, const Claim &claim, Moment asOf)
{
    if (claim.missing.empty())
        return;
    addGap(lines);
    lines.push_back({"Missing", {}});
    for (const auto id : claim.missing) {
        const PartLine &line = *records.find(id);
        lines.push_back({"  {0} × {1}: listed {2}, received {3}",
                         {std::to_string(standingOf(line, asOf).missing), nameOf(line),
                          std::to_string(line.quantity), std::to_string(line.received_quantity)}});
        addRemarks(lines, records, line);
    }
}

void addDamaged(Lines &lines, const Records &records, const Claim &claim, Moment asOf)
{
    if (claim.damaged.empty())
        return;
    addGap(lines);
    lines.push_back({"Damaged", {}});
    for (const auto id : claim.damaged) {
        const PartLine &line = *records.find(id);
        lines.push_back({"  {0} × {1}: received {2}, of these damaged {3}",
                         {std::to_string(std::min(standingOf(line, asOf).damaged,
                                                  standingOf(line, asOf).wanted)),
                          nameOf(line), std::to_string(line.received_quantity),
                          std::to_string(line.damaged_quantity)}});
        addRemarks(lines, records, line);
    }
}

void addLate(Lines &lines, const Records &records, const Claim &claim)
{
    if (claim.late.empty())
        return;
    addGap(lines);
    lines.push_back({"Not arrived", {}});
    for (const auto id : claim.late) {
        const PartLine &line = *records.find(id);
        lines.push_back(
            {"  {0} × {1}: expected on {2}",
             {std::to_string(line.quantity), nameOf(line), line.expected_on->dayOnly().text()}});
        addRemarks(lines, records, line);
    }
}

/// With the sign for decimals that the language of the letter has.
std::string spokenFigure(const Money &amount)
{
    const std::string figures = figureOf(amount);
    const auto point = figures.find('.');
    if (point == std::string::npos)
        return figures;
    return nested({"{0}.{1}", {figures.substr(0, point), figures.substr(point + 1)}});
}

void addValue(Lines &lines, const Claim &claim)
{
    const auto amounts = claim.value.amounts();
    if (amounts.empty() || claim.value.isBeyond())
        return;
    addGap(lines);
    for (const Money &amount : amounts)
        lines.push_back({"What is missing or damaged is priced at {0} {1} in all.",
                         {spokenFigure(amount), amount.currency}});
    if (claim.without_price > 0)
        lines.push_back({"Lines without a price are not in this sum.", {}});
}

} // namespace

Claim claimFor(const Records &records, std::string_view shipment, Moment asOf)
{
    Claim claim;
    claim.shipment = shipment;
    for (const PartLine &line : records.part_lines) {
        if (line.withdrawn_on || line.shipment != shipment)
            continue;
        const auto standing = standingOf(line, asOf);
        if (standing.state == LineState::Late)
            claim.late.push_back(line.id);
        if (standing.state == LineState::Missing)
            claim.missing.push_back(line.id);
        if (standing.damaged > 0 && standing.wanted > 0)
            claim.damaged.push_back(line.id);
        const bool isClaimed = standing.state == LineState::Missing || standing.damaged > 0;
        if (isClaimed && standing.wanted > 0)
            addPrice(claim, line, standing.wanted);
    }
    return claim;
}

std::vector<Message> letter(const Records &records, const Claim &claim, Moment asOf)
{
    Lines lines;
    addSender(lines, records, asOf);
    addSubject(lines, records, claim);
    addMissing(lines, records, claim, asOf);
    addDamaged(lines, records, claim, asOf);
    addLate(lines, records, claim);
    addValue(lines, claim);
    addGap(lines);
    lines.push_back({"Please send what is missing and replace what is damaged, or tell me by when "
                     "you will.",
                     {}});
    addGap(lines);
    const Person *builder = records.findLive(records.project.builder_id);
    addText(lines, builder ? builder->name : std::string());
    return lines;
}

} // namespace lastrivet::stores
