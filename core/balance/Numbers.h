// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Units.h"
#include "core/records/Envelope.h"
#include "core/records/Equipment.h"
#include "core/records/LoadingCase.h"
#include "core/records/Weighing.h"

#include <vector>

namespace lastrivet::balance {

/// The weights and arms that were typed into a record, in its units.
struct Numbers {
    Units units;
    std::vector<double> weights;
    std::vector<double> arms;

    friend bool operator==(const Numbers &, const Numbers &) = default;
};

Numbers numbersOf(const Weighing &weighing);
Numbers numbersOf(const LoadingCase &loading);
Numbers numbersOf(const Envelope &envelope);
/// Without a number that has no unit. A unit that is missing is taken from `unknown`.
Numbers numbersOf(const Equipment &equipment, Units unknown = {});

/// Converts all numbers to the units of the record; they were typed in `from`.
void convertNumbers(Weighing &weighing, Units from);
void convertNumbers(LoadingCase &loading, Units from);
void convertNumbers(Envelope &envelope, Units from);
void convertNumbers(Equipment &equipment, Units from);

} // namespace lastrivet::balance
