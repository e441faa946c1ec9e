// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/RecentProjects.h"

#include "ui/convert/QtText.h"

#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QVariantMap>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr qsizetype most = 8;
constexpr qsizetype longestPath = 48;
const auto key = QStringLiteral("recent_projects");
const auto namesKey = QStringLiteral("recent_names");

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

QString RecentProjects::name(const QString &folder) const
{
    const QString known = m_settings.value(namesKey).toMap().value(folder).toString();
    return known.isEmpty() ? QFileInfo(folder).completeBaseName() : known;
}

QString RecentProjects::label(const QString &folder) const
{
    const QString own = name(folder);
    const QStringList all = folders();
    const auto isCalledSo = [&](const QString &other) { return name(other) == own; };
    if (std::ranges::count_if(all, isCalledSo) < 2)
        return onButton(own);
    // The end of a path tells one copy from another.
    const QString path = QDir::toNativeSeparators(folder);
    const QString end =
        path.size() > longestPath ? QStringLiteral("…") + path.right(longestPath - 1) : path;
    return onButton(QStringLiteral("%1 – %2").arg(own, end));
}

void RecentProjects::add(const QString &folder, const QString &name)
{
    QStringList all = folders();
    // The same folder may be listed under another path.
    all.removeIf([&](const QString &known) {
        return QFileInfo(known).canonicalFilePath() == QFileInfo(folder).canonicalFilePath();
    });
    all.prepend(folder);
    all = all.mid(0, most);
    QVariantMap names;
    for (const QString &each : std::as_const(all))
        names.insert(each, each == folder ? name : this->name(each));
    m_settings.setValue(key, all);
    m_settings.setValue(namesKey, names);
}

} // namespace lastrivet::ui
