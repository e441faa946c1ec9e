// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/base/WordSet.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>

namespace lastrivet {

/// Somebody who builds, helps, advises, designs or inspects.
struct Person {
    static constexpr RecordType type = RecordType::Person;

    Id<Person> id;
    std::string name;
    WordSet<Role> roles;
    /// Number of a licence or authorisation.
    std::string credential;
    std::string contact;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Person &, const Person &) = default;
};

} // namespace lastrivet
