// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/SquawkFilter.h"

#include "core/base/CaseFold.h"
#include "core/records/invariants/Ancestors.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

using Standing = SquawkFilter::Standing;

bool stands(const Squawk &squawk, Standing wanted, Moment asOf)
{
    const bool isDone = happened(squawk.verified_on, asOf) || happened(squawk.accepted_on, asOf);
    const bool isFixed = happened(squawk.fixed_on, asOf);
    switch (wanted) {
    case Standing::Outstanding:
        return !isDone;
    case Standing::ToFix:
        return !isDone && !isFixed;
    case Standing::ToVerify:
        return !isDone && isFixed;
    case Standing::Done:
        return isDone;
    case Standing::All:
        break;
    }
    return true;
}

bool liesIn(Id<Component> part, Id<Component> whole, const Records &records)
{
    return invariants::anyUpwards(records, part,
                                  [whole](const Component &above) { return above.id == whole; });
}

std::string textOf(const Squawk &squawk, const Records &records)
{
    std::string text = squawk.number;
    const Component *part = records.find(squawk.component_id);
    for (const std::string &more :
         {squawk.title, part ? part->code : std::string(), part ? part->name : std::string(),
          squawk.detail, squawk.repair_plan, squawk.correction, squawk.accepted_basis})
        text += ' ' + more;
    return folded(text);
}

bool hasWords(const Squawk &squawk, const std::string &typed, const Records &records)
{
    const auto words = foldedWords(typed);
    if (words.empty())
        return true;
    const std::string text = textOf(squawk, records);
    return std::ranges::all_of(
        words, [&](const std::string &word) { return text.find(word) != std::string::npos; });
}

} // namespace

bool passes(const SquawkFilter &filter, const ListedSquawk &listed, const Records &records,
            Moment asOf)
{
    const Squawk &squawk = *records.find(listed.id);
    return stands(squawk, filter.standing, asOf) &&
           (!filter.severity || squawk.severity == *filter.severity) &&
           (!filter.part || liesIn(squawk.component_id, filter.part, records)) &&
           (!filter.verifier ||
            squawk.verify_by.value_or(SignerRole::Builder) == *filter.verifier) &&
           (!filter.inspection || squawk.inspection_id == filter.inspection) &&
           (!filter.reachable || listed.reachable == *filter.reachable) &&
           hasWords(squawk, filter.text, records);
}

std::vector<ListedSquawk> filtered(std::vector<ListedSquawk> list, const SquawkFilter &filter,
                                   const Records &records, Moment asOf)
{
    std::erase_if(
        list, [&](const ListedSquawk &listed) { return !passes(filter, listed, records, asOf); });
    return list;
}

} // namespace lastrivet::readiness
