// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/Terminal.h"
#include "core/base/Error.h"
#include "core/project/Project.h"

#include <memory>
#include <string>

namespace lastrivet::cli {

/// Closes a project; who changed anything leaves a copy of the database in `backups`, of a large
/// one the first on a day.
struct CloseWithCopy {
    void operator()(Project *project) const;
};
using OpenedProject = std::unique_ptr<Project, CloseWithCopy>;

/// Runs `body`; a database that it cannot read says what is wrong with it, where it lies is said
/// here.
template <class Body> decltype(auto) tellingWhere(const std::string &folder, Body &&body)
{
    try {
        return body();
    } catch (const UnreadableInput &fault) {
        throwNamed(folder, fault);
    }
}

/// Opens a project without the right to write, and tells when the clock can hardly be right, by
/// which answers go; throws `Fault`s.
OpenedProject openForReading(const std::string &folder, Terminal &terminal);
/// Opens a project to write to it, and tells what has to be known of it. `who` may be empty. Throws
/// `NotWritable`, which says who has it and since when, when another program does.
OpenedProject openForWriting(const std::string &folder, const std::string &who, Terminal &terminal);
/// Opens a project for something that is printed and that its journal is to say. A paper from a
/// copy that cannot be written is worth having, its hash still dates it: then it is told that the
/// journal does not say so.
OpenedProject openToPrint(const std::string &folder, const std::string &who, Terminal &terminal);

/// Tells when a record that an answer stands on names one that is not there, as where another
/// program wrote into the database: the answer is then not all that was recorded.
void tellOfStrays(const Records &records, Terminal &terminal);

/// Throws `Invalid` with one line per reason when a change was refused.
void requireDone(const Result<ChangeNotice, Refusal> &result);

} // namespace lastrivet::cli
