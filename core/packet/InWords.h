// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Records.h"

#include <string>

// Records and vocabularies as a reader of a printed packet names them.
namespace lastrivet::packet {

/// "LW-R3 Rib 3": code and name; empty for no part.
std::string partName(const Records &records, Id<Component> part);
/// The part with the parts above it: "Left wing › Rib 3"; empty for no part.
std::string partPath(const Records &records, Id<Component> part);
/// The person's name; empty for nobody.
std::string personName(const Records &records, Id<Person> person);
/// As whom somebody comes to a visit: as adviser who is one and no inspector.
SignerRole visitorRole(const Records &records, Id<Person> person);

Message inWords(HoldPointKind kind);
Message inWords(InspectionKind kind);
Message inWords(SignerRole role);
Message inWords(SignOffResult result);
Message inWords(Seen seen);
Message inWords(Severity severity);
Message inWords(Decision decision);
Message inWords(BulletinKind kind);
Message inWords(Locking locking);
Message inWords(Sample sample);
Message inWords(WorkKind kind);
Message inWords(Role role);

} // namespace lastrivet::packet
