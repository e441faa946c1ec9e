// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
#include "core/records/invariants/Families.h"

#include <array>
#include <optional>

namespace lastrivet::invariants {

namespace {

/// Fields of one record whose moments follow each other; unset ones are skipped.
struct Sequence {
    RecordType type;
    std::array<std::string_view, 3> fields;
};

using enum RecordType;

constexpr Sequence sequences[] = {
    {Squawk, {"found_on", "fixed_on", "verified_on"}},
    {Squawk, {"found_on", "accepted_on"}},
    {Deviation, {"raised_on", "asked_on", "decided_on"}},
    {Deviation, {"built_on", "undone_on"}},
    {Fastener, {"fitted_on", "torqued_on", "marked_on"}},
    {Fastener, {"fitted_on", "locked_on"}},
    {Fastener, {"fitted_on", "removed_on"}},
    {Inspection, {"asked_on", "held_on", "completed_on"}},
    {PartLine, {"ordered_on", "received_on"}},
};

constexpr std::string_view outOfOrder = "{0} has {1} {2}, which is before {3} {4}.";

/// Each against all before it, the nearest first: a day without a time ties with two times that do
/// not tie with each other.
void checkSequence(Review &review, const RecordDescription &description, const Sequence &sequence,
                   const void *record)
{
    std::array<std::optional<Moment>, 3> moments;
    for (std::size_t later = 0; later < sequence.fields.size(); ++later) {
        const Field *field = description.find(sequence.fields[later]);
        const Scalar value = field ? field->value(record) : Scalar{};
        const auto *moment = std::get_if<Moment>(&value);
        if (!moment)
            continue;
        moments[later] = *moment;
        for (std::size_t earlier = later; earlier-- > 0;) {
            if (!moments[earlier] || !after(*moments[earlier], *moment))
                continue;
            review.report({sequence.type, idOf(description, record)}, outOfOrder,
                          {nested({sequence.fields[later], {}}), moment->text(),
                           nested({sequence.fields[earlier], {}}), moments[earlier]->text()});
            break;
        }
    }
}

} // namespace

void checkDates(Review &review)
{
    for (const Sequence &sequence : sequences) {
        const auto &description = describe(sequence.type);
        review.eachAny(sequence.type, [&](const void *record) {
            if (!isWithdrawn(description, record))
                checkSequence(review, description, sequence, record);
        });
    }
    review.each<lastrivet::Tool>([&](const lastrivet::Tool &tool) {
        for (const auto &calibration : tool.calibrations) {
            if (calibration.calibrated_on && calibration.due_on &&
                after(*calibration.calibrated_on, *calibration.due_on))
                review.report(tool, outOfOrder,
                              {nested({"due_on", {}}), calibration.due_on->text(),
                               nested({"calibrated_on", {}}), calibration.calibrated_on->text()});
        }
    });
}

} // namespace lastrivet::invariants
