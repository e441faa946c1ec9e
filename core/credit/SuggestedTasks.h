// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/ProfileVocabulary.h"

#include <string>
#include <vector>

namespace lastrivet::credit {

/// Tasks that a form of the major portion usually asks about for one class of aircraft; to begin
/// with, until the rows of the authority's own form are entered.
struct SuggestedTasks {
    struct Section {
        std::string title;
        std::vector<std::string> tasks;
    };

    std::string key;
    /// "Aeroplane with engine".
    std::string title;
    std::vector<Section> sections;
    /// Where the rows come from, and how far that was seen.
    std::string source;
    Mark mark = Mark::Memory;
};

/// One per class of aircraft. Throws `UnreadableInput` when they were not installed or are damaged.
std::vector<SuggestedTasks> suggestedTasks();

} // namespace lastrivet::credit
