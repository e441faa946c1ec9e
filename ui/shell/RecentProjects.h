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
    void add(const QString &folder);

private:
    QSettings &m_settings;
};

} // namespace lastrivet::ui
