// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/OwnLimits.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace lastrivet::workshop {

namespace {

using nlohmann::json;

std::string textOf(const json &object, const char *name)
{
    const auto found = object.find(name);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

std::optional<double> numberOf(const json &object, const char *name)
{
    const auto found = object.find(name);
    return found != object.end() && found->is_number() ? std::optional(found->get<double>())
                                                       : std::nullopt;
}

} // namespace

std::string torqueSubject(std::string_view thread, std::string_view nut)
{
    return fmt::format("torque {} {}", thread, nut);
}

std::vector<OwnLimit> ownLimits(std::string_view text)
{
    std::vector<OwnLimit> limits;
    const auto kept = json::parse(text, nullptr, false);
    if (!kept.is_array())
        return limits;
    for (const auto &object : kept) {
        if (!object.is_object())
            continue;
        OwnLimit limit{textOf(object, "subject"), numberOf(object, "minimum"),
                       numberOf(object, "maximum"), textOf(object, "unit"),
                       textOf(object, "source")};
        if (!limit.subject.empty() && !limit.source.empty() && (limit.minimum || limit.maximum))
            setOwnLimit(limits, std::move(limit));
    }
    return limits;
}

std::string ownLimitsText(const std::vector<OwnLimit> &limits)
{
    json kept = json::array();
    for (const auto &limit : limits) {
        json object{{"subject", limit.subject}, {"unit", limit.unit}, {"source", limit.source}};
        if (limit.minimum)
            object["minimum"] = *limit.minimum;
        if (limit.maximum)
            object["maximum"] = *limit.maximum;
        kept.push_back(std::move(object));
    }
    return kept.dump();
}

const OwnLimit *ownLimit(const std::vector<OwnLimit> &limits, std::string_view subject)
{
    const auto found = std::find_if(limits.begin(), limits.end(), [&](const OwnLimit &limit) {
        return limit.subject == subject;
    });
    return found == limits.end() ? nullptr : &*found;
}

void setOwnLimit(std::vector<OwnLimit> &limits, OwnLimit limit)
{
    dropOwnLimit(limits, limit.subject);
    limits.push_back(std::move(limit));
}

void dropOwnLimit(std::vector<OwnLimit> &limits, std::string_view subject)
{
    std::erase_if(limits, [&](const OwnLimit &limit) { return limit.subject == subject; });
}

} // namespace lastrivet::workshop
