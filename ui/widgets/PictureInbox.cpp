// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PictureInbox.h"

#include "core/evidence/ArrivingFiles.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/widgets/ProjectFiles.h"

#include <QClipboard>
#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QImage>
#include <QMimeData>

namespace lastrivet::ui {

namespace {

QString translated(const char *text)
{
    return QCoreApplication::translate("PictureInbox", text);
}

} // namespace

bool PictureInbox::canTake(const QMimeData &offered)
{
    // The window opens a project, and asks about records and lists; their files are not taken in.
    const bool isForWindow = !projectIn(offered).isEmpty() || !documentIn(offered).isEmpty() ||
                             !listIn(offered).isEmpty();
    return offered.hasImage() || (!ui::filesIn(offered).isEmpty() && !isForWindow);
}

bool PictureInbox::isPictureOnClipboard()
{
    const QMimeData *offered = QGuiApplication::clipboard()->mimeData();
    return offered && canTake(*offered) &&
           (!ui::filesIn(*offered).isEmpty() || !offered->hasText());
}

QStringList PictureInbox::filesIn(const QMimeData &offered)
{
    QStringList files;
    for (const QString &file : ui::filesIn(offered)) {
        if (!QFileInfo(file).isDir()) {
            files.append(file);
            continue;
        }
        for (const evidence::SeenFile &inside : evidence::filesIn(toPath(file))) {
            if (!inside.is_closed_folder)
                files.append(pathText(inside.path));
        }
    }
    const auto picture = files.isEmpty() ? offered.imageData().value<QImage>() : QImage();
    if (picture.isNull())
        return files;
    const QString file =
        m_folder.filePath(translated("pasted picture %1").arg(++m_pasted) + QStringLiteral(".png"));
    return picture.save(file) ? QStringList{file} : QStringList{};
}

QStringList PictureInbox::filesOnClipboard()
{
    const QMimeData *offered = QGuiApplication::clipboard()->mimeData();
    return offered ? filesIn(*offered) : QStringList{};
}

QStringList PictureInbox::ask(QWidget *parent)
{
    return QFileDialog::getOpenFileNames(
        parent, translated("Choose photos"), picturesFolder(),
        translated("Photos and papers (*.jpg *.jpeg *.png *.heic *.pdf);;All files (*)"));
}

} // namespace lastrivet::ui
