// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/AircraftFacts.h"

#include "ui/print/Facts.h"
#include "ui/print/Pages.h"

namespace lastrivet::print {

QString aircraftName(const packet::Aircraft &aircraft)
{
    QStringList names;
    if (!aircraft.registration.empty())
        names << asIs(aircraft.registration);
    const std::string &type = aircraft.model.empty() ? aircraft.type : aircraft.model;
    names << asIs(type.empty() ? aircraft.project : type);
    return names.join(QStringLiteral("  "));
}

void drawAircraft(Pages &pages, const packet::Aircraft &aircraft)
{
    const Wording &words = pages.wording();
    pages.smallHeading(words.text("Aircraft"), points(60));
    QString origin;
    if (aircraft.origin)
        origin = words.text(*aircraft.origin == Origin::Kit ? "from a kit" : "from plans");
    const QString builder = aircraft.builder_address.empty()
                                ? asIs(aircraft.builder)
                                : asIs(aircraft.builder + "\n" + aircraft.builder_address);
    drawFacts(pages, {{words.text("Type"), asIs(aircraft.type)},
                      {words.text("Registration"), asIs(aircraft.registration)},
                      {words.text("Model"), asIs(aircraft.model)},
                      {words.text("Serial number"), asIs(aircraft.serial_number)},
                      {words.text("Designer"), asIs(aircraft.designer)},
                      {words.text("Kit number"), asIs(aircraft.kit_number)},
                      {words.text("Built"), origin},
                      {words.text("Started"), words.date(aircraft.started_on)},
                      {words.text("Builder"), builder},
                      {words.text("Authority's file"), asIs(aircraft.authority_file)},
                      {words.text("Rules"), asIs(aircraft.rules)}});
}

} // namespace lastrivet::print
