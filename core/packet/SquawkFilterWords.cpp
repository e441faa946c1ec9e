// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/SquawkFilterWords.h"

#include "core/packet/InWords.h"
#include "core/records/Designation.h"

namespace lastrivet::packet {

using readiness::Reachable;
using readiness::SquawkFilter;
using Standing = SquawkFilter::Standing;

Message inWords(Standing standing)
{
    switch (standing) {
    case Standing::Outstanding:
        return {"outstanding", {}};
    case Standing::ToFix:
        return {"to be fixed", {}};
    case Standing::ToVerify:
        return {"fixed, to be looked at", {}};
    case Standing::Done:
        return {"dealt with", {}};
    case Standing::All:
        break;
    }
    return {"outstanding and dealt with", {}};
}

Message inWords(Reachable reachable)
{
    switch (reachable) {
    case Reachable::NotForLong:
        return {"soon out of reach", {}};
    case Reachable::NoLonger:
        return {"out of reach", {}};
    default:
        return {"in reach", {}};
    }
}

Message verifierInWords(SignerRole role)
{
    switch (role) {
    case SignerRole::Inspector:
        return {"for the inspector to verify", {}};
    case SignerRole::Adviser:
        return {"for the adviser to verify", {}};
    case SignerRole::Builder:
        break;
    }
    return {"for the builder to verify", {}};
}

std::vector<Message> inWords(const SquawkFilter &filter, const Records &records)
{
    if (filter == SquawkFilter{.standing = Standing::All})
        return {};
    std::vector<Message> words{inWords(filter.standing)};
    if (filter.severity)
        words.push_back(inWords(*filter.severity));
    if (filter.reachable)
        words.push_back(inWords(*filter.reachable));
    if (filter.verifier)
        words.push_back(verifierInWords(*filter.verifier));
    if (filter.part)
        words.push_back({"{0} and below", {partName(records, filter.part)}});
    if (filter.inspection)
        words.push_back(designated(records, {RecordType::Inspection, filter.inspection.value()}));
    if (!filter.text.empty())
        words.push_back({"with the words “{0}”", {filter.text}});
    return words;
}

} // namespace lastrivet::packet
