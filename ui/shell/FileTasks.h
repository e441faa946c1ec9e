// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace lastrivet::ui {

class Session;

// What the file menu does with an open project.
namespace tasks {

/// Brings in the records of an interchange file, all of them or none.
void importInto(Session &session, const QString &file);
/// Where an export usually goes, by the project's name and the day; its kind says the ending.
QString exportName(const Session &session);
/// Writes all records to an interchange file.
void exportTo(Session &session, const QString &file);
/// Looks the whole project over on a worker, and says what was found; faults are listed over
/// `window`.
void verify(Session &session, QWidget *window);

} // namespace tasks

} // namespace lastrivet::ui
