// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/profiles/ProfileJson.h"
#include "core/starters/Starter.h"
#include "tests/fuzz/Targets.h"

namespace lastrivet::fuzz {

/// A country's rules; a text that is none may be what a new project begins with.
void profile(Input input)
{
    if (const auto rules = readProfile(textOf(input))) {
        const auto again = readProfile(profileJson(*rules));
        promised(again && again->json == rules->json);
    }
    try {
        readStarter(textOf(input));
    } catch (const UnreadableInput &) {
        // Said in a sentence.
    }
}

} // namespace lastrivet::fuzz
