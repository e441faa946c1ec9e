// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/NewFileName.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Of "PDF (*.pdf)" it is ".pdf".
QStringList endingsOf(const QString &kinds)
{
    static const QRegularExpression ending(QStringLiteral("\\*(\\.\\w+)"));
    QStringList endings;
    for (auto match = ending.globalMatch(kinds); match.hasNext();)
        endings << match.next().captured(1);
    return endings;
}

bool isOfKind(const QString &file, const QStringList &endings)
{
    return std::ranges::any_of(endings, [&file](const QString &ending) {
        return file.endsWith(ending, Qt::CaseInsensitive);
    });
}

} // namespace

QString withEnding(const QString &file, const QString &ending)
{
    const bool isAsItIs = file.trimmed().isEmpty() || file.endsWith(ending, Qt::CaseInsensitive) ||
                          QFileInfo(file).isDir();
    return isAsItIs ? file : file + ending;
}

QString askForNewFile(QWidget *parent, const QString &title, const QString &suggested,
                      const QString &kinds)
{
    const QStringList endings = endingsOf(kinds);
    // A line for a file may be empty, or hold nothing but the folder.
    const QFileInfo usual(suggested);
    const bool isNamed = !suggested.isEmpty() && !usual.isDir();
    QFileDialog dialog(parent, title, isNamed ? usual.path() : suggested, kinds);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    // Added by the dialog where a name has no ending, so that it asks about the very file.
    dialog.setDefaultSuffix(endings.value(0));
    QObject::connect(
        &dialog, &QFileDialog::filterSelected, &dialog,
        [&dialog](const QString &kind) { dialog.setDefaultSuffix(endingsOf(kind).value(0)); });
    if (isNamed)
        dialog.selectFile(suggested);
    while (dialog.exec() == QDialog::Accepted) {
        const QString chosen = dialog.selectedFiles().value(0);
        const QString ending = endingsOf(dialog.selectedNameFilter()).value(0, endings.value(0));
        const QString file = isOfKind(chosen, endings) ? chosen : withEnding(chosen, ending);
        if (file == chosen || !QFileInfo::exists(file))
            return file;
        // It asked about another name than that of the file which is there.
        dialog.selectFile(file);
    }
    return {};
}

} // namespace lastrivet::ui
