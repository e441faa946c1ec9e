// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Families.h"

#include <algorithm>
#include <unordered_set>
#include <vector>

namespace lastrivet::invariants {

namespace {

using Path = std::vector<const Component *>;

void reportCycle(Review &review, Path::const_iterator begin, Path::const_iterator end)
{
    const auto first = std::min_element(
        begin, end, [](const Component *a, const Component *b) { return a->id < b->id; });
    if (end - begin == 1)
        review.report(**first, "{0} lies inside itself.");
    else
        review.report(**first, "{0} lies inside {1}, which lies inside it in turn.",
                      {review.nameOf((*first)->parent_id)});
}

} // namespace

void checkTree(Review &review)
{
    std::unordered_set<const Component *> rooted;
    review.each<Component>([&](const Component &start) {
        Path path;
        std::unordered_set<const Component *> seen;
        const Component *part = &start;
        while (part && !rooted.contains(part) && seen.insert(part).second) {
            path.push_back(part);
            part = review.records().findLive(part->parent_id);
        }
        if (part && !rooted.contains(part))
            reportCycle(review, std::find(path.cbegin(), path.cend(), part), path.cend());
        rooted.insert(path.begin(), path.end());
    });
}

} // namespace lastrivet::invariants
