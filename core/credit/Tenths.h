// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/CreditTask.h"

#include <cstdint>
#include <optional>

namespace lastrivet::credit {

/// Who did how much of one task, in tenths of it.
struct Tenths {
    std::int64_t kit = 0;
    std::int64_t commercial = 0;
    std::int64_t assembly = 0;
    std::int64_t fabrication = 0;

    std::int64_t sum() const { return kit + commercial + builder(); }
    std::int64_t builder() const { return assembly + fabrication; }
    friend bool operator==(const Tenths &, const Tenths &) = default;
};

Tenths tenthsOf(const CreditTask &task);
void setTenths(CreditTask &task, const Tenths &tenths);

/// One sentence why a task that applies cannot have these; nothing when it can.
std::optional<Message> whyNot(const Tenths &tenths);

/// The tick of a task in a form of two columns: 2 to the one who did more of it, 1 to each when
/// both did the same; none when the task does not apply.
struct HalfTicks {
    std::int64_t builder = 0;
    std::int64_t maker = 0;
};
HalfTicks halfTicksOf(const CreditTask &task);

} // namespace lastrivet::credit
