// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionTexts.h"

#include "core/fasteners/FastenerState.h"
#include "core/fasteners/TorqueUnits.h"
#include "core/measuring/Series.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

// Fasteners and measurements of a part.
namespace lastrivet::ui::texts {

namespace {

template <class Record> const Record &find(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<Record>{id});
}

/// "20 to 25 in-lb", "at least 20", "at most 25".
QString limits(const std::optional<double> &least, const std::optional<double> &most,
               const QString &unit)
{
    QString words;
    if (least && most)
        words = QCoreApplication::translate("Section", "%1 to %2")
                    .arg(numberText(*least), numberText(*most));
    else if (least)
        words = QCoreApplication::translate("Section", "at least %1").arg(numberText(*least));
    else if (most)
        words = QCoreApplication::translate("Section", "at most %1").arg(numberText(*most));
    else
        return {};
    return unit.isEmpty() ? words : words + QLatin1Char(' ') + unit;
}

void setDay(Edit &edit, std::int64_t id, std::optional<Moment> Fastener::*day, bool isSet)
{
    edit.update(Id<Fastener>{id}, [&](Fastener &fastener) {
        fastener.*day = isSet ? std::optional(edit.today()) : std::nullopt;
    });
}

} // namespace

QString fastenerPlace(const Session &session, std::int64_t id)
{
    const Fastener &fastener = find<Fastener>(session, id);
    const QString place = toQt(fastener.place);
    if (fastener.removed_on)
        return QCoreApplication::translate("Section", "%1 (removed)").arg(place);
    return fastener.quantity == 1 ? place
                                  : QStringLiteral("%1 × %2").arg(fastener.quantity).arg(place);
}

QString fastenerHardware(const Session &session, std::int64_t id)
{
    return toQt(find<Fastener>(session, id).hardware);
}

QString torqueLimits(const Session &session, std::int64_t id)
{
    const Fastener &fastener = find<Fastener>(session, id);
    return limits(fastener.torque_min, fastener.torque_max, toQt(word(fastener.torque_unit)));
}

QString torqueValue(const Session &session, std::int64_t id)
{
    const auto &value = find<Fastener>(session, id).torque_value;
    return value ? numberText(*value) : QString();
}

QString markedOn(const Session &session, std::int64_t id)
{
    const auto &day = find<Fastener>(session, id).marked_on;
    return day ? dayText(*day) : QString();
}

QString lockedBy(const Session &session, std::int64_t id)
{
    const Fastener &fastener = find<Fastener>(session, id);
    return fastener.locking == Locking::None ? QString() : plainWord(word(fastener.locking));
}

QString fastenerStands(const Session &session, std::int64_t id)
{
    using enum fasteners::FastenerState;
    const Fastener &fastener = find<Fastener>(session, id);
    switch (fasteners::stateOf(fastener, session.today())) {
    case ToFit:
        return QCoreApplication::translate("Section", "to fit");
    case FingerTight:
        return QCoreApplication::translate("Section", "finger-tight");
    case OutOfLimits:
        return QCoreApplication::translate("Section", "outside its limits");
    case ToLock:
        return QCoreApplication::translate("Section", "to lock");
    case ToSeal:
        return QCoreApplication::translate("Section", "to seal");
    case Done:
        return QCoreApplication::translate("Section", "done");
    case Removed:
        return QCoreApplication::translate("Section", "removed");
    }
    return {};
}

Tone fastenerTone(const Session &session, std::int64_t id)
{
    using enum fasteners::FastenerState;
    switch (fasteners::stateOf(find<Fastener>(session, id), session.today())) {
    case FingerTight:
    case OutOfLimits:
        return Tone::Alert;
    case ToLock:
    case ToSeal:
        return Tone::Soon;
    case Done:
        return Tone::Settled;
    case ToFit:
    case Removed:
        return Tone::Plain;
    }
    return Tone::Plain;
}

bool isFitted(const Records &records, std::int64_t id)
{
    return records.find(Id<Fastener>{id})->fitted_on.has_value();
}

bool isMarked(const Records &records, std::int64_t id)
{
    return records.find(Id<Fastener>{id})->marked_on.has_value();
}

bool isLocked(const Records &records, std::int64_t id)
{
    return records.find(Id<Fastener>{id})->locked_on.has_value();
}

void tickFitted(Edit &edit, std::int64_t id, bool isSet)
{
    setDay(edit, id, &Fastener::fitted_on, isSet);
}

void tickMarked(Edit &edit, std::int64_t id, bool isSet)
{
    setDay(edit, id, &Fastener::marked_on, isSet);
}

void tickLocked(Edit &edit, std::int64_t id, bool isSet)
{
    setDay(edit, id, &Fastener::locked_on, isSet);
}

QString whyNotTorque(const Session &session, std::int64_t id, const QString &text)
{
    if (text.isEmpty())
        return {};
    const auto unit = find<Fastener>(session, id).torque_unit;
    const auto value = readTyped(fasteners::readTorque, text, unit);
    return value ? QString() : inWords(value.reason());
}

/// The value is of today unless a day is on record; without a value there is no day either.
bool writeTorque(Edit &edit, std::int64_t id, const QString &text)
{
    std::optional<double> value;
    if (!text.isEmpty()) {
        const auto unit = edit.existing(Id<Fastener>{id}).torque_unit;
        const auto read = readTyped(fasteners::readTorque, text, unit);
        if (!read)
            return false;
        value = *read;
    }
    edit.update(Id<Fastener>{id}, [&](Fastener &fastener) {
        fastener.torque_value = value;
        if (!fastener.torque_value)
            fastener.torqued_on.reset();
        else if (!fastener.torqued_on)
            fastener.torqued_on = edit.today();
    });
    return true;
}

Result<double, Message> readMeasured(const QString &text, const std::string &unit)
{
    QString plain = text.trimmed();
    const QString own = toQt(unit);
    if (!own.isEmpty() && plain.endsWith(own))
        plain.chop(own.size());
    return readNumber(plain);
}

QString measurementWhat(const Session &session, std::int64_t id)
{
    return toQt(find<Measurement>(session, id).what);
}

QString measurementLimits(const Session &session, std::int64_t id)
{
    const Measurement &measurement = find<Measurement>(session, id);
    return limits(measurement.minimum, measurement.maximum, toQt(measurement.unit));
}

QString measurementValue(const Session &session, std::int64_t id)
{
    const auto &value = find<Measurement>(session, id).value;
    return value ? numberText(*value) : QString();
}

QString measuredOn(const Session &session, std::int64_t id)
{
    const auto &day = find<Measurement>(session, id).measured_on;
    return day ? dayText(*day) : QString();
}

QString measurementStands(const Session &session, std::int64_t id)
{
    using enum measuring::MeasurementState;
    const Measurement &measurement = find<Measurement>(session, id);
    switch (measuring::stateOf(measurement, *session.records(), session.today())) {
    case ToMeasure:
        return QCoreApplication::translate("Section", "to measure");
    case Inside:
        return measurement.minimum || measurement.maximum
                   ? QCoreApplication::translate("Section", "within limits")
                   : QCoreApplication::translate("Section", "no limits");
    case Outside:
        return QCoreApplication::translate("Section", "outside its limits");
    case Accepted:
        return QCoreApplication::translate("Section", "outside, accepted");
    case Repeated:
        return QCoreApplication::translate("Section", "outside, measured again");
    }
    return {};
}

Tone measurementTone(const Session &session, std::int64_t id)
{
    using enum measuring::MeasurementState;
    const Measurement &measurement = find<Measurement>(session, id);
    switch (measuring::stateOf(measurement, *session.records(), session.today())) {
    case Outside:
        return Tone::Alert;
    case Accepted:
        return Tone::Soon;
    case Inside:
        return measurement.minimum || measurement.maximum ? Tone::Settled : Tone::Plain;
    case Repeated:
        return Tone::Soon;
    case ToMeasure:
        return Tone::Plain;
    }
    return Tone::Plain;
}

bool writeMeasurement(Edit &edit, std::int64_t id, const QString &text)
{
    const auto value = readMeasured(text, edit.existing(Id<Measurement>{id}).unit);
    if (!value && !text.isEmpty())
        return false;
    edit.update(Id<Measurement>{id}, [&](Measurement &measurement) {
        measurement.value = text.isEmpty() ? std::nullopt : std::optional(*value);
        if (!measurement.value)
            measurement.measured_on.reset();
        else if (!measurement.measured_on)
            measurement.measured_on = edit.today();
    });
    return true;
}

} // namespace lastrivet::ui::texts
