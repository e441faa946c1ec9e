// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QString>

#include <future>
#include <memory>

class QSettings;

namespace lastrivet::ui {

/// A project on its way: it is read in a thread of its own, so that the window can be built
/// meanwhile. Its end waits for that thread.
class ProjectOpening {
public:
    /// A file manager may name the database in the folder instead of it. `clock` outlives the
    /// project.
    ProjectOpening(const QString &folder, QSettings &settings, const Clock &clock);

    /// The one name of the folder, by whatever way somebody goes to it.
    static QString placeOf(const QString &folder);
    const QString &place() const { return m_place; }
    /// Waits for the project; once. Throws `Fault` when it cannot be opened.
    std::unique_ptr<Project> project() { return m_project.get(); }

private:
    QString m_place;
    std::future<std::unique_ptr<Project>> m_project;
};

} // namespace lastrivet::ui
