// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

class QMimeData;
class QWidget;

namespace lastrivet::ui {

/// Files that somebody drops, pastes or chooses: those named, those in a folder that is named; a
/// picture without a file becomes one, which lasts as long as the inbox.
class PictureInbox {
public:
    /// True when a drop or the clipboard holds files, folders or a picture, and not a project, a
    /// document of records or a list: those are for the window.
    static bool canTake(const QMimeData &offered);
    /// True when pasting means a picture or files: a picture of words that are there too is none.
    static bool isPictureOnClipboard();
    QStringList filesIn(const QMimeData &offered);
    QStringList filesOnClipboard();
    /// Asks with the system's own dialog; empty when the person leaves it.
    static QStringList ask(QWidget *parent);

private:
    QTemporaryDir m_folder;
    int m_pasted = 0;
};

} // namespace lastrivet::ui
