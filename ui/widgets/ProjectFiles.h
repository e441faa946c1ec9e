// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <QString>
#include <QStringList>

#include <functional>

class QMimeData;

namespace lastrivet::ui {

class Session;

/// Takes files into the project and puts each on a record called `name`, as one change; says what
/// could not be taken in. True when at least one was.
bool attachFiles(Session &session, const QString &name, const QStringList &files,
                 const std::function<void(Edit &edit, Id<Media> file)> &attach);
/// Hands the file of a record to the desktop, or says why not.
void openFile(Session &session, Id<Media> file);
/// The files of this computer among what is dragged or pasted.
QStringList filesIn(const QMimeData &offered);
/// The project's folder that is dragged or pasted by itself; empty where it is something else.
QString projectIn(const QMimeData &offered);
/// The document of records, or the list, that is dragged or pasted by itself; empty where it is
/// something else.
QString documentIn(const QMimeData &offered);
QString listIn(const QMimeData &offered);

} // namespace lastrivet::ui
