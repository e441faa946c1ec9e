// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordNames.h"

#include "core/readiness/Names.h"
#include "core/records/Description.h"
#include "core/records/Designation.h"
#include "core/records/KindNames.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QStringList>

namespace lastrivet::ui {

namespace {

template <class Record> QString numbered(const Record &record)
{
    return toQt(record.number) + QLatin1Char(' ') + toQt(record.title);
}

/// Visits are told apart by what they were about, their number and their day.
QString nameOfVisit(const Inspection &visit)
{
    QStringList pieces{inWords(kindName(visit.kind))};
    const std::string &number = visit.report_number.empty() ? visit.reference : visit.report_number;
    pieces.append(toQt(number));
    pieces.append(dateText(visit.held_on       ? visit.held_on
                           : visit.planned_for ? visit.planned_for
                                               : visit.asked_on));
    pieces.removeAll(QString());
    return pieces.join(QStringLiteral(", "));
}

bool holdsAll(const QString &name, const QStringList &words)
{
    return std::ranges::all_of(
        words, [&](const QString &word) { return name.contains(word, Qt::CaseInsensitive); });
}

std::vector<std::int64_t> partCandidates(const Records &records, const entry::PartFinder &parts,
                                         const QString &typed, std::size_t limit)
{
    std::vector<std::int64_t> ids;
    if (!typed.trimmed().isEmpty()) {
        for (const auto id : parts.matches(toStd(typed), limit))
            ids.push_back(id.value());
        return ids;
    }
    for (const Component &part : records.components) {
        if (!part.withdrawn_on && ids.size() < limit)
            ids.push_back(part.id.value());
    }
    return ids;
}

} // namespace

QString shortName(const Records &records, RecordRef record)
{
    if (!records.find(record.type, record.id))
        return inWords(designated(records, record));
    switch (record.type) {
    case RecordType::Component:
        return partName(records, Id<Component>{record.id});
    case RecordType::Person:
        return personName(records, Id<Person>{record.id});
    case RecordType::Squawk:
        return numbered(*records.find(Id<Squawk>{record.id}));
    case RecordType::Deviation:
        return numbered(*records.find(Id<Deviation>{record.id}));
    case RecordType::Bulletin:
        return numbered(*records.find(Id<Bulletin>{record.id}));
    case RecordType::Inspection:
        return nameOfVisit(*records.find(Id<Inspection>{record.id}));
    case RecordType::Step:
        return toQt(records.find(Id<Step>{record.id})->title);
    case RecordType::Closing:
        return toQt(records.find(Id<Closing>{record.id})->title);
    case RecordType::Tool:
        return toQt(records.find(Id<Tool>{record.id})->name);
    case RecordType::PartLine:
    case RecordType::MaterialLot:
    case RecordType::MaterialUse:
    case RecordType::Fastener:
    case RecordType::Measurement:
    case RecordType::Media:
    case RecordType::Flight:
    case RecordType::CertificateDocument:
        // Their numbers are long, say nothing, and would stand in the journal for good. A caption
        // may have several lines.
        return inWords(readiness::named(records, record)).simplified();
    default:
        return inWords(spoken(records, record));
    }
}

QString partName(const Records &records, Id<Component> part)
{
    const Component *found = records.find(part);
    return found ? toQt(entry::spokenName(*found)) : QString();
}

QString personName(const Records &records, Id<Person> person)
{
    const Person *found = records.find(person);
    return found ? toQt(found->name) : QString();
}

QString namesOf(const Records &records, const std::vector<RecordRef> &several)
{
    constexpr std::size_t namedAtMost = 6;
    QStringList names;
    for (std::size_t i = 0; i < several.size() && i < namedAtMost; ++i)
        names.append(inWords(spoken(records, several[i])));
    if (several.size() > namedAtMost)
        names.append(QCoreApplication::translate("RecordNames", "and %1 more")
                         .arg(several.size() - namedAtMost));
    return names.join(QStringLiteral("; "));
}

QString whichOf(const Records &records, const std::vector<RecordRef> &several)
{
    if (several.size() < 2)
        return {};
    return QLatin1Char('\n') + QCoreApplication::translate("RecordNames", "It is about: %1.")
                                   .arg(namesOf(records, several));
}

std::vector<std::int64_t> candidates(const Records &records, const entry::PartFinder &parts,
                                     RecordType type, const QString &typed, std::size_t limit)
{
    if (type == RecordType::Component)
        return partCandidates(records, parts, typed, limit);
    const QStringList words = typed.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const auto &description = describe(type);
    const AnyTable &table = records.table(type);
    std::vector<std::int64_t> ids;
    for (const void *record = table.nextAny(0); record && ids.size() < limit;) {
        const std::int64_t id = idOf(description, record);
        if (!isWithdrawn(description, record) && holdsAll(shortName(records, {type, id}), words))
            ids.push_back(id);
        record = table.nextAny(id);
    }
    return ids;
}

} // namespace lastrivet::ui
