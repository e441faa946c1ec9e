// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/stores/Delivery.h"
#include "core/stores/MoneySum.h"

#include <string_view>
#include <vector>

namespace lastrivet::stores {

/// What a supplier is asked to make good: the lines of a shipment that are missing, damaged or
/// late.
struct Claim {
    std::string shipment;
    std::vector<Id<PartLine>> missing;
    std::vector<Id<PartLine>> damaged;
    /// Not counted at all, though expected before.
    std::vector<Id<PartLine>> late;
    /// What is missing or damaged, at the list's prices.
    MoneySum value;
    /// Of those, the lines without a price.
    std::int64_t without_price = 0;

    bool isEmpty() const { return missing.empty() && damaged.empty() && late.empty(); }
};

Claim claimFor(const Records &records, std::string_view shipment, Moment asOf);

/// The letter to the supplier, line by line, with empty lines between its paragraphs; a draft that
/// its writer reads before it is sent.
std::vector<Message> letter(const Records &records, const Claim &claim, Moment asOf);

} // namespace lastrivet::stores
