// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/NameLookup.h"

#include "core/base/ParseNumber.h"
#include "core/exchange/FieldValue.h"

#include <optional>

namespace lastrivet::exchange {

NameLookup::NameLookup(const Records &records)
{
    for (const Component &part : records.components) {
        if (!part.withdrawn_on)
            addPart(part.id.value(), part.code, part.name);
    }
    for (const Person &person : records.people) {
        if (!person.withdrawn_on)
            m_personNames[person.name].push_back(person.id.value());
    }
}

void NameLookup::addPart(std::int64_t id, std::string_view code, std::string_view name)
{
    m_partIds.insert(id);
    if (!code.empty())
        m_partCodes[std::string(code)].push_back(id);
    m_partNames[std::string(name)].push_back(id);
}

void NameLookup::addPartInPlace(std::int64_t id, std::string_view code, std::string_view name)
{
    m_partIds.insert(id);
    if (!code.empty())
        m_partCodes[std::string(code)] = {id};
    m_partNames[std::string(name)] = {id};
}

Result<std::int64_t, Message> NameLookup::part(std::string_view text) const
{
    for (const Names *names : {&m_partCodes, &m_partNames}) {
        const auto found = names->find(text);
        if (found == names->end())
            continue;
        if (found->second.size() > 1)
            return Message{"There are several parts called {0}; name it by code or id.",
                           {shown(text)}};
        return found->second.front();
    }
    if (const auto id = parseNumber<std::int64_t>(text))
        return *id;
    return Message{"No part has the code or name {0}.", {shown(text)}};
}

Result<std::int64_t, Message> NameLookup::partById(std::string_view text) const
{
    const auto id = parseNumber<std::int64_t>(text);
    if (id && m_partIds.contains(*id))
        return *id;
    return part(text);
}

Result<std::int64_t, Message> NameLookup::person(std::string_view text) const
{
    const auto found = m_personNames.find(text);
    if (found != m_personNames.end() && found->second.size() > 1)
        return Message{"There are several people called {0}; name them by id.", {shown(text)}};
    if (found != m_personNames.end())
        return found->second.front();
    if (const auto id = parseNumber<std::int64_t>(text))
        return *id;
    return Message{"There is nobody called {0}.", {shown(text)}};
}

} // namespace lastrivet::exchange
