// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/project/JournalEntry.h"

#include <QString>

#include <optional>

namespace lastrivet::ui {

/// Which rows of the journal are listed; one without any wish lists all.
struct JournalFilter {
    /// All of them in label or person; or the beginning of a hash, as it stands on a paper.
    QString words;
    QString who;
    std::optional<ChangeKind> kind;
    /// Days, both counted in.
    std::optional<Moment> from;
    std::optional<Moment> until;

    bool isAny() const;
    /// `day` is the row's, in the workshop's time.
    bool matches(const JournalEntry &entry, Moment day) const;
    friend bool operator==(const JournalFilter &, const JournalFilter &) = default;
};

/// "changes", "undone", "from another copy": what a kind of row is called where kinds are chosen.
QString kindTitle(ChangeKind kind);

} // namespace lastrivet::ui
