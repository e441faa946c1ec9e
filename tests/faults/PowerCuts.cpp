// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/PowerCuts.h"

#include "core/base/Error.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace lastrivet::faults {

namespace fs = std::filesystem;

std::string CutCounts::text() const
{
    return fmt::format("{} lost, {} half, {} damaged", lost, half, damaged);
}

CutCounts &CutCounts::operator+=(const CutCounts &other)
{
    cuts += other.cuts;
    lost += other.lost;
    half += other.half;
    damaged += other.damaged;
    examples += other.examples;
    return *this;
}

PowerCuts::PowerCuts(Site &site)
    : m_site(site)
    , m_disk(site.root())
{
    mark();
}

void PowerCuts::mark()
{
    m_disk.mark(m_states.size());
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
        check(left.path() / Site::projectName, marked, counts);
    }
    return counts;
}

void PowerCuts::check(const fs::path &folder, std::size_t marked, CutCounts &counts) const
{
    const auto tell = [&](int &count, const std::string &what) {
        if (++count == 1)
            counts.examples += fmt::format("after change {}: {}\n", marked, what);
    };
    ++counts.cuts;
    try {
        auto project = Project::open(folder, m_site.options());
        const auto isNow = [&](const Snapshot &state) { return *state == *project->records(); };
        const auto first = m_states.begin() + std::ptrdiff_t(marked);
        const auto last = m_states.end() - first > 1 ? first + 2 : first + 1;
        if (std::none_of(first, last, isNow)) {
            const bool isEarlier = std::any_of(m_states.begin(), first, isNow);
            tell(isEarlier ? counts.lost : counts.half, "the records are of another moment");
            return;
        }
        if (const auto damage = damageIn(folder); !damage.empty())
            tell(counts.damaged, damage);
        addPart(*project);
    } catch (const std::exception &fault) {
        tell(counts.damaged, fault.what());
    }
}

} // namespace lastrivet::faults
