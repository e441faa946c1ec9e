// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Closing;
struct Component;
struct Media;

/// A paper from the maker or the authority that may ask for work.
struct Bulletin {
    static constexpr RecordType type = RecordType::Bulletin;

    Id<Bulletin> id;
    std::string number;
    BulletinKind kind = BulletinKind::Bulletin;
    std::string title;
    std::string issuer;
    std::optional<Moment> issued_on;
    std::optional<Moment> received_on;
    /// The parts it is about; without any, only the closing of the whole aircraft looks at it.
    IdSet<Component> component_ids;
    /// Closings inside the parts above that it is known not to concern.
    IdSet<Closing> not_inside;
    /// Empty while nobody has looked into it.
    std::optional<bool> applies;
    /// Whether the authority demands it.
    bool mandatory = false;
    std::optional<Moment> complied_on;
    /// How it was complied with.
    std::string basis;
    IdSet<Media> media_ids;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Bulletin &, const Bulletin &) = default;
};

} // namespace lastrivet
