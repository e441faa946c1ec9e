// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/UsualFolders.h"

#include <QDir>
#include <QStandardPaths>

namespace lastrivet::ui {

namespace {

/// A file dialog that is given a folder that is not there opens wherever the program was started.
QString existing(QStandardPaths::StandardLocation place)
{
    const QString folder = QStandardPaths::writableLocation(place);
    return QDir(folder).exists() ? folder : QDir::homePath();
}

} // namespace

QString documentsFolder()
{
    return existing(QStandardPaths::DocumentsLocation);
}

QString picturesFolder()
{
    return existing(QStandardPaths::PicturesLocation);
}

} // namespace lastrivet::ui
