// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/SquawkFilter.h"

#include <QString>

#include <vector>

namespace lastrivet::ui {

class Session;

/// The filters of the list of squawks that people gave a name, and the one that was last in use.
///
/// They belong to the project and this computer, and are no records: kept in its local state.
class SavedFilters {
public:
    using Filter = readiness::SquawkFilter;
    struct Named {
        QString name;
        Filter filter;
    };

    explicit SavedFilters(Session &session);

    const std::vector<Named> &all() const { return m_all; }
    const Named *find(const QString &name) const;
    /// Takes the place of one with the same name.
    void save(const QString &name, const Filter &filter);
    void rename(const QString &from, const QString &to);
    void remove(const QString &name);

    const Filter &last() const { return m_last; }
    void keepLast(const Filter &filter);

private:
    /// What was saved here meanwhile goes before what was kept under its name.
    void load();
    void store();

    Session &m_session;
    std::vector<Named> m_all;
    Filter m_last;
    /// While it is not known what was kept, nothing is kept in its place.
    bool m_isRead = false;
};

} // namespace lastrivet::ui
