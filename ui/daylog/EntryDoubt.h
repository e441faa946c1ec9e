// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"

#include <QString>

#include <optional>

namespace lastrivet::ui {

/// Decides whether a line may be logged: never when it has errors; with problems only when the
/// person enters the same line a second time.
class EntryDoubt {
public:
    struct Objection {
        QString why;
        /// True when entering the same line again logs it as it is.
        bool is_overruled_by_saying_so = false;
    };

    /// Why `reading`, which was made of `line`, is not logged now; none when it may be.
    std::optional<Objection> about(const entry::EntryReading &reading, const QString &line);
    /// Lets the next line be objected to, even if it is the same.
    void forget() { m_told.clear(); }

private:
    /// The line whose problems were said last.
    QString m_told;
};

} // namespace lastrivet::ui
