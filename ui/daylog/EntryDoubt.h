// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"

#include <QString>

#include <optional>

namespace lastrivet::ui {

/// Whether a line may be logged: what cannot be never is; what is unclear only when the person says
/// so twice.
class EntryDoubt {
public:
    struct Objection {
        QString why;
        /// Saying so once more logs it as it is.
        bool is_overruled_by_saying_so = false;
    };

    /// Why `reading`, which was made of `line`, is not logged now; none when it may be.
    std::optional<Objection> about(const entry::EntryReading &reading, const QString &line);
    /// What was said of a line is said again.
    void forget() { m_told.clear(); }

private:
    /// The line whose unclear words were told.
    QString m_told;
};

} // namespace lastrivet::ui
