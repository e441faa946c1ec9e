// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"

#include <array>
#include <compare>
#include <cstdint>
#include <string_view>

namespace lastrivet {

/// The kinds of records, in the order of the interchange file.
enum class RecordType {
    Project,
    Person,
    Component,
    Step,
    WorkSession,
    Closing,
    HoldPoint,
    Check,
    Inspection,
    SignOff,
    Squawk,
    Deviation,
    Bulletin,
    Fastener,
    Measurement,
    Tool,
    PartLine,
    MaterialLot,
    MaterialUse,
    Media,
    Expense,
    CreditTask,
    Equipment,
    Weighing,
    LoadingCase,
    Envelope,
    CertificateDocument,
    Flight,
};

template <> struct Words<RecordType> {
    static constexpr std::array<std::string_view, 28> list{
        "project",      "person",       "component",
        "step",         "work_session", "closing",
        "hold_point",   "check",        "inspection",
        "sign_off",     "squawk",       "deviation",
        "bulletin",     "fastener",     "measurement",
        "tool",         "part_line",    "material_lot",
        "material_use", "media",        "expense",
        "credit_task",  "equipment",    "weighing",
        "loading_case", "envelope",     "certificate_document",
        "flight"};
};

inline constexpr std::size_t recordTypeCount = Words<RecordType>::list.size();

/// The name of the array in the interchange file, and of the CSV file; `project` for the project.
constexpr std::string_view plural(RecordType type)
{
    constexpr std::array<std::string_view, recordTypeCount> list{
        "project",       "people",        "components",
        "steps",         "work_sessions", "closings",
        "hold_points",   "checks",        "inspections",
        "sign_offs",     "squawks",       "deviations",
        "bulletins",     "fasteners",     "measurements",
        "tools",         "part_lines",    "material_lots",
        "material_uses", "media",         "expenses",
        "credit_tasks",  "equipment",     "weighings",
        "loading_cases", "envelopes",     "certificate_documents",
        "flights"};
    return list[std::size_t(type)];
}

/// A record named by type and id.
struct RecordRef {
    RecordType type;
    std::int64_t id;

    friend auto operator<=>(const RecordRef &, const RecordRef &) = default;
};

} // namespace lastrivet
