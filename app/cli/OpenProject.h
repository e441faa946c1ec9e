// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/Terminal.h"
#include "core/base/Error.h"
#include "core/project/Project.h"

#include <memory>
#include <string>

namespace lastrivet::cli {

/// Closes a project. After a change it first copies the database into `backups`; a large one only
/// once a day.
struct CloseWithCopy {
    void operator()(Project *project) const;
};
using OpenedProject = std::unique_ptr<Project, CloseWithCopy>;

/// Runs `body`; adds the folder to the sentence of an `UnreadableInput` that names no place.
template <class Body> decltype(auto) tellingWhere(const std::string &folder, Body &&body)
{
    try {
        return body();
    } catch (const UnreadableInput &fault) {
        throwNamed(folder, fault);
    }
}

/// Opens a project for reading, and warns when the computer's clock, by which answers go, is
/// probably wrong; throws `Fault`s.
OpenedProject openForReading(const std::string &folder, Terminal &terminal);
/// Opens a project for writing, and prints its notices. `who` may be empty. Throws `NotWritable`
/// when another program has the project, saying who has it and since when.
OpenedProject openForWriting(const std::string &folder, const std::string &who, Terminal &terminal);
/// Opens a project to print a document that its journal shall mention. A project that cannot be
/// written is printed all the same, since the hash on the document still dates it; then it warns
/// that the journal does not mention it.
OpenedProject openToPrint(const std::string &folder, const std::string &who, Terminal &terminal);

/// Tells when a record that an answer stands on names one that is not there, or a part lies inside
/// itself, as where another program wrote into the database: the answer is then not all that was
/// recorded.
void tellOfStrays(const Records &records, Terminal &terminal);

/// Throws `Invalid` with one line per reason when a change was refused.
void requireDone(const Result<ChangeNotice, Refusal> &result);

} // namespace lastrivet::cli
