// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/starters/Starter.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <set>

namespace lastrivet {

namespace {

using nlohmann::json;

constexpr int deepest = 8;

[[noreturn]] void refuse(const std::string &why)
{
    throw UnreadableInput(Message{"The starter cannot be used: {0}.", {why}});
}

/// Refuses keys that nobody reads, which would be spelling mistakes.
void expectKeys(const json &object, const std::set<std::string> &known)
{
    if (!object.is_object())
        refuse("an object is missing");
    for (const auto &[key, value] : object.items()) {
        if (!known.contains(key))
            refuse(fmt::format("nothing is called {}", key));
    }
}

std::string textAt(const json &object, const char *key, bool isNeeded = false)
{
    const auto found = object.find(key);
    if (found == object.end() && !isNeeded)
        return {};
    if (found == object.end() || !found->is_string() || found->get<std::string>().empty())
        refuse(fmt::format("{} is no text", key));
    return found->get<std::string>();
}

template <class Word> std::optional<Word> wordAt(const json &object, const char *key)
{
    const std::string text = textAt(object, key);
    if (text.empty())
        return std::nullopt;
    const auto parsed = parseWord<Word>(text);
    if (!parsed)
        refuse(fmt::format("{} is no {}", text, key));
    return parsed;
}

std::vector<std::string> textsAt(const json &object, const char *key)
{
    const auto found = object.find(key);
    if (found == object.end())
        return {};
    const auto isText = [](const json &item) { return item.is_string(); };
    if (!found->is_array() || !std::all_of(found->begin(), found->end(), isText))
        refuse(fmt::format("{} is no list of texts", key));
    return found->get<std::vector<std::string>>();
}

class Reader {
public:
    Starter read(const json &whole)
    {
        expectKeys(whole, {"id", "title", "construction", "parts", "closings"});
        m_starter.id = textAt(whole, "id", true);
        m_starter.title = textAt(whole, "title", true);
        m_construction = wordAt<Construction>(whole, "construction");
        m_starter.parts = parts(whole, 0);
        if (const auto closings = whole.find("closings"); closings != whole.end()) {
            for (const json &closing : *closings)
                m_starter.closings.push_back(readClosing(closing));
        }
        return std::move(m_starter);
    }

private:
    std::vector<Starter::Part> parts(const json &owner, int depth)
    {
        std::vector<Starter::Part> read;
        const auto list = owner.find("parts");
        if (list == owner.end())
            return read;
        if (!list->is_array() || depth > deepest)
            refuse("parts is no list, or nested too deep");
        for (const json &part : *list)
            read.push_back(readPart(part, depth));
        return read;
    }

    Starter::Part readPart(const json &object, int depth)
    {
        expectKeys(object,
                   {"code", "name", "zone", "kind", "construction", "never_enclosed_why", "parts"});
        Starter::Part part;
        part.code = textAt(object, "code", true);
        part.name = textAt(object, "name", true);
        part.zone = textAt(object, "zone");
        part.kind = wordAt<ComponentKind>(object, "kind").value_or(ComponentKind::Part);
        part.construction = wordAt<Construction>(object, "construction");
        if (!part.construction)
            part.construction = m_construction;
        part.never_enclosed_why = textAt(object, "never_enclosed_why");
        if (!m_codes.insert(part.code).second)
            refuse(fmt::format("two parts have the code {}", part.code));
        part.parts = parts(object, depth + 1);
        return part;
    }

    Starter::Closing readClosing(const json &object)
    {
        expectKeys(object, {"title", "scope", "part", "encloses", "permanent", "method", "checks"});
        Starter::Closing closing;
        closing.title = textAt(object, "title", true);
        closing.scope = wordAt<ClosingScope>(object, "scope").value_or(ClosingScope::Region);
        closing.part = textAt(object, "part", true);
        closing.encloses = textsAt(object, "encloses");
        closing.permanent = object.value("permanent", true);
        closing.method = textAt(object, "method");
        closing.checks = textsAt(object, "checks");
        for (const std::string &code : closing.encloses)
            expectPart(code);
        expectPart(closing.part);
        return closing;
    }

    void expectPart(const std::string &code) const
    {
        if (!m_codes.contains(code))
            refuse(fmt::format("no part has the code {}", code));
    }

    Starter m_starter;
    std::optional<Construction> m_construction;
    std::set<std::string> m_codes;
};

} // namespace

Starter readStarter(std::string_view text)
{
    try {
        return Reader().read(json::parse(text));
    } catch (const json::exception &error) {
        refuse(error.what());
    }
}

} // namespace lastrivet
