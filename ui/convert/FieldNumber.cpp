// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/FieldNumber.h"

#include "core/balance/Written.h"
#include "core/records/Equipment.h"
#include "ui/convert/NumberText.h"

#include <optional>

namespace lastrivet::ui {

namespace {

/// As in any other field, fractions too, or with the unit behind it.
template <class Reader, class Unit> NumberReader withUnit(Reader reader, std::optional<Unit> unit)
{
    return [reader, unit](const QString &typed) {
        const auto plain = readNumber(typed);
        return plain ? plain : readTyped(reader, typed, unit);
    };
}

} // namespace

NumberReader numberReader(const Field &field, const void *record)
{
    const RecordDescription &equipment = describe(RecordType::Equipment);
    if (&field == equipment.find("weight"))
        return withUnit(balance::readWeightIn, static_cast<const Equipment *>(record)->weight_unit);
    if (&field == equipment.find("arm"))
        return withUnit(balance::readArmIn, static_cast<const Equipment *>(record)->arm_unit);
    return readNumber;
}

} // namespace lastrivet::ui
