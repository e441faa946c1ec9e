// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prints/AskToPrint.h"

#include "ui/convert/UsualFolders.h"
#include "ui/shell/Session.h"
#include "ui/widgets/NewFileName.h"

#include <QCoreApplication>
#include <QDir>

namespace lastrivet::ui {

void askToPrint(QWidget &asker, Session &session, PrintKind kind)
{
    const QString suggested =
        QDir(documentsFolder()).filePath(printFileName(nameOf(kind), session.today().text()));
    PrintWish wish;
    wish.kind = kind;
    wish.choices = usualChoices();
    wish.file = askForNewFile(&asker, nameOf(kind), suggested,
                              QCoreApplication::translate("Print", "PDF (*.pdf)"));
    if (!wish.file.isEmpty())
        carryOut(session, wish);
}

} // namespace lastrivet::ui
