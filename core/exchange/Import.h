// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Result.h"
#include "core/exchange/InputError.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/project/Project.h"
#include "core/records/RecordType.h"

#include <array>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace lastrivet::exchange {

/// What an import did.
struct ImportReport {
    /// Records added, by type; hold points made by the profile are not among them.
    std::array<std::size_t, recordTypeCount> added{};
    /// Records that were there already with the same content.
    std::size_t skipped = 0;
    std::size_t hold_points_made = 0;
    std::size_t files_copied = 0;
    /// Files of records that lie neither beside the document nor in the project.
    std::vector<std::string> files_missing;
    /// Currencies that are none in force by ISO 4217; their amounts were taken in as they are.
    std::vector<std::string> unknown_currencies;
    /// Added records that speak of a day more than a year ahead, as people point at them.
    std::vector<std::string> far_ahead;

    std::size_t addedInAll() const;
};

/// Takes an interchange document into a project in one change, or changes nothing and says
/// everything that is wrong. Files of photos and documents are copied from beside the document,
/// those of known records too where the project lacks them.
/// Throws `Fault`s of the disk.
Result<ImportReport, InputErrors> importDocument(Project &project,
                                                 const std::filesystem::path &document);

/// What a new project was made with.
struct NewProject {
    std::unique_ptr<Project> project;
    ImportReport report;
};

/// Makes a project folder of a document, or none at all. The profile is the document's copy, else
/// the library's.
Result<NewProject, InputErrors> importAsNewProject(const std::filesystem::path &folder,
                                                   const std::filesystem::path &document,
                                                   const ProfileLibrary &profiles,
                                                   const Project::Options &options);

} // namespace lastrivet::exchange
