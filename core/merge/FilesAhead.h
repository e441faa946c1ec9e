// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/MergeFiles.h"

#include <cstddef>
#include <filesystem>
#include <functional>

namespace lastrivet::merge {

/// Copies the files that a merge is going to name ahead of it, so that the merge itself is short.
///
/// They go with this when it ends, except what a record names by then. A merge that was made says
/// that they stay: those of changes that it left out are named by none.
class FilesAhead {
public:
    /// How many of the merged photographs were looked at; false stops.
    using OnFile = std::function<bool(std::size_t done, std::size_t total)>;

    /// `project` is a project's folder, `other` another copy's folder or database file.
    FilesAhead(std::filesystem::path project, std::filesystem::path other);
    ~FilesAhead();
    FilesAhead(const FilesAhead &) = delete;
    FilesAhead &operator=(const FilesAhead &) = delete;

    /// On any thread; false when it was stopped. Throws `Fault`s, `UnreadableInput` when the other
    /// is no copy of the project.
    bool bring(const OnFile &onFile = {});
    std::size_t copied() const { return m_brought.copied.size(); }
    void stay() { m_brought.copied.clear(); }

private:
    std::filesystem::path m_project;
    std::filesystem::path m_place;
    BroughtFiles m_brought;
};

} // namespace lastrivet::merge
