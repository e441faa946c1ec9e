// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/NewFileName.h"

#include <QFileDialog>
#include <QFileInfo>

namespace lastrivet::ui {

QString withEnding(const QString &file, const QString &ending)
{
    const bool isAsItIs = file.trimmed().isEmpty() || file.endsWith(ending, Qt::CaseInsensitive) ||
                          QFileInfo(file).isDir();
    return isAsItIs ? file : file + ending;
}

QString askForNewFile(QWidget *parent, const QString &title, const QString &suggested,
                      const QString &kinds)
{
    const QFileInfo usual(suggested);
    QFileDialog dialog(parent, title, usual.path(), kinds);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    // Added by the dialog where a name has no ending, so that it asks about the very file.
    dialog.setDefaultSuffix(usual.suffix());
    dialog.selectFile(suggested);
    while (dialog.exec() == QDialog::Accepted) {
        const QString chosen = dialog.selectedFiles().value(0);
        const QString file = withEnding(chosen, QLatin1Char('.') + usual.suffix());
        if (file == chosen || !QFileInfo::exists(file))
            return file;
        // It asked about another name than that of the file which is there.
        dialog.selectFile(file);
    }
    return {};
}

} // namespace lastrivet::ui
