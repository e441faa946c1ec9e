// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace lastrivet::ui {

/// The name of a file with an ending as ".pdf", which is added where it has another or none. What
/// is empty stays so, and so does the name of a folder that is there.
QString withEnding(const QString &file, const QString &ending);

/// Asks where a file is to go; empty when the person left. Its name has the ending of the chosen
/// kind, as in "PDF (*.pdf)", or of another of them that was typed, and the person was asked before
/// a file of that very name is replaced. What is suggested may be a folder alone, or nothing.
QString askForNewFile(QWidget *parent, const QString &title, const QString &suggested,
                      const QString &kinds);

} // namespace lastrivet::ui
