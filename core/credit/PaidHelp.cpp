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

Account ifPaid(const Records &records, const Profile &profile, const PaidHelp &help)
{
    Records changed = records;
    if (const CreditTask *task = records.findLive(help.task)) {
        CreditTask helped = *task;
        setTenths(helped, withHelp(*task, help));
        changed.put(RecordType::CreditTask, &helped);
    }
    return account(changed, profile);
}

std::optional<std::int64_t> tenthsToSpare(const Account &account)
{
    if (!account.sharePasses())
        return std::nullopt;
    // The most n with 2 (builder - n) > all, in whole numbers.
    return (2 * account.builderTenths() - account.allTenths() - 1) / 2;
}

} // namespace lastrivet::credit
