// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/OfferedFiles.h"

#include "core/evidence/ArrivingFiles.h"
#include "ui/convert/QtText.h"

#include <QFileInfo>
#include <QImage>
#include <QMimeData>
#include <QUrl>

namespace lastrivet::ui {

bool OfferedFiles::canBeTaken(const QMimeData &offer)
{
    return offer.hasUrls() || offer.hasImage();
}

QStringList OfferedFiles::from(const QMimeData &offer)
{
    QStringList files;
    for (const QUrl &url : offer.urls()) {
        if (!url.isLocalFile())
            continue;
        const QString file = url.toLocalFile();
        if (!QFileInfo(file).isDir()) {
            files.append(file);
            continue;
        }
        for (const evidence::SeenFile &inside : evidence::filesIn(toPath(file)))
            files.append(pathText(inside.path));
    }
    const auto image = files.isEmpty() ? offer.imageData().value<QImage>() : QImage();
    const QString name =
        m_pictures.filePath(QStringLiteral("picture-%1.png").arg(++m_count));
    if (!image.isNull() && image.save(name))
        files.append(name);
    return files;
}

} // namespace lastrivet::ui
