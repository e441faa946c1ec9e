// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Balance.h"
#include "core/balance/Units.h"
#include "core/base/Result.h"

#include <QString>

#include <optional>

// Weights and arms as the screen says them.
namespace lastrivet::ui {

class Session;

/// "1331.5 lb".
QString weightText(double weight, WeightUnit unit);
/// "50.09 in".
QString armText(double arm, ArmUnit unit);
/// "1331.5 lb at 50.09 in, 24.3 % MAC".
QString balanceText(const balance::Balance &sum, balance::Units units);
/// "Reading, kg": a head with its unit.
QString headWithUnit(const QString &head, std::string_view unit);
/// The tip of what cannot be used because the project is to read only; nothing when it can.
QString readOnlyReason(const Session &session);

} // namespace lastrivet::ui
