// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/WordSet.h"
#include "core/records/Media.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::evidence {

/// A file that a person wants taken in, with what is known of it beforehand.
struct IncomingFile {
    std::filesystem::path path;
    /// The name of the part it shows; goes into the new file's name as far as ASCII can tell it.
    std::string part_name;
    std::vector<Media::Link> links;
    WordSet<Shows> shows;
    /// Empty for a document means its file name.
    std::string caption;
    /// Replaces the time that the file itself tells.
    std::optional<Moment> taken_on;
};

} // namespace lastrivet::evidence
