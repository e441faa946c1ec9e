// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <memory>
#include <string>

namespace lastrivet::cli {

/// Closes a project; the first that wrote to it on a day leaves a copy of the database in
/// `backups`.
struct CloseWithCopy {
    void operator()(Project *project) const;
};
using OpenedProject = std::unique_ptr<Project, CloseWithCopy>;

/// Opens a project without the right to write; throws `Fault`s.
OpenedProject openForReading(const std::string &folder);
/// Opens a project to write to it. `who` may be empty. Throws `NotWritable`, which says who has it
/// and since when, when another program does.
OpenedProject openForWriting(const std::string &folder, const std::string &who);

/// Throws `Invalid` with one line per reason when a change was refused.
void requireDone(const Result<ChangeNotice, Refusal> &result);

} // namespace lastrivet::cli
