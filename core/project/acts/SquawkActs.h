// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/project/Edit.h"

#include <optional>

namespace lastrivet::acts {

/// Puts a squawk on record with the next number; found today by the project's builder where the
/// draft does not say otherwise.
Id<Squawk> addSquawk(Edit &edit, Squawk draft);

/// Records the correction; a verification from before is taken away.
void fixSquawk(Edit &edit, Id<Squawk> squawk, std::string_view correction, Moment on,
               Id<Person> by);
/// Records that somebody verified the correction.
void verifySquawk(Edit &edit, Id<Squawk> squawk, Moment on, Id<Person> by);
/// Records that the defect stays as it is, on a basis that somebody answers for.
void acceptSquawk(Edit &edit, Id<Squawk> squawk, Moment on, Id<Person> by, std::string_view basis);
/// Goes one step back, when something was not good enough or was entered by mistake: takes back the
/// acceptance, else the verification, else the fix. The text of the correction stays; `remark` is
/// added to the note.
void takeBack(Edit &edit, Id<Squawk> squawk, std::string_view remark);
/// Adds a new squawk for a defect that has come back, found today, with `remark` as its note. The
/// old one keeps its dates: what was verified then was verified.
Id<Squawk> foundAgain(Edit &edit, Id<Squawk> squawk, std::string_view remark);

/// Why the person may not verify the squawk; empty when the person may.
std::optional<Message> whyNotVerify(const Squawk &squawk, const Person &person);
/// Why the person may not accept the squawk; empty when the person may.
std::optional<Message> whyNotAccept(const Squawk &squawk, const Person &person);

/// Why something cannot have happened to the squawk on that day: it lies ahead, or before the
/// squawk was found; empty when it can.
std::optional<Message> whyNotOn(const Squawk &squawk, Moment on, Moment now);

/// As `whyNotOn`, for the day on which somebody looked at the correction: not before it was made.
std::optional<Message> whyNotVerifiedOn(const Squawk &squawk, Moment on, Moment now);

/// Why the dates of the squawk cannot be: one of them lies ahead.
std::optional<Message> whyNotDated(const Squawk &squawk, Moment now);

/// Neither verified nor accepted: somebody still has to do something.
bool isOpen(const Squawk &squawk);
/// "open", "fixed", "accepted" or "verified": the furthest that had happened by `asOf`, as on paper
/// (`packet::SquawkEntry`). What was accepted as it is and mended after all is verified.
std::string_view progressWord(const Squawk &squawk, Moment asOf);

} // namespace lastrivet::acts
