// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkLineEdit.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/PictureInbox.h"

#include <QKeyEvent>

namespace lastrivet::ui {

SquawkLineEdit::SquawkLineEdit(Session &session, QWidget *parent)
    : EntryEdit(session, parent)
{
    setPlaceholderText(tr("New squawk, as in “left aileron: overdriven rivet at rib 3”"));
    setAccessibleName(tr("New squawk"));
    // A dropped picture is for the form around the line.
    setAcceptDrops(false);
}

entry::SquawkSurroundings SquawkLineEdit::surroundings(Id<Component> partShown) const
{
    entry::SquawkSurroundings around{session().today(), partShown, {}};
    for (std::size_t i = 0; i < around.severity_words.size(); ++i)
        around.severity_words[i] = toStd(severityWord(Severity(i)));
    return around;
}

entry::PartWords SquawkLineEdit::partWords(std::string_view line, std::size_t cursor,
                                           const entry::PartFinder &parts) const
{
    return entry::squawkPartWordsAt(line, cursor, parts, surroundings());
}

void SquawkLineEdit::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->matches(QKeySequence::Paste) && PictureInbox::isPictureOnClipboard())
        Q_EMIT picturesPasted();
    else if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else if (isEnter && event->modifiers() & Qt::ControlModifier)
        Q_EMIT enteredToOpen();
    else
        EntryEdit::keyPressEvent(event);
}

} // namespace lastrivet::ui
