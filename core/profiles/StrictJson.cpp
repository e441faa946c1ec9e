// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/StrictJson.h"

#include "core/profiles/ProfileJson.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <vector>

namespace lastrivet::profiles {

namespace {

using nlohmann::json;

constexpr std::size_t longestProfile = 1024 * 1024;
constexpr int deepest = 8;
constexpr std::string_view isNotJson = "is not JSON at line {0}, column {1}";
constexpr std::string_view holdsNull = "holds the character U+0000 at line {0}, column {1}";

/// Refuses what the parser would let pass: great depth and a key that stands twice in one object.
class Gate {
public:
    bool operator()(int depth, json::parse_event_t event, const json &parsed)
    {
        if (event == json::parse_event_t::object_start || event == json::parse_event_t::array_start)
            enter(depth);
        else if (event == json::parse_event_t::object_end ||
                 event == json::parse_event_t::array_end)
            m_keys.pop_back();
        else if (event == json::parse_event_t::key)
            note(parsed.get_ref<const std::string &>());
        return true;
    }

private:
    void enter(int depth)
    {
        if (depth >= deepest)
            refuseAt("", {"is nested more than {0} deep", {std::to_string(deepest)}});
        m_keys.emplace_back();
    }
    void note(const std::string &key)
    {
        if (!m_keys.back().insert(key).second)
            refuseAt("", {"has the field {0} twice in one object", {inQuotes(key)}});
    }

    std::vector<std::set<std::string>> m_keys;
};

/// `byte` counts from 1. The pattern takes line and column.
ProfileFault faultAt(std::string_view text, std::size_t byte, std::string_view pattern)
{
    const std::string_view before = text.substr(0, byte > 0 ? byte - 1 : 0);
    const auto line = 1 + std::ranges::count(before, '\n');
    const auto column = before.size() - (before.rfind('\n') + 1) + 1;
    return {"", {pattern, {std::to_string(line), std::to_string(column)}}};
}

} // namespace

void refuseAt(std::string pointer, Message what)
{
    throw ProfileFault{std::move(pointer), std::move(what)};
}

std::string pointerStep(std::string_view key)
{
    std::string text;
    for (char c : key) {
        if (c == '~')
            text += "~0";
        else if (c == '/')
            text += "~1";
        else
            text += c;
    }
    return text;
}

std::string inQuotes(std::string_view text)
{
    constexpr std::size_t enough = 60;
    std::string shown = "\"";
    for (char c : text.substr(0, enough))
        shown += static_cast<unsigned char>(c) < 0x20 ? '?' : c;
    while (text.size() > enough && !shown.empty() && (shown.back() & 0x80) != 0)
        shown.pop_back(); // no cut through a UTF-8 sequence
    return shown + (text.size() > enough ? "…\"" : "\"");
}

json parseStrictly(std::string_view text)
{
    if (text.size() > longestProfile)
        refuseAt("", {"is longer than 1 MiB", {}});
    // The parser takes it for the end of the text.
    if (const auto null = text.find('\0'); null != std::string_view::npos)
        throw faultAt(text, null + 1, holdsNull);
    try {
        return json::parse(text, Gate{});
    } catch (const json::parse_error &error) {
        throw faultAt(text, error.byte, isNotJson);
    } catch (const json::exception &) {
        refuseAt("", {"holds a number that is too large", {}});
    }
}

} // namespace lastrivet::profiles
