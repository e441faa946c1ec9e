// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PictureInbox.h"

#include "ui/convert/UsualFolders.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QImage>
#include <QMimeData>
#include <QUrl>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("PictureInbox", text);
}

QStringList localFiles(const QMimeData &offered)
{
    QStringList files;
    for (const QUrl &url : offered.urls()) {
        if (url.isLocalFile())
            files.append(url.toLocalFile());
    }
    return files;
}

} // namespace

bool PictureInbox::hasAny(const QMimeData &offered)
{
    return offered.hasImage() || !localFiles(offered).isEmpty();
}

QStringList PictureInbox::filesIn(const QMimeData &offered)
{
    const QStringList files = localFiles(offered);
    if (!files.isEmpty() || !offered.hasImage())
        return files;
    const QString file =
        m_folder.filePath(tr("pasted picture %1").arg(++m_pasted) + QStringLiteral(".png"));
    const auto picture = qvariant_cast<QImage>(offered.imageData());
    return picture.save(file) ? QStringList{file} : QStringList{};
}

QStringList PictureInbox::ask(QWidget *parent)
{
    return QFileDialog::getOpenFileNames(
        parent, tr("Choose photos"), picturesFolder(),
        tr("Photos and papers (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)"));
}

} // namespace lastrivet::ui
