// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// What a new project of one way of building usually has: parts, closings, and lines to look at.
///
/// All of it is common practice and stands for no type of aeroplane; whoever begins prunes it.
struct Starter {
    struct Part {
        /// Names the part within the starter, and is its code in the project.
        std::string code;
        std::string name;
        std::string zone;
        ComponentKind kind = ComponentKind::Part;
        std::optional<Construction> construction;
        std::string never_enclosed_why;
        std::vector<Part> parts;
    };
    struct Closing {
        std::string title;
        ClosingScope scope = ClosingScope::Region;
        /// Code of the part it belongs to.
        std::string part;
        /// Codes; none means the part itself, or for scope aircraft everything.
        std::vector<std::string> encloses;
        bool permanent = true;
        std::string method;
        /// Lines of the inspector's list besides those of the country's profile.
        std::vector<std::string> checks;
    };

    std::string id;
    std::string title;
    std::vector<Part> parts;
    std::vector<Closing> closings;
};

/// Reads a starter from JSON. Throws `UnreadableInput`, in one sentence, for what is no starter,
/// for a code that stands twice, and for a closing of parts that are not there.
Starter readStarter(std::string_view json);

} // namespace lastrivet
