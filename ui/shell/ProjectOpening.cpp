// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/ProjectOpening.h"

#include "ui/convert/QtText.h"
#include "ui/shell/PersonalSettings.h"

#include <QFileInfo>

namespace lastrivet::ui {

ProjectOpening::ProjectOpening(const QString &folder, QSettings &settings, const Clock &clock)
    : m_place(placeOf(folder))
    , m_project(std::async(
          std::launch::async,
          [path = toPath(m_place),
           options = Project::Options{&clock, toStd(PersonalSettings(settings).who(m_place))}] {
              return Project::open(path, options);
          }))
{
}

QString ProjectOpening::placeOf(const QString &folder)
{
    const QFileInfo named(folder);
    const QFileInfo info(named.isFile() ? named.absolutePath() : folder);
    return info.exists() ? info.canonicalFilePath() : info.absoluteFilePath();
}

} // namespace lastrivet::ui
