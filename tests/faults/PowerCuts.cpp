// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/PowerCuts.h"

#include "tests/faults/Acts.h"
#include "tests/faults/Copies.h"

#include <fmt/format.h>

#include <algorithm>

namespace lastrivet::faults {

namespace fs = std::filesystem;

std::string CutCounts::text() const
{
    return fmt::format("{} lost, {} half, {} damaged", lost, half, damaged);
}

void CutCounts::tell(int &count, std::size_t marked, const std::string &what)
{
    if (++count == 1)
        examples += fmt::format("after change {}: {}\n", marked, what);
}

PowerCuts::PowerCuts(Site &site)
    : m_site(site)
    , m_disk(site.root())
{
    mark();
}

void PowerCuts::mark(bool onShelf)
{
    m_disk.mark(m_states.size());
    if (onShelf)
        m_onShelf.emplace_back(m_states.size());
    else
        m_onShelf.push_back(m_onShelf.empty() ? std::nullopt : m_onShelf.back());
    m_states.push_back(m_site.project().records());
}

CutCounts PowerCuts::cut(int count, unsigned seed)
{
    const std::vector<Operation> log = m_disk.log();
    m_disk.stop();
    const auto begun = std::find_if(log.begin(), log.end(), [](const Operation &operation) {
        return operation.kind == Operation::Kind::Mark;
    });
    std::mt19937 random(seed);
    std::uniform_int_distribution<std::ptrdiff_t> moment(begun - log.begin() + 1,
                                                         std::ptrdiff_t(log.size()));
    std::vector<std::ptrdiff_t> moments;
    for (int i = 0; i < count; ++i)
        moments.push_back(moment(random));
    std::sort(moments.begin(), moments.end());

    Medium medium;
    CutCounts counts;
    std::size_t marked = 0;
    std::ptrdiff_t done = 0;
    for (const auto at : moments) {
        for (; done < at; ++done) {
            const auto &operation = log[std::size_t(done)];
            medium.take(operation);
            if (operation.kind == Operation::Kind::Mark)
                marked = std::size_t(operation.at);
        }
        const TemporaryFolder left;
        medium.writeAfterCut(Loss(random() % 3), random, left.path());
        check(left.path(), marked, counts);
    }
    return counts;
}

void PowerCuts::check(const fs::path &site, std::size_t marked, CutCounts &counts) const
{
    ++counts.cuts;
    try {
        checkProject(site, marked, counts);
        checkShelf(site, marked, counts);
    } catch (const std::exception &fault) {
        counts.tell(counts.damaged, marked, fault.what());
    }
}

bool PowerCuts::isOneOf(const Records &records, std::size_t first, std::size_t last) const
{
    const auto end = m_states.begin() + std::ptrdiff_t(std::min(last, m_states.size()));
    return std::any_of(m_states.begin() + std::ptrdiff_t(first), end,
                       [&](const Snapshot &state) { return *state == records; });
}

void PowerCuts::checkProject(const fs::path &site, std::size_t marked, CutCounts &counts) const
{
    const auto folder = site / Site::projectName;
    const auto project = Project::open(folder, m_site.options());
    if (!isOneOf(*project->records(), marked, marked + 2)) {
        const bool isEarlier = isOneOf(*project->records(), 0, marked);
        counts.tell(isEarlier ? counts.lost : counts.half, marked, "records of another moment");
        return;
    }
    if (const auto damage = damageIn(folder); !damage.empty())
        counts.tell(counts.damaged, marked, damage);
    addPart(*project);
}

/// The backup on the shelf is whole, and a backup can be made.
void PowerCuts::checkShelf(const fs::path &site, std::size_t marked, CutCounts &counts) const
{
    if (!fs::exists(site / shelf))
        return;
    const auto kept = site / shelf / Site::projectName;
    if (const auto damage = damageInCopies(site); !damage.empty())
        counts.tell(counts.damaged, marked, damage);
    if (const auto since = m_onShelf[marked]) {
        const auto backup = Project::open(kept, {nullptr, {}, true});
        if (!isOneOf(*backup->records(), *since, marked + 2))
            counts.tell(counts.lost, marked, "the backup is of another moment");
    }
    const auto project = Project::open(site / Site::projectName, m_site.options());
    Supplies supplies(m_site.supplies().folder(), 9);
    const auto why = act("backup").perform(*project, supplies);
    if (!why.empty())
        counts.tell(counts.damaged, marked, why.front());
}

} // namespace lastrivet::faults
