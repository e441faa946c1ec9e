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

QString wholePath(const QString &typed, const QString &folder)
{
    static const auto home = QStringLiteral("~");
    const QString place = QDir::fromNativeSeparators(typed.trimmed());
    if (place.isEmpty())
        return {};
    const bool isMarked = place == home || place.startsWith(home + QLatin1Char('/'));
    return QDir::cleanPath(isMarked ? QDir::home().absoluteFilePath(place.mid(2))
                                    : QDir(folder).absoluteFilePath(place));
}

} // namespace lastrivet::ui
