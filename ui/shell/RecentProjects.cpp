// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/RecentProjects.h"

#include <QDir>
#include <QSettings>

namespace lastrivet::ui {

namespace {

constexpr qsizetype most = 8;
const auto key = QStringLiteral("recent_projects");

} // namespace

RecentProjects::RecentProjects(QSettings &settings)
    : m_settings(settings)
{
}

QStringList RecentProjects::folders() const
{
    QStringList there;
    for (const QString &folder : m_settings.value(key).toStringList()) {
        if (QDir(folder).exists())
            there << folder;
    }
    return there;
}

void RecentProjects::add(const QString &folder)
{
    QStringList all = folders();
    all.removeAll(folder);
    all.prepend(folder);
    m_settings.setValue(key, all.mid(0, most));
}

} // namespace lastrivet::ui
