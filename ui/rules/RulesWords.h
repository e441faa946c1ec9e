// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/ProfileJson.h"

#include <QString>

namespace lastrivet::ui {

/// A field of a rule profile as people read it: "late acceptance by".
QString ruleFieldWords(std::string_view field);
/// "Documents, line 4, key: is empty."
QString faultWords(const ProfileFault &fault);

} // namespace lastrivet::ui
