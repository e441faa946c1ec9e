// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QString>

#include <future>
#include <memory>

class QSettings;

namespace lastrivet::ui {

/// A project that is being opened in a thread of its own, while the window is built. The destructor
/// waits for that thread.
class ProjectOpening {
public:
    /// A file manager may name the database in the folder instead of it. `clock` outlives the
    /// project.
    ProjectOpening(const QString &folder, QSettings &settings, const Clock &clock);

    /// The canonical path of the project's folder.
    static QString placeOf(const QString &folder);
    const QString &place() const { return m_place; }
    /// Waits for the project; to be called once. Throws a `Fault` when it cannot be opened.
    std::unique_ptr<Project> project() { return m_project.get(); }

private:
    QString m_place;
    std::future<std::unique_ptr<Project>> m_project;
};

} // namespace lastrivet::ui
