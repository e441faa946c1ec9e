// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"
#include "core/workshop/Torque.h"
#include "core/workshop/TorqueUnitWords.h"

#include <optional>
#include <string_view>

// What a typed line says of a fastener, in English, German or French.
namespace lastrivet::fasteners {

std::optional<Locking> lockingSaid(std::string_view words);
std::optional<workshop::Nut> nutSaid(std::string_view words);
using workshop::torqueUnitSaid;
/// True where a unit of torque, be it one that nothing is kept in, stands behind a number: "min 50
/// max 70 in-lb", "1.2 daN·m".
bool saysTorque(std::string_view words);
/// What stands behind the word for drag; nothing when the words do not begin with it.
std::optional<std::string_view> behindDrag(std::string_view words);

} // namespace lastrivet::fasteners
