// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Families.h"

namespace lastrivet::invariants {

namespace {

/// A record with `given` set must have `needed` set too.
struct Need {
    RecordType type;
    std::string_view given;
    std::string_view needed;
};

using enum RecordType;

constexpr Need needs[] = {
    {Squawk, "fixed_on", "correction"},          {Squawk, "verified_on", "fixed_on"},
    {Squawk, "verified_on", "verified_by"},      {Squawk, "accepted_on", "accepted_by"},
    {Squawk, "accepted_on", "accepted_basis"},   {Fastener, "accepted_on", "accepted_by"},
    {Fastener, "accepted_on", "accepted_basis"}, {Fastener, "removed_on", "removed_why"},
    {Measurement, "accepted_on", "accepted_by"}, {Measurement, "accepted_on", "accepted_basis"},
    {Measurement, "measured_on", "value"},       {Measurement, "value", "measured_on"},
    {MaterialUse, "accepted_on", "accepted_by"}, {MaterialUse, "accepted_on", "accepted_basis"},
    {Deviation, "decided_on", "decision"},       {Deviation, "decided_on", "decided_by"},
    {Deviation, "decided_on", "basis"},          {Bulletin, "complied_on", "basis"},
    {HoldPoint, "waived_on", "waived_by"},       {HoldPoint, "waived_on", "waived_why"},
};

constexpr std::string_view lacking = "{0} has {1}, but no {2}.";

bool isSet(const RecordDescription &description, const void *record, std::string_view name)
{
    const Field *field = description.find(name);
    return field && !isNull(field->value(record));
}

void checkTorque(Review &review, const lastrivet::Fastener &fastener)
{
    if (!fastener.torque_min && !fastener.torque_max)
        return;
    if (fastener.torqued_on && !fastener.torque_value)
        review.report(fastener, lacking, {"torqued_on", "torque_value"});
    if (fastener.torque_value && !fastener.torqued_on)
        review.report(fastener, lacking, {"torque_value", "torqued_on"});
}

} // namespace

void checkNeeds(Review &review)
{
    for (const Need &need : needs) {
        const auto &description = describe(need.type);
        review.eachAny(need.type, [&](const void *record) {
            if (!isWithdrawn(description, record) && isSet(description, record, need.given) &&
                !isSet(description, record, need.needed))
                review.report({need.type, idOf(description, record)}, lacking,
                              {std::string(need.given), std::string(need.needed)});
        });
    }
    review.each<lastrivet::Fastener>(
        [&](const lastrivet::Fastener &fastener) { checkTorque(review, fastener); });
}

} // namespace lastrivet::invariants
