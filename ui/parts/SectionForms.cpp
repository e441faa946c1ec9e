// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionForms.h"

#include "core/project/acts/StoreActs.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>

namespace lastrivet::ui::sections {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Section", text);
}

} // namespace

Rows stepForm()
{
    return {{"title"},   {"component_id"}, {"estimate_minutes"}, {"plan_ref"},
            {"after"},   {"closes"},       {"may_follow"},       {"planned_on"},
            {"done_on"}, {"dropped_on"},   {"position"},         {"note", true}};
}

Rows fastenerForm()
{
    return {{"place"},          {"hardware"},    {"thread"},       {"quantity"},    {"torque_min"},
            {"torque_max"},     {"torque_drag"}, {"torque_unit"},  {"locking"},     {"tool_id"},
            {"fitted_on"},      {"torqued_on"},  {"torque_value"}, {"marked_on"},   {"locked_on"},
            {"step_id"},        {"may_follow"},  {"planned_on"},   {"accepted_on"}, {"accepted_by"},
            {"accepted_basis"}, {"removed_on"},  {"removed_why"},  {"note", true}};
}

Rows measurementForm()
{
    return {{"what"},        {"unit"},        {"minimum"},        {"maximum"},    {"value"},
            {"measured_on"}, {"tool_id"},     {"step_id"},        {"may_follow"}, {"planned_on"},
            {"accepted_on"}, {"accepted_by"}, {"accepted_basis"}, {"note", true}};
}

Rows deviationForm()
{
    return {{"title"},
            {"component_ids"},
            {"drawing_ref", false, tr("Drawing says")},
            {"built_as", true},
            {"reason", true},
            {"alternatives", true},
            {"raised_on"},
            {"asked_of"},
            {"asked_on"},
            {"decision"},
            {"decided_by"},
            {"basis", true, tr("On what basis")},
            {"decided_on"},
            {"built_on"},
            {"undone_on"},
            {"weight_change", false, tr("Weight, more or less")},
            {"weight_unit"},
            {"arm", false, tr("At arm")},
            {"arm_unit"},
            {"media_ids", false, tr("Letters and pictures")},
            {"not_inside"},
            {"note", true}};
}

Rows bulletinForm()
{
    return {{"title"},         {"kind"},        {"number"},
            {"issuer"},        {"issued_on"},   {"received_on"},
            {"component_ids"}, {"applies"},     {"mandatory"},
            {"complied_on"},   {"basis", true}, {"media_ids", false, tr("Documents")},
            {"not_inside"},    {"note", true}};
}

Rows partLineForm()
{
    return {{"name"},        {"part_number"},      {"quantity"},  {"received_quantity"},
            {"received_on"}, {"damaged_quantity"}, {"shipment"},  {"ordered_on"},
            {"expected_on"}, {"step_id"},          {"note", true}};
}

void countWhatIsTyped(const Edit &edit, std::string_view field, void *record)
{
    auto &line = *static_cast<PartLine *>(record);
    const bool isDamage = field == "damaged_quantity" && line.damaged_quantity > 0;
    if (line.received_on || (field != "received_quantity" && !isDamage))
        return;
    if (isDamage && line.received_quantity == 0)
        line.received_quantity = line.quantity;
    line.received_on = edit.today();
}

QString whyNotCounted(const void *record)
{
    const auto &line = *static_cast<const PartLine *>(record);
    const auto why = acts::whyNotCount(line.received_quantity, line.damaged_quantity);
    return why ? inWords(*why) : QString();
}

} // namespace lastrivet::ui::sections
