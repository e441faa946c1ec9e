// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/PaidHelp.h"

#include <algorithm>

namespace lastrivet::credit {

Tenths withHelp(const CreditTask &task, const PaidHelp &help)
{
    Tenths tenths = tenthsOf(task);
    const auto assembly = std::clamp<std::int64_t>(help.assembly, 0, tenths.assembly);
    const auto fabrication = std::clamp<std::int64_t>(help.fabrication, 0, tenths.fabrication);
    tenths.assembly -= assembly;
    tenths.fabrication -= fabrication;
    tenths.commercial += assembly + fabrication;
    return tenths;
}

Account ifPaid(Account account, const CreditTask &task, const PaidHelp &help)
{
    if (task.withdrawn_on || task.not_applicable)
        return account;
    CreditTask helped = task;
    setTenths(helped, withHelp(task, help));
    account.commercial_tenths += helped.commercial_tenths - task.commercial_tenths;
    account.assembly_tenths += helped.assembly_tenths - task.assembly_tenths;
    account.fabrication_tenths += helped.fabrication_tenths - task.fabrication_tenths;
    if (account.two_columns) {
        const HalfTicks before = halfTicksOf(task);
        const HalfTicks after = halfTicksOf(helped);
        account.two_columns->builder_half_ticks += after.builder - before.builder;
        account.two_columns->maker_half_ticks += after.maker - before.maker;
    }
    // A task that the builder claims nothing of any more needs no picture.
    if (tenthsOf(helped).builder() == 0)
        std::erase(account.evidence_gaps, task.id);
    return account;
}

std::optional<std::int64_t> tenthsToSpare(const Account &account)
{
    if (!account.sharePasses())
        return std::nullopt;
    // The most n with 2 (builder - n) > all, in whole numbers.
    return (2 * account.builderTenths() - account.allTenths() - 1) / 2;
}

} // namespace lastrivet::credit
