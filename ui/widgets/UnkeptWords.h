// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <QString>

#include <map>
#include <string>

namespace lastrivet::ui {

/// What was typed about records, in a list's cell or a caption say, and could not be saved; whoever
/// types there again finds it. An `UnkeptHold` holds the window back for it.
class UnkeptWords {
public:
    /// `place` tells the places of one record apart. Null when nothing waits there.
    const QString *find(RecordRef record, const std::string &place) const;
    void keep(RecordRef record, const std::string &place, const QString &words);
    void drop(RecordRef record, const std::string &place);

    /// By record and place.
    const std::map<RecordRef, std::map<std::string, QString>> &all() const { return m_all; }

private:
    std::map<RecordRef, std::map<std::string, QString>> m_all;
};

} // namespace lastrivet::ui
