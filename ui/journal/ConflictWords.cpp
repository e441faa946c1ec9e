// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/ConflictWords.h"

#include "core/base/Clock.h"
#include "core/journal/Value.h"
#include "core/records/Designation.h"
#include "ui/convert/QtText.h"
#include "ui/journal/ScreenWording.h"
#include "ui/print/JournalWords.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <chrono>
#include <cstdint>
#include <string>
#include <utility>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Conflicts", text);
}

/// The field of the record, and for a list the field of its rows; null when there is none.
struct FieldOfConflict {
    const Field *field = nullptr;
    const Field *inRow = nullptr;
};

FieldOfConflict fieldOf(const MergeConflict &conflict)
{
    const auto point = conflict.field.find('.');
    FieldOfConflict found;
    found.field = describe(conflict.record.type).find(conflict.field.substr(0, point));
    if (!found.field || !found.field->rows || point == std::string::npos)
        return found;
    for (const Field &each : found.field->rows->fields) {
        if (each.name == conflict.field.substr(point + 1))
            found.inRow = &each;
    }
    return found;
}

QString valueIn(const Records &records, const MergeConflict &conflict,
                const std::optional<std::string> &json)
{
    const FieldOfConflict found = fieldOf(conflict);
    const QString text = print::valueIn(
        screenWording(), journal::valueOf(records, found.inRow ? found.inRow : found.field, json,
                                          journal::currencyOf(records, conflict.record)));
    return text.isEmpty() ? tr("nothing") : text;
}

/// Whether the program gave a record its number, which says nothing to people then.
bool isOfProgram(std::int64_t id)
{
    constexpr std::int64_t longerThanPeopleGive = 1'000'000'000;
    return id >= longerThanPeopleGive;
}

/// A sentence that is kept in English, with the names in it, without the number of the record.
QString withoutId(QString sentence, RecordRef record)
{
    if (isOfProgram(record.id))
        sentence.remove(QStringLiteral(" %1").arg(record.id));
    return sentence;
}

} // namespace

QString recordIn(const Records &records, const MergeConflict &conflict)
{
    const RecordRef record = conflict.record;
    Message name = spoken(records, record);
    // What has no name, or is gone, is left with its number.
    if (isOfProgram(record.id) && name.arguments.size() == 2 &&
        name.arguments.back() == std::to_string(record.id))
        name = {noun(record.type), {}};
    return screenWording().sentence(name);
}

QString fieldIn(const Records &records, const MergeConflict &conflict)
{
    if (conflict.field.empty())
        return {};
    const FieldOfConflict found = fieldOf(conflict);
    const print::Wording words = screenWording();
    if (!found.inRow)
        return print::titleIn(words, found.field);
    QString title = print::titleIn(words, conflict.record.type, conflict.field);
    if (!conflict.item)
        return title;
    // Workers are told apart by who they are, the rows of other lists by their place.
    const Field &first = found.field->rows->fields.front();
    const bool isPerson = first.target == RecordType::Person;
    return tr("%1 (%2)").arg(
        title, isPerson ? words.text(designated(records, {RecordType::Person, *conflict.item}))
                        : tr("row %1").arg(*conflict.item + 1));
}

QString keptIn(const Records &records, const MergeConflict &conflict)
{
    return valueIn(records, conflict, conflict.kept);
}

QString lostIn(const Records &records, const MergeConflict &conflict)
{
    return valueIn(records, conflict, conflict.lost);
}

QString authorIn(const Records &records, const MergeConflict::Change &change)
{
    if (change.change_id.empty())
        return {};
    if (change.stamp == 0)
        return tr("It is not known who wrote it.");
    using namespace std::chrono;
    const Moment when =
        localMoment(sys_time<milliseconds>(milliseconds(change.stamp)), records.project.time_zone);
    const QString author =
        change.who.empty() ? dateText(when) : tr("%1, %2").arg(toQt(change.who), dateText(when));
    return author + QLatin1Char('\n') + toQt(change.label);
}

QString summaryIn(const Records &records, const MergeConflict &conflict)
{
    switch (conflict.kind) {
    case ConflictKind::Value:
        return tr("%1: %2, or %3?")
            .arg(fieldIn(records, conflict), keptIn(records, conflict), lostIn(records, conflict));
    case ConflictKind::Existence:
        return tr("taken back in one copy, gone on with in the other");
    case ConflictKind::SetAside:
        return tr("left out: %1").arg(toQt(conflict.lost_by.label));
    }
    return {};
}

QString withNames(QString sentence, RecordRef record)
{
    const print::Wording words = screenWording();
    for (const Field &field : describe(record.type).fields) {
        const QString name = toQt(field.name);
        if (name.contains(QLatin1Char('_')))
            sentence.replace(QRegularExpression(QStringLiteral("\\b%1\\b").arg(name)),
                             tr("“%1”").arg(print::titleIn(words, &field)));
    }
    return withoutId(std::move(sentence), record);
}

QString reasonIn(const MergeConflict &conflict)
{
    return withNames(inWords(Message{conflict.reason, {}}), conflict.record);
}

QString decisionIn(const MergeConflict &conflict)
{
    if (!conflict.decision)
        return {};
    return *conflict.decision == ConflictDecision::Kept ? tr("decided: what stood was kept")
                                                        : tr("decided: the other was taken");
}

} // namespace lastrivet::ui
