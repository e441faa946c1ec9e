// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/records/Description.h"

#include <QString>

#include <optional>

namespace lastrivet::ui {

/// True for the field that says until when a material lot is good.
bool isExpiryOfLot(const Field &field);

/// What is typed as the expiry of a lot: a day, or a month with its year, "03/2027", as sealants
/// and paints are marked; such a lot is good to the last day of the month. Empty where the year is
/// missing: the latest day that has passed, as elsewhere, is never what is meant.
std::optional<Moment> typedExpiry(const QString &text, Moment today);

/// One sentence on a text that is no expiry.
QString whyNoExpiry(const QString &text, Moment today);

} // namespace lastrivet::ui
