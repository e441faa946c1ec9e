// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Names.h"

#include "core/base/CaseFold.h"
#include "core/base/ParseNumber.h"

#include <algorithm>

namespace lastrivet::cli {

Moment momentOf(const std::string &text, std::string_view option)
{
    if (const auto moment = Moment::parse(text))
        return *moment;
    throw WrongUsage(fmt::format(
        "{}: “{}” is no day or time from 1900 to 2199; write 2026-03-14 or 2026-03-14T16:30.",
        option, text));
}

std::int64_t wholeNumberOf(const std::string &text, std::string_view option, std::int64_t least,
                           std::int64_t most)
{
    const auto number = parseNumber<std::int64_t>(text);
    if (number && *number >= least && *number <= most)
        return *number;
    throw WrongUsage(
        fmt::format("{}: “{}” is no whole number from {} to {}.", option, text, least, most));
}

const Component &partOf(const Records &records, const std::string &code, std::string_view option)
{
    const Component *found = nullptr;
    const Component *other = nullptr;
    for (const Component &part : records.components) {
        if (part.withdrawn_on || code.empty())
            continue;
        if (part.code == code)
            return part;
        if (asciiLower(part.code) == asciiLower(code))
            (found ? other : found) = &part;
    }
    if (found && other)
        throw WrongUsage(fmt::format("{}: “{}” may be {} or {}; write capitals as the part's code "
                                     "has them.",
                                     option, code, found->code, other->code));
    if (found)
        return *found;
    throw WrongUsage(fmt::format("{}: no part has the code “{}”.", option, code));
}

IdSet<Closing> closingsOf(const Records &records, const std::vector<std::string> &ids)
{
    IdSet<Closing> closings;
    for (const std::string &text : ids) {
        const auto id = parseNumber<std::int64_t>(text);
        if (!id || !records.findLive(Id<Closing>{*id}))
            throw WrongUsage(fmt::format("--closing: there is no closing {}.", text));
        closings.emplace_back(*id);
    }
    std::sort(closings.begin(), closings.end());
    closings.erase(std::unique(closings.begin(), closings.end()), closings.end());
    return closings;
}

const Person &personOf(const Records &records, const std::string &name)
{
    std::vector<std::int64_t> ids;
    for (const Person &person : records.people) {
        if (!person.withdrawn_on && person.name == name)
            ids.push_back(person.id.value());
    }
    if (ids.empty())
        throw WrongUsage(fmt::format("--who: nobody in the project is called “{}”.", name));
    // Refused, since nobody would notice hours that are booked on the wrong person.
    if (ids.size() > 1)
        throw WrongUsage(
            fmt::format("--who: {} people in the project are called “{}”, with the ids "
                        "{}; they need names that differ before one can be named.",
                        ids.size(), name, fmt::join(ids, ", ")));
    return *records.find(Id<Person>{ids.front()});
}

} // namespace lastrivet::cli
