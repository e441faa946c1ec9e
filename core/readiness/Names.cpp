// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Names.h"

#include "core/base/Tongue.h"
#include "core/records/Designation.h"
#include "core/records/KindNames.h"

#include <array>

namespace lastrivet::readiness {

namespace {

std::string partName(const Component &part)
{
    return part.code.empty() ? part.name : part.code + " " + part.name;
}

/// The name with the part that the record belongs to.
Message inPart(Message name, const Records &records, Id<Component> id)
{
    const Component *part = records.find(id);
    if (!part)
        return name;
    return {"{0} in {1}", {nested(name), part->code.empty() ? part->name : part->code}};
}

std::string_view patternOf(BulletinKind kind)
{
    constexpr std::array<std::string_view, Words<BulletinKind>::list.size()> patterns{
        "bulletin {0}, {1}", "letter {0}, {1}", "directive {0}, {1}", "drawing change {0}, {1}"};
    return patterns[std::size_t(kind)];
}

// What people call a record that exists: one overload for each type.
Message name(const Component &part, const Records &)
{
    return verbatim(partName(part));
}
Message name(const Step &step, const Records &records)
{
    return inPart(verbatim(step.title), records, step.component_id);
}
Message name(const Squawk &squawk, const Records &records)
{
    return inPart({"squawk {0}, {1}", {squawk.number, squawk.title}}, records, squawk.component_id);
}
Message name(const Deviation &deviation, const Records &)
{
    return {"deviation {0}, {1}", {deviation.number, deviation.title}};
}
Message name(const Bulletin &bulletin, const Records &)
{
    return {patternOf(bulletin.kind), {bulletin.number, bulletin.title}};
}
Message name(const Closing &closing, const Records &)
{
    return verbatim(closing.title);
}
Message name(const HoldPoint &point, const Records &)
{
    return kindName(point.kind);
}
/// A line of a profile's list is said in the reader's language, as in the list itself; a builder's
/// own is found in no language. A single word, or braces, would mean something else there.
Message name(const Check &check, const Records &)
{
    const bool maySay =
        check.item.find(' ') != std::string::npos && check.item.find('{') == std::string::npos;
    return maySay ? Message{"{0}", {nested({check.item, {}})}} : verbatim(check.item);
}
Message name(const Fastener &fastener, const Records &records)
{
    const std::string what =
        fastener.hardware.empty() ? nested({"fastener", {}}) : fastener.hardware;
    const Message named =
        fastener.quantity > 1
            ? Message{"{0} × {1} at {2}", {std::to_string(fastener.quantity), what, fastener.place}}
            : Message{"{0} at {1}", {what, fastener.place}};
    return inPart(named, records, fastener.component_id);
}
Message name(const Measurement &measurement, const Records &records)
{
    return inPart(verbatim(measurement.what), records, measurement.component_id);
}
Message name(const PartLine &line, const Records &)
{
    return verbatim(line.part_number.empty() ? line.name : line.part_number + " " + line.name);
}
Message name(const MaterialLot &lot, const Records &)
{
    return lot.lot_number.empty() ? verbatim(lot.name)
                                  : Message{"{0}, lot {1}", {lot.name, lot.lot_number}};
}
Message name(const MaterialUse &use, const Records &records)
{
    const MaterialLot *lot = use.lot_ids.empty() ? nullptr : records.find(use.lot_ids.front());
    return inPart(lot ? name(*lot, records) : Message{"material", {}}, records, use.component_id);
}
Message name(const WorkSession &session, const Records &records)
{
    return inPart({"work on {0}", {session.began->text()}}, records, session.component_id);
}
Message name(const SignOff &signOff, const Records &records)
{
    const Person *person = records.find(signOff.person_id);
    const std::string day = signOff.signed_on->text();
    return person ? Message{"signature of {0} by {1}", {day, person->name}}
                  : Message{"signature of {0}", {day}};
}
Message name(const Person &person, const Records &)
{
    return verbatim(person.name);
}
Message name(const Tool &tool, const Records &)
{
    return verbatim(tool.name);
}
Message name(const Inspection &inspection, const Records &)
{
    return inspection.reference.empty() ? Message{"inspection", {}}
                                        : Message{"inspection {0}", {inspection.reference}};
}
Message name(const Media &media, const Records &)
{
    return verbatim(media.caption.empty() ? media.file : media.caption);
}

template <class Record> Message nameFound(const Records &records, std::int64_t id)
{
    const Record *record = records.find(Id<Record>{id});
    return record ? name(*record, records) : designated(records, {Record::type, id});
}

template <class... Record> Message nameAmong(const Records &records, RecordRef ref)
{
    Message found;
    const bool isNamed =
        ((ref.type == Record::type && (found = nameFound<Record>(records, ref.id), true)) || ...);
    return isNamed ? found : spoken(records, ref);
}

} // namespace

Message named(const Records &records, RecordRef record)
{
    return nameAmong<Component, Step, Squawk, Deviation, Bulletin, Closing, HoldPoint, Check,
                     Fastener, Measurement, PartLine, MaterialUse, WorkSession, SignOff, Person,
                     Tool, MaterialLot, Inspection, Media>(records, record);
}

std::string nameOf(const Records &records, RecordRef record)
{
    return english(named(records, record));
}

} // namespace lastrivet::readiness
