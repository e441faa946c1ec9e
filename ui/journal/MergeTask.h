// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace lastrivet::ui {

class Session;

/// Brings in the changes of another copy, which is a project folder or its database file. Files are
/// copied on a worker; what is left to decide is shown from `view`, and what came is said.
void mergeInto(Session &session, const QString &place, QWidget *view);
/// The same with a second database in the project's own folder, which is put among the backups when
/// it is merged.
void mergeSecond(Session &session, const QString &database, QWidget *view);

} // namespace lastrivet::ui
