// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <QString>

#include <vector>

// Who may be named in what ends a squawk.
namespace lastrivet::ui {

std::vector<const Person *> everybody(const Records &records);
std::vector<const Person *> peopleWhoMayAccept(const Records &records, const Squawk &squawk);
/// The live person of that name, in any case; null when there is none.
const Person *personNamed(const Records &records, const QString &name);

/// Who has to look at the correction: "the inspector (Sam Orrin)".
QString verifierOf(const Records &records, const Squawk &squawk);

} // namespace lastrivet::ui
