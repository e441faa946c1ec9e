// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/EntryDoubt.h"

#include "ui/convert/QtText.h"

namespace lastrivet::ui {

std::optional<EntryDoubt::Objection> EntryDoubt::about(const entry::EntryReading &reading,
                                                       const QString &line)
{
    if (!reading.errors.empty())
        return Objection{inWords(reading.errors.front())};
    if (reading.problems.empty() || m_told == line)
        return std::nullopt;
    m_told = line;
    return Objection{inWords(reading.problems.front()), true};
}

} // namespace lastrivet::ui
