// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QSettings;

namespace lastrivet::ui {

/// The project folders that were open last on this computer, newest first.
class RecentProjects {
public:
    explicit RecentProjects(QSettings &settings);

    /// Those that are still there.
    QStringList folders() const;
    /// The name that the project had when it was open last; the folder's when none is known.
    QString name(const QString &folder) const;
    /// The name for a menu or a button, where a lone ampersand would mark a key; with its folder
    /// where another one is called the same, as a copy is.
    QString label(const QString &folder) const;
    void add(const QString &folder, const QString &name);

private:
    QSettings &m_settings;
};

} // namespace lastrivet::ui
