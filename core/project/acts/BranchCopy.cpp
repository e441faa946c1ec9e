// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/BranchCopy.h"

#include "core/project/acts/BranchCopier.h"
#include "core/project/acts/OtherSide.h"
#include "core/records/PartPlace.h"

#include <algorithm>
#include <functional>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace lastrivet::acts {

namespace {

using PartIds = std::unordered_set<Id<Component>>;

/// The live parts inside each part, the last first.
std::unordered_map<Id<Component>, std::vector<const Component *>>
partsBackwards(const Records &records)
{
    std::unordered_map<Id<Component>, std::vector<const Component *>> inside;
    for (const Component &part : records.components) {
        if (!part.withdrawn_on)
            inside[part.parent_id].push_back(&part);
    }
    for (auto &[parent, parts] : inside)
        std::ranges::sort(parts, std::ranges::greater{},
                          [](const Component *part) { return partPlace(*part); });
    return inside;
}

void addParts(const Records &records, Id<Component> branch, BranchCopy &copy)
{
    const auto inside = partsBackwards(records);
    std::vector<std::pair<const Component *, std::size_t>> open{{records.find(branch), 0}};
    // A tree damaged into a ring ends after as many parts as there are.
    while (!open.empty() && copy.parts.size() < records.components.size()) {
        const auto [part, depth] = open.back();
        open.pop_back();
        copy.parts.push_back({part->id, depth, part->name, part->code});
        if (const auto found = inside.find(part->id); found != inside.end()) {
            for (const Component *below : found->second)
                open.emplace_back(below, depth + 1);
        }
    }
}

template <class Record> std::size_t countOf(const Records &records, const PartIds &parts)
{
    return std::size_t(std::ranges::count_if(records.of<Record>(), [&](const Record &record) {
        return parts.contains(record.component_id) && isCopied(record);
    }));
}

BranchCopy::Counts countsOf(const Records &records, const BranchCopy &copy)
{
    PartIds parts;
    for (const BranchCopy::Part &part : copy.parts)
        parts.insert(part.original);
    BranchCopy::Counts counts;
    counts.steps = countOf<Step>(records, parts);
    counts.closings = countOf<Closing>(records, parts);
    counts.fasteners = countOf<Fastener>(records, parts);
    counts.measurements = countOf<Measurement>(records, parts);
    for (const Check &check : records.checks) {
        const Closing *closing = records.find(check.closing_id);
        if (!check.withdrawn_on && closing && isCopied(*closing) &&
            parts.contains(closing->component_id))
            ++counts.checks;
    }
    return counts;
}

std::unordered_map<std::string, int> codesInUse(const Records &records)
{
    std::unordered_map<std::string, int> codes;
    for (const Component &part : records.components) {
        if (!part.withdrawn_on && !part.code.empty())
            ++codes[part.code];
    }
    return codes;
}

} // namespace

BranchCopy planBranchCopy(const Records &records, Id<Component> branch)
{
    BranchCopy copy;
    addParts(records, branch, copy);
    copy.counts = countsOf(records, copy);
    const auto side = sideNamed(copy.parts.front().name);
    copy.swapsSides = side.has_value();
    auto codes = codesInUse(records);
    for (BranchCopy::Part &part : copy.parts) {
        if (side) {
            part.name = nameOnOtherSide(part.name);
            part.code = codeOnOtherSide(part.code, *side);
        }
        if (!part.code.empty() && codes[part.code]++ > 0)
            part.code.clear();
    }
    return copy;
}

std::optional<std::size_t> takenCode(const Records &records, const BranchCopy &copy)
{
    auto codes = codesInUse(records);
    for (std::size_t row = 0; row < copy.parts.size(); ++row) {
        const std::string &code = copy.parts[row].code;
        if (!code.empty() && codes[code]++ > 0)
            return row;
    }
    return std::nullopt;
}

bool stillFits(const Records &records, const BranchCopy &copy)
{
    const Id<Component> branch = copy.parts.front().original;
    if (!records.findLive(branch))
        return false;
    BranchCopy now;
    addParts(records, branch, now);
    return std::ranges::equal(now.parts, copy.parts, [](const auto &a, const auto &b) {
        return a.original == b.original && a.depth == b.depth;
    });
}

Id<Component> copyBranch(Edit &edit, const BranchCopy &copy)
{
    return BranchCopier(edit, copy).run();
}

} // namespace lastrivet::acts
