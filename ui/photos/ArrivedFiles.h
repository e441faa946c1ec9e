// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/ArrivingFiles.h"
#include "core/evidence/PreparedFile.h"
#include "core/project/Project.h"

#include <vector>

namespace lastrivet::ui {

/// Files from the watched folder on their way into the project: copied on a worker, their rows
/// stored afterwards. Copies that are not fetched from here by its end are removed.
struct ArrivedFiles {
    ArrivedFiles(std::vector<evidence::SeenFile> seen, const Project &into);
    ArrivedFiles(const ArrivedFiles &) = delete;
    ArrivedFiles &operator=(const ArrivedFiles &) = delete;
    ~ArrivedFiles();

    std::vector<evidence::SeenFile> files;
    std::filesystem::path project;
    Snapshot records;
    Moment now;
    std::vector<evidence::Batch> batches;

    /// Copies what is a photo or a video, is not there already, and was not withdrawn once; the
    /// rest is passed over without a word, because folders of phones hold much besides.
    void copy();
};

} // namespace lastrivet::ui
