// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/WorkSession.h"

#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Person.h"
#include "core/records/Squawk.h"
#include "core/records/Step.h"

namespace lastrivet {

template <> const RowDescription &describeRow<WorkSession::Worker>()
{
    static const std::array fields{
        field<&WorkSession::Worker::person_id>("person_id", true),
        field<&WorkSession::Worker::minutes>("minutes"),
        field<&WorkSession::Worker::paid>("paid"),
    };
    static const auto description =
        describeRows<WorkSession::Worker>("work_session.workers", fields);
    return description;
}

const RecordDescription &describeWorkSession()
{
    static const std::array fields{
        idField<&WorkSession::id>(),
        field<&WorkSession::began>("began", true),
        field<&WorkSession::approximate>("approximate"),
        field<&WorkSession::minutes>("minutes"),
        field<&WorkSession::component_id>("component_id"),
        field<&WorkSession::step_id>("step_id"),
        field<&WorkSession::squawk_id>("squawk_id"),
        field<&WorkSession::kind>("kind"),
        field<&WorkSession::place>("place"),
        field<&WorkSession::changed_inspected>("changed_inspected"),
        listField<&WorkSession::workers>("workers"),
        field<&WorkSession::source>("source"),
        field<&WorkSession::note>("note"),
        field<&WorkSession::withdrawn_on>("withdrawn_on"),
        field<&WorkSession::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<WorkSession>(fields);
    return description;
}

} // namespace lastrivet
