// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/StepGraph.h"

#include <algorithm>

namespace lastrivet::invariants {

StepGraph::StepGraph(const Table<Step> &steps)
    : m_before(steps.size())
    , m_after(steps.size())
{
    m_steps.reserve(steps.size());
    for (const Step &step : steps)
        m_steps.push_back(&step);
    for (Index i = 0; i < m_steps.size(); ++i) {
        for (const Id<Step> id : m_steps[i]->after) {
            if (const auto earlier = indexOf(id)) {
                m_before[i].push_back(*earlier);
                m_after[*earlier].push_back(i);
            }
        }
    }
}

std::optional<StepGraph::Index> StepGraph::indexOf(Id<Step> id) const
{
    const auto place =
        std::lower_bound(m_steps.begin(), m_steps.end(), id,
                         [](const Step *step, Id<Step> wanted) { return step->id < wanted; });
    if (place == m_steps.end() || (*place)->id != id)
        return std::nullopt;
    return Index(place - m_steps.begin());
}

std::vector<StepGraph::Index> StepGraph::allAfter(const std::vector<Index> &starts) const
{
    std::vector<Index> found;
    std::vector<bool> isFound(size());
    std::vector<Index> open = starts;
    while (!open.empty()) {
        const Index from = open.back();
        open.pop_back();
        for (const Index next : m_after[from]) {
            if (isFound[next])
                continue;
            isFound[next] = true;
            found.push_back(next);
            open.push_back(next);
        }
    }
    std::sort(found.begin(), found.end());
    return found;
}

std::vector<std::vector<StepGraph::Index>> StepGraph::cycles() const
{
    enum class Mark : char { New, OnPath, Done };
    std::vector<Mark> marks(size(), Mark::New);
    std::vector<std::size_t> nextEdge(size());
    std::vector<std::vector<Index>> found;
    for (Index start = 0; start < size(); ++start) {
        std::vector<Index> path;
        if (marks[start] == Mark::New)
            path.push_back(start);
        while (!path.empty()) {
            const Index at = path.back();
            marks[at] = Mark::OnPath;
            if (nextEdge[at] == m_before[at].size()) {
                marks[at] = Mark::Done;
                path.pop_back();
                continue;
            }
            const Index before = m_before[at][nextEdge[at]++];
            if (marks[before] == Mark::New)
                path.push_back(before);
            else if (marks[before] == Mark::OnPath)
                found.emplace_back(std::find(path.begin(), path.end(), before), path.end());
        }
    }
    return found;
}

} // namespace lastrivet::invariants
