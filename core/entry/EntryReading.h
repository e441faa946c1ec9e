// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/WorkSession.h"

#include <vector>

namespace lastrivet {
struct Step;
}

namespace lastrivet::entry {

/// What a line of the log was understood to say; nothing of it is on record yet.
struct EntryReading {
    /// One session for each part that was named, the minutes shared among them; a single session
    /// without a part when none was named; none when the line is empty.
    std::vector<WorkSession> sessions;
    std::vector<Id<Step>> steps_done;
    /// True when the kind of work was taken from the words of the note.
    bool kind_is_guessed = false;
    /// What the line names and the records do not know. Such words are kept in the note.
    std::vector<Message> problems;
    /// Why it cannot be logged as it stands: no time at all, more than a day, a day to come.
    std::vector<Message> errors;
};

} // namespace lastrivet::entry
