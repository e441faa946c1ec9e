// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Balance.h"

#include <cmath>

namespace lastrivet::balance {

namespace {

Message tooLarge()
{
    return {"These numbers are too large to be reckoned with.", {}};
}

} // namespace

Result<Balance, Message> balance(std::span<const Item> items, std::optional<Chord> chord)
{
    if (items.empty())
        return Message{"There is nothing to weigh.", {}};
    Balance sum;
    for (const auto &item : items) {
        if (!std::isfinite(item.weight) || !std::isfinite(item.arm))
            return Message{"{0} has a weight or an arm that is no number.", {item.name}};
        sum.weight += item.weight;
        sum.moment += item.weight * item.arm;
    }
    if (!std::isfinite(sum.weight) || !std::isfinite(sum.moment))
        return tooLarge();
    if (!(sum.weight > 0))
        return Message{
            "The weights do not add up to something above zero, so there is no centre of "
            "gravity.",
            {}};
    sum.cg = sum.moment / sum.weight;
    if (!std::isfinite(sum.cg))
        return tooLarge();
    if (!chord)
        return sum;
    if (!std::isfinite(chord->lemac) || !std::isfinite(chord->length) || chord->length <= 0)
        return Message{"The mean aerodynamic chord needs a length above zero.", {}};
    sum.percent_mac = (sum.cg - chord->lemac) * 100 / chord->length;
    if (!std::isfinite(*sum.percent_mac))
        return tooLarge();
    return sum;
}

} // namespace lastrivet::balance
