// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/Credit.h"

#include "core/credit/Tenths.h"
#include "core/records/invariants/Ancestors.h"

#include <algorithm>
#include <fmt/format.h>
#include <unordered_set>

namespace lastrivet::credit {

namespace {

/// Parts that a picture of the builder at work is linked to, or one below them.
class PartsShown {
public:
    explicit PartsShown(const Records &records)
        : m_records(records)
    {
        for (const Media &media : records.media) {
            if (media.withdrawn_on || !isPicture(media) ||
                !media.shows.contains(Shows::BuilderAtWork))
                continue;
            for (const auto &link : media.links) {
                if (link.subject == RecordType::Component)
                    addWithAllAbove(Id<Component>{link.id});
            }
        }
    }

    bool contains(Id<Component> part) const { return m_parts.contains(part); }

private:
    void addWithAllAbove(Id<Component> part)
    {
        if (!m_records.findLive(part))
            return;
        invariants::anyUpwards(m_records, part, [this](const Component &above) {
            m_parts.insert(above.id);
            return false;
        });
    }

    const Records &m_records;
    std::unordered_set<Id<Component>> m_parts;
};

bool isShown(const CreditTask &task, const Records &records, const PartsShown &parts)
{
    return std::any_of(task.media_ids.begin(), task.media_ids.end(),
                       [&](Id<Media> id) {
                           const Media *media = records.findLive(id);
                           return media && isPicture(*media);
                       }) ||
           std::any_of(task.component_ids.begin(), task.component_ids.end(),
                       [&](Id<Component> id) { return parts.contains(id); });
}

void addTick(TwoColumns &columns, const CreditTask &task)
{
    const HalfTicks ticks = halfTicksOf(task);
    columns.builder_half_ticks += ticks.builder;
    columns.maker_half_ticks += ticks.maker;
}

} // namespace

std::optional<std::int64_t> Account::shareHundredths() const
{
    if (allTenths() == 0)
        return std::nullopt;
    return builderTenths() * 10'000 / allTenths();
}

std::optional<std::string> Account::shareText() const
{
    const auto share = shareHundredths();
    if (!share)
        return std::nullopt;
    return fmt::format("{}.{:02}", *share / 100, *share % 100);
}

Account account(const Records &records, const Profile &profile)
{
    Account sum;
    sum.profile = profile.id;
    sum.basis = profile.credit_basis;
    if (sum.basis == CreditBasis::Ticks)
        sum.two_columns.emplace();
    const PartsShown parts{records};
    for (const CreditTask &task : records.credit_tasks) {
        if (task.withdrawn_on)
            continue;
        ++sum.rows;
        if (task.not_applicable)
            continue;
        ++sum.applicable_rows;
        sum.kit_tenths += task.kit_tenths;
        sum.commercial_tenths += task.commercial_tenths;
        sum.assembly_tenths += task.assembly_tenths;
        sum.fabrication_tenths += task.fabrication_tenths;
        if (sum.two_columns)
            addTick(*sum.two_columns, task);
        if (task.assembly_tenths + task.fabrication_tenths > 0 && !isShown(task, records, parts))
            sum.evidence_gaps.push_back(task.id);
    }
    return sum;
}

} // namespace lastrivet::credit
