// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <set>
#include <string>

namespace lastrivet::print {

/// Characters that no installed typeface has: on paper they are boxes. Hears of every text that
/// its own thread lays out while it lives.
class UnshownCharacters {
public:
    UnshownCharacters();
    ~UnshownCharacters();
    UnshownCharacters(const UnshownCharacters &) = delete;
    UnshownCharacters &operator=(const UnshownCharacters &) = delete;

    /// Each once, as they came; "…" behind the first two dozen.
    std::string some() const;
    /// The first of them by number, which every typeface can write: "U+4E2D, U+6587"; "…" behind
    /// them where there are more.
    QString numbers() const;
    void hear(const QString &text);

private:
    UnshownCharacters *m_before;
    std::set<char32_t> m_heard;
    int m_count = 0;
    QString m_first;
};

/// Tells whoever listens in this thread that a text is laid out.
void hearUnshown(const QString &text);

} // namespace lastrivet::print
