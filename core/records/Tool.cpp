// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Tool.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"

namespace lastrivet {

template <> const RowDescription &describeRow<Tool::Calibration>()
{
    static const std::array fields{
        field<&Tool::Calibration::calibrated_on>("calibrated_on", true),
        field<&Tool::Calibration::due_on>("due_on", true),
        field<&Tool::Calibration::certificate_id>("certificate_id"),
    };
    static const auto description = describeRows<Tool::Calibration>("tool.calibrations", fields);
    return description;
}

const RecordDescription &describeTool()
{
    static const std::array fields{
        idField<&Tool::id>(),
        field<&Tool::name>("name", true),
        field<&Tool::serial_number>("serial_number"),
        field<&Tool::needs_calibration>("needs_calibration"),
        listField<&Tool::calibrations>("calibrations"),
        field<&Tool::note>("note"),
        field<&Tool::withdrawn_on>("withdrawn_on"),
        field<&Tool::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Tool>(fields);
    return description;
}

} // namespace lastrivet
