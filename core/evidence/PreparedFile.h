// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Media.h"

#include <filesystem>
#include <optional>
#include <vector>

namespace lastrivet::evidence {

/// What became of a file before the records know of it.
struct PreparedFile {
    enum class Outcome {
        Copied,       ///< durable in the project folder; `media` is its row but for the id
        AlreadyThere, ///< no new file; `media` is its row but for the file and the id
        Failed,       ///< nothing copied; `failure` says why
    };

    std::filesystem::path source;
    Outcome outcome = Outcome::Failed;
    Media media;
    Message failure;
    /// It failed for what the project's disk did not take, not for what the file is.
    bool is_of_disk = false;
    /// True when the copy is new, false when an undone intake had left the same file behind.
    bool made_file = false;
    /// Of one that is already there: what is told when its file was lost or damaged, and is as it
    /// was taken in from now on.
    std::optional<Message> put_back;
};

/// Files whose rows are stored in one change.
using Batch = std::vector<PreparedFile>;

} // namespace lastrivet::evidence
