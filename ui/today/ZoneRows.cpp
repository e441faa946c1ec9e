// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/ZoneRows.h"

#include "core/readiness/Sentences.h"
#include "core/today/WorkOrder.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>

namespace lastrivet::ui {

namespace {

constexpr std::array<const char *, Words<airframe::Zone>::list.size()> zoneNames{
    QT_TRANSLATE_NOOP("Zone", "Engine bay"),      QT_TRANSLATE_NOOP("Zone", "Nose wheel"),
    QT_TRANSLATE_NOOP("Zone", "Foreplane"),       QT_TRANSLATE_NOOP("Zone", "Cockpit"),
    QT_TRANSLATE_NOOP("Zone", "Fuselage tank"),   QT_TRANSLATE_NOOP("Zone", "Centre fuselage"),
    QT_TRANSLATE_NOOP("Zone", "Left wing"),       QT_TRANSLATE_NOOP("Zone", "Right wing"),
    QT_TRANSLATE_NOOP("Zone", "Lower left wing"), QT_TRANSLATE_NOOP("Zone", "Lower right wing"),
    QT_TRANSLATE_NOOP("Zone", "Left tank"),       QT_TRANSLATE_NOOP("Zone", "Right tank"),
    QT_TRANSLATE_NOOP("Zone", "Left aileron"),    QT_TRANSLATE_NOOP("Zone", "Right aileron"),
    QT_TRANSLATE_NOOP("Zone", "Left flap"),       QT_TRANSLATE_NOOP("Zone", "Right flap"),
    QT_TRANSLATE_NOOP("Zone", "Left main wheel"), QT_TRANSLATE_NOOP("Zone", "Right main wheel"),
    QT_TRANSLATE_NOOP("Zone", "Rear fuselage"),   QT_TRANSLATE_NOOP("Zone", "Stabiliser"),
    QT_TRANSLATE_NOOP("Zone", "Elevator"),        QT_TRANSLATE_NOOP("Zone", "Fin"),
    QT_TRANSLATE_NOOP("Zone", "Rudder"),          QT_TRANSLATE_NOOP("Zone", "Tail wheel"),
};

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("Zone", text, nullptr, count);
}

/// Of a zone with closings: where it is, and what to begin with.
QString whyOfClosing(const airframe::ZoneStanding &standing, const Records &records,
                     const readiness::ClosingAnswer &closing, const today::WorkOrder &order)
{
    QStringList lines{stateWords(closing.state, closing.begun, waitsForAdviser(closing))};
    const Closing *record = records.find(closing.id);
    lines << tr("%1 – %2").arg(partName(records, standing.part), toQt(record->title));
    const auto *nearest = order.nearest(closing);
    if (nearest && closing.begun)
        lines << asSentence(readiness::sentence(*nearest, records));
    if (standing.closings > 1)
        lines << tr("%n other closings here", int(standing.closings) - 1);
    return lines.join(QLatin1Char('\n'));
}

} // namespace

QString zoneName(airframe::Zone zone)
{
    return tr(zoneNames[std::size_t(zone)]);
}

QString drawingName(airframe::AircraftKind kind)
{
    switch (kind) {
    case airframe::AircraftKind::HighWing:
        return tr("high wing");
    case airframe::AircraftKind::LowWing:
        return tr("low wing");
    case airframe::AircraftKind::Biplane:
        return tr("biplane");
    case airframe::AircraftKind::Canard:
        return tr("canard");
    }
    return {};
}

std::vector<ZoneRow> zoneRows(const airframe::Airframe &drawn, const Records &records,
                              const readiness::Answer &answer)
{
    const today::WorkOrder order(answer);
    std::vector<ZoneRow> rows;
    for (const auto &standing : drawn.zones) {
        ZoneRow row{standing, zoneName(standing.zone), {}};
        const auto *closing = standing.worst ? answer.closing(standing.worst) : nullptr;
        if (closing)
            row.why = whyOfClosing(standing, records, *closing, order);
        else if (standing.parts == 0)
            row.why = tr("No part is recorded here.");
        else
            row.why = tr("%n parts, no closing is recorded.", int(standing.parts));
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace lastrivet::ui
