// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Records.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::exchange {

/// Finds parts and people by what a list calls them.
class NameLookup {
public:
    explicit NameLookup(const Records &records);

    /// A part that is not on record yet, in a row of the list itself.
    void addPart(std::int64_t id, std::string_view code, std::string_view name);

    /// The same, in the place of parts on record that are called so.
    void addPartInPlace(std::int64_t id, std::string_view code, std::string_view name);

    /// A part by code, else by name, else by id.
    Result<std::int64_t, Message> part(std::string_view text) const;
    /// The same with the id first: a part whose id is 12 before one whose code is 12.
    Result<std::int64_t, Message> partById(std::string_view text) const;
    /// A person by name, else by id.
    Result<std::int64_t, Message> person(std::string_view text) const;

private:
    using Names = std::map<std::string, std::vector<std::int64_t>, std::less<>>;

    std::set<std::int64_t> m_partIds;
    Names m_partCodes;
    Names m_partNames;
    Names m_personNames;
};

} // namespace lastrivet::exchange
