// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Person.h"

#include <optional>

namespace lastrivet {

/// The highest role of a person whose word counts; none for helpers, designers and others.
inline std::optional<SignerRole> rankOf(const Person &person)
{
    if (person.roles.contains(Role::Inspector))
        return SignerRole::Inspector;
    if (person.roles.contains(Role::Adviser))
        return SignerRole::Adviser;
    if (person.roles.contains(Role::Builder))
        return SignerRole::Builder;
    return std::nullopt;
}

/// True when the person may sign, or verify, in this role or a lower one.
inline bool maySignAs(const Person &person, SignerRole needed)
{
    const auto own = rankOf(person);
    return own && *own >= needed;
}

} // namespace lastrivet
