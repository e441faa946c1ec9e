// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Aircraft.h"

#include "core/packet/InWords.h"

namespace lastrivet::packet {

Aircraft aircraftOf(const Records &records, const Profile &profile)
{
    const ProjectFacts &facts = records.project;
    Aircraft aircraft;
    aircraft.project = facts.name;
    aircraft.type = facts.aircraft_type;
    aircraft.designer = facts.designer;
    aircraft.model = facts.model;
    aircraft.registration = facts.registration;
    aircraft.serial_number = facts.serial_number;
    aircraft.kit_number = facts.kit_number;
    aircraft.authority_file = facts.authority_file;
    aircraft.origin = facts.origin;
    aircraft.started_on = facts.started_on;
    aircraft.builder = personName(records, facts.builder_id);
    aircraft.builder_address = facts.builder_address;
    aircraft.rules = profile.edition.empty() ? profile.name : profile.name + ", " + profile.edition;
    return aircraft;
}

} // namespace lastrivet::packet
