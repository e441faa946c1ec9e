// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingsPage.h"

#include "core/project/acts/ClosingUp.h"
#include "ui/closings/ClosingBoard.h"
#include "ui/closings/ClosingHead.h"
#include "ui/closings/ClosingView.h"
#include "ui/journal/HistoryButton.h"
#include "ui/journal/JournalCall.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/RowMenu.h"

#include <QMenu>

// What can be done with a closing on the board without opening it first.
namespace lastrivet::ui {

void ClosingsPage::buildMenus()
{
    for (RowListView *list : m_board->lists()) {
        (new RowMenu(*list))->addMore([this, list](QMenu &menu) {
            const RecordRef record = list->rows().row(list->currentIndex().row()).record;
            offerActs(menu, Id<Closing>{record.id});
        });
    }
}

/// As the head of the opened closing offers them.
void ClosingsPage::offerActs(QMenu &menu, Id<Closing> closing)
{
    const Closing *known = session().records()->findLive(closing);
    if (!known)
        return;
    const auto add = [this, &menu, closing](const QString &words, const QKeySequence &keys,
                                            bool isPossible, auto act) {
        // It may go while the menu is open.
        RowMenu::addLine(menu, words, keys, isPossible, [this, closing, act] {
            if (session().records()->findLive(closing))
                act();
        });
    };
    const bool canWrite = !session().isReadOnly();
    const bool isClosed = acts::isClosed(*known, session().now());
    add(tr("Open it"), Qt::Key_Return, true, [this, closing] { showClosing(closing); });
    add(ClosingHead::tr("Make packet"), {}, true, [this, closing] { startPacket({closing}); });
    if (known->made_by != MadeBy::Factory)
        add(ClosingHead::tr("Inspection visit"), {}, canWrite,
            [this, closing] { startVisit({closing}); });
    add(isClosed ? ClosingHead::tr("Record an opening") : ClosingHead::tr("Record the closing"), {},
        canWrite, [this, closing] {
            showClosing(closing);
            m_view->startClosing();
        });
    add(HistoryButton::tr("History"), {}, true, [this, closing] {
        callHistory(*this, {RecordType::Closing, closing.value()});
    });
}

} // namespace lastrivet::ui
