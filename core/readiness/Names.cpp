// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"

#include "core/records/Designation.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

std::string partName(const Component &part)
{
    return part.code.empty() ? part.name : part.code + " " + part.name;
}

std::string partOf(const Records &records, Id<Component> id)
{
    const Component *part = records.find(id);
    return part ? " in " + (part->code.empty() ? part->name : part->code) : std::string{};
}

/// A word of a vocabulary as people write it.
std::string spaced(std::string_view vocabularyWord)
{
    std::string words(vocabularyWord);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

template <class Numbered> std::string numbered(std::string_view kind, const Numbered &record)
{
    return std::string(kind) + " " + record.number + ", " + record.title;
}

/// The name of an existing record of the type; the functions below are tried in this order.
std::string name(const Component &part, const Records &)
{
    return partName(part);
}
std::string name(const Step &step, const Records &records)
{
    return step.title + partOf(records, step.component_id);
}
std::string name(const Squawk &squawk, const Records &records)
{
    return numbered("squawk", squawk) + partOf(records, squawk.component_id);
}
std::string name(const Deviation &deviation, const Records &)
{
    return numbered("deviation", deviation);
}
std::string name(const Bulletin &bulletin, const Records &)
{
    return spaced(word(bulletin.kind)) + " " + bulletin.number + ", " + bulletin.title;
}
std::string name(const Closing &closing, const Records &)
{
    return closing.title;
}
std::string name(const HoldPoint &point, const Records &)
{
    std::string kind = spaced(word(point.kind));
    return kind == "pre cover" ? "pre-cover inspection" : kind;
}
std::string name(const Check &check, const Records &)
{
    return check.item;
}
std::string name(const Fastener &fastener, const Records &records)
{
    const std::string what = fastener.hardware.empty() ? "fastener" : fastener.hardware;
    const std::string count =
        fastener.quantity > 1 ? std::to_string(fastener.quantity) + " × " : std::string{};
    return count + what + " at " + fastener.place + partOf(records, fastener.component_id);
}
std::string name(const Measurement &measurement, const Records &records)
{
    return measurement.what + partOf(records, measurement.component_id);
}
std::string name(const PartLine &line, const Records &)
{
    return line.part_number.empty() ? line.name : line.part_number + " " + line.name;
}
std::string name(const MaterialUse &use, const Records &records)
{
    const MaterialLot *lot = use.lot_ids.empty() ? nullptr : records.find(use.lot_ids.front());
    return (lot ? lot->name : std::string("material")) + partOf(records, use.component_id);
}
std::string name(const WorkSession &session, const Records &records)
{
    return "work on " + session.began->text() + partOf(records, session.component_id);
}
std::string name(const SignOff &signOff, const Records &records)
{
    const Person *person = records.find(signOff.person_id);
    return "signature of " + signOff.signed_on->text() + (person ? " by " + person->name : "");
}
std::string name(const Person &person, const Records &)
{
    return person.name;
}
std::string name(const Tool &tool, const Records &)
{
    return tool.name;
}
std::string name(const MaterialLot &lot, const Records &)
{
    return lot.lot_number.empty() ? lot.name : lot.name + ", lot " + lot.lot_number;
}
std::string name(const Inspection &inspection, const Records &)
{
    return inspection.reference.empty() ? "inspection" : "inspection " + inspection.reference;
}
std::string name(const Media &media, const Records &)
{
    return media.caption.empty() ? media.file : media.caption;
}

template <class Record> std::string nameFound(const Records &records, std::int64_t id)
{
    const Record *record = records.find(Id<Record>{id});
    return record ? name(*record, records) : designation(records, {Record::type, id});
}

template <class... Record> std::string nameAmong(const Records &records, RecordRef ref)
{
    std::string found = designation(records, ref);
    ((ref.type == Record::type ? void(found = nameFound<Record>(records, ref.id)) : void()), ...);
    return found;
}

} // namespace

std::string nameOf(const Records &records, RecordRef record)
{
    return nameAmong<Component, Step, Squawk, Deviation, Bulletin, Closing, HoldPoint, Check,
                     Fastener, Measurement, PartLine, MaterialUse, WorkSession, SignOff, Person,
                     Tool, MaterialLot, Inspection, Media>(records, record);
}

} // namespace lastrivet::readiness
