// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/MaterialLot.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"

namespace lastrivet {

const RecordDescription &describeMaterialLot()
{
    static const std::array fields{
        idField<&MaterialLot::id>(),
        field<&MaterialLot::name>("name", true),
        field<&MaterialLot::specification>("specification"),
        field<&MaterialLot::lot_number>("lot_number"),
        field<&MaterialLot::supplier>("supplier"),
        field<&MaterialLot::certificate_id>("certificate_id"),
        field<&MaterialLot::cures>("cures"),
        field<&MaterialLot::opened_on>("opened_on"),
        field<&MaterialLot::expires_on>("expires_on"),
        field<&MaterialLot::storage>("storage"),
        field<&MaterialLot::note>("note"),
        field<&MaterialLot::withdrawn_on>("withdrawn_on"),
        field<&MaterialLot::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<MaterialLot>(fields);
    return description;
}

} // namespace lastrivet
