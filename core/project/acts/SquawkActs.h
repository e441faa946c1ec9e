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
void acceptSquawk(Edit &edit, Id<Squawk> squawk, Moment on, Id<Person> by,
                  std::string_view basis);
/// Back to open: neither fixed, verified nor accepted.
void reopenSquawk(Edit &edit, Id<Squawk> squawk);

/// Why the person may not verify the squawk; empty when the person may.
std::optional<Message> whyNotVerify(const Squawk &squawk, const Person &person);
/// Why the person may not accept the squawk; empty when the person may.
std::optional<Message> whyNotAccept(const Squawk &squawk, const Person &person);

/// Neither verified nor accepted: somebody still has to do something.
bool isOpen(const Squawk &squawk);

} // namespace lastrivet::acts
