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

/// The correction was made; what was verified before must be looked at again.
void fixSquawk(Edit &edit, Id<Squawk> squawk, std::string_view correction, Moment on,
               Id<Person> by);
/// Somebody looked at the correction.
void verifySquawk(Edit &edit, Id<Squawk> squawk, Moment on, Id<Person> by);
/// It stays as it is, on a basis that somebody answers for.
void acceptSquawk(Edit &edit, Id<Squawk> squawk, Moment on, Id<Person> by, std::string_view basis);
/// Goes one step back, because it was not good enough or never was so: not accepted, else not
/// verified, else not fixed. The correction stays to be mended; `remark` is added to the note, so
/// that the record tells what was thought before.
void takeBack(Edit &edit, Id<Squawk> squawk, std::string_view remark);
/// The defect has come back: a new squawk like the old one, found today, with `remark` as its note.
/// The old one keeps its dates, since what was verified then was verified.
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
