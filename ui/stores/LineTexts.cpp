// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreTexts.h"

#include "core/project/acts/StoreActs.h"
#include "core/stores/Delivery.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

// Lines of packing lists.
namespace lastrivet::ui::storeroom {

namespace {

using stores::LineStanding;
using stores::LineState;

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("StoreTexts", text, nullptr, count);
}

const PartLine &lineOf(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<PartLine>{id});
}

LineStanding standing(const Session &session, std::int64_t id)
{
    return stores::standingOf(lineOf(session, id), session.today());
}

QString number(std::int64_t value)
{
    return QLocale().toString(qlonglong(value));
}

std::optional<std::int64_t> readCount(const QString &text)
{
    bool isNumber = false;
    const qlonglong value = QLocale().toLongLong(text, &isNumber);
    return isNumber ? std::optional<std::int64_t>(value) : std::nullopt;
}

QString whyNot(std::int64_t received, std::int64_t damaged)
{
    const auto why = acts::whyNotCount(received, damaged);
    return why ? inWords(*why) : QString();
}

QString missingWords(const LineStanding &standing)
{
    const QString missing = tr("missing %1").arg(number(standing.missing));
    return standing.damaged > 0 ? tr("%1, damaged %2").arg(missing, number(standing.damaged))
                                : missing;
}

} // namespace

QString lineName(const Session &session, std::int64_t id)
{
    return toQt(lineOf(session, id).name);
}

QString linePartNumber(const Session &session, std::int64_t id)
{
    return toQt(lineOf(session, id).part_number);
}

QString lineListed(const Session &session, std::int64_t id)
{
    return number(lineOf(session, id).quantity);
}

QString lineReceived(const Session &session, std::int64_t id)
{
    const PartLine &line = lineOf(session, id);
    return line.received_on ? number(line.received_quantity) : QString();
}

QString lineDamaged(const Session &session, std::int64_t id)
{
    const PartLine &line = lineOf(session, id);
    return line.damaged_quantity != 0 ? number(line.damaged_quantity) : QString();
}

QString lineStands(const Session &session, std::int64_t id)
{
    const PartLine &line = lineOf(session, id);
    const LineStanding stands = standing(session, id);
    switch (stands.state) {
    case LineState::Awaited:
        return line.expected_on ? tr("expected %1").arg(dayText(*line.expected_on))
                                : tr("not counted yet");
    case LineState::Late:
        return tr("late by %n days", int(stands.days_late));
    case LineState::Missing:
        return missingWords(stands);
    case LineState::Damaged:
        return tr("damaged %1").arg(number(stands.damaged));
    case LineState::Surplus:
        return tr("%1 more than listed")
            .arg(number(line.received_quantity - stands.damaged - line.quantity));
    case LineState::Complete:
        return tr("complete");
    }
    return {};
}

Tone lineTone(const Session &session, std::int64_t id)
{
    switch (standing(session, id).state) {
    case LineState::Awaited:
        return Tone::Plain;
    case LineState::Late:
    case LineState::Missing:
    case LineState::Damaged:
        return Tone::Alert;
    case LineState::Surplus:
        return Tone::Soon;
    case LineState::Complete:
        return Tone::Settled;
    }
    return Tone::Plain;
}

QString lineFor(const Session &session, std::int64_t id)
{
    const PartLine &line = lineOf(session, id);
    const Step *step = session.records()->findLive(line.step_id);
    return step ? toQt(step->title) : partName(*session.records(), line.component_id);
}

bool isCounted(const Records &records, std::int64_t id)
{
    return records.find(Id<PartLine>{id})->received_on.has_value();
}

void tickCounted(Edit &edit, std::int64_t id, bool isTicked)
{
    if (isTicked)
        acts::countAsListed(edit, {Id<PartLine>{id}});
    else
        acts::uncount(edit, {Id<PartLine>{id}});
}

QString whyNotReceived(const Session &session, std::int64_t id, const QString &text)
{
    const auto count = readCount(text);
    return count ? whyNot(*count, lineOf(session, id).damaged_quantity) : QString();
}

QString whyNotDamaged(const Session &session, std::int64_t id, const QString &text)
{
    const PartLine &line = lineOf(session, id);
    const auto count = text.isEmpty() ? 0 : readCount(text);
    const bool isWritten = line.received_on || line.received_quantity > 0;
    return count ? whyNot(isWritten ? line.received_quantity : line.quantity, *count) : QString();
}

/// Nothing takes the count back.
bool writeReceived(Edit &edit, std::int64_t id, const QString &text)
{
    const auto count = readCount(text);
    if (!count && !text.isEmpty())
        return false;
    const Id<PartLine> line{id};
    if (count)
        acts::countLine(edit, line, *count, edit.existing(line).damaged_quantity);
    else
        acts::uncount(edit, {line});
    return true;
}

/// Who finds damage has the line before him: one that was not counted came as listed.
bool writeDamaged(Edit &edit, std::int64_t id, const QString &text)
{
    const auto count = text.isEmpty() ? std::optional<std::int64_t>(0) : readCount(text);
    if (!count)
        return false;
    const Id<PartLine> line{id};
    acts::countAsListed(edit, {line});
    acts::countLine(edit, line, edit.existing(line).received_quantity, *count);
    return true;
}

} // namespace lastrivet::ui::storeroom
