// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartsPage.h"

#include "core/project/acts/PartActs.h"
#include "ui/convert/QtText.h"
#include "ui/lists/ListDialog.h"
#include "ui/parts/BranchForm.h"
#include "ui/parts/PartDetail.h"
#include "ui/parts/PartMoves.h"
#include "ui/parts/PartTree.h"
#include "ui/parts/SeveralParts.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowMenu.h"
#include "ui/widgets/WithdrawAct.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QTreeView>

#include <algorithm>

// What people do with the parts that are chosen in the tree, by button and by key.
namespace lastrivet::ui {

QWidget *PartsPage::buildActs()
{
    struct Act {
        QString words;
        QString tip;
        QKeySequence keys;
        void (PartsPage::*run)();
    };
    const Act acts[] = {
        {tr("Add beside"), tr("Insert: a part after this one"), Qt::Key_Insert,
         &PartsPage::addBeside},
        {tr("Add inside"), tr("Shift+Insert: a part within this one"),
         QKeySequence(Qt::SHIFT | Qt::Key_Insert), &PartsPage::addInside},
        {tr("Copy…"), tr("Ctrl+D: this part with everything below it, for the other side"),
         QKeySequence(Qt::CTRL | Qt::Key_D), &PartsPage::copyCurrent},
        {tr("Paste list…"), tr("Ctrl+V: parts or steps from a spreadsheet"),
         QKeySequence(Qt::CTRL | Qt::Key_V), &PartsPage::pasteList},
        {tr("Withdraw"), tr("Delete: take wrong parts out"), QKeySequence::Delete,
         &PartsPage::withdrawChosen},
    };
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    for (const Act &act : acts) {
        auto *button = new QPushButton(act.words, bar);
        button->setToolTip(act.tip);
        RowMenu::tellKeys(*button, act.keys);
        button->setEnabled(!session().isReadOnly());
        flow->addWidget(button);
        connect(button, &QPushButton::clicked, this, act.run);
    }
    m_menu->addBar(*bar);
    return bar;
}

QShortcut *PartsPage::addKey(const QKeySequence &keys, const QString &words,
                             void (PartsPage::*act)())
{
    auto *shortcut = new QShortcut(keys, &m_tree->view());
    shortcut->setContext(Qt::WidgetShortcut);
    shortcut->setWhatsThis(words);
    connect(shortcut, &QShortcut::activated, this, [this, act] {
        if (!session().isReadOnly())
            (this->*act)();
    });
    return shortcut;
}

void PartsPage::addMove(Qt::Key arrow, const QString &words, void (PartsPage::*act)(),
                        bool (*canMove)(const Session &session, Id<Component> part))
{
    m_menu->addKey(*addKey(QKeySequence(Qt::ALT | arrow), words, act), [this, canMove] {
        return !session().isReadOnly() && current() && canMove(session(), current());
    });
}

void PartsPage::buildKeys()
{
    addKey(QKeySequence(Qt::Key_Insert), tr("A part beside the chosen one"), &PartsPage::addBeside);
    addKey(QKeySequence(Qt::SHIFT | Qt::Key_Insert), tr("A part inside the chosen one"),
           &PartsPage::addInside);
    addKey(QKeySequence::Delete, tr("Withdraw what is chosen"), &PartsPage::withdrawChosen);
    addKey(QKeySequence(Qt::CTRL | Qt::Key_D), tr("Copy the part with what is in it"),
           &PartsPage::copyCurrent);
    addKey(QKeySequence(Qt::CTRL | Qt::Key_V), tr("Paste a list of parts"), &PartsPage::pasteList);
    addMove(Qt::Key_Up, tr("Move up"), &PartsPage::moveUp,
            [](const Session &where, Id<Component> part) { return canMoveAmong(where, part, -1); });
    addMove(Qt::Key_Down, tr("Move down"), &PartsPage::moveDown,
            [](const Session &where, Id<Component> part) { return canMoveAmong(where, part, 1); });
    addMove(Qt::Key_Right, tr("Move into the part above"), &PartsPage::moveIn, canMoveInto);
    addMove(Qt::Key_Left, tr("Move out of its part"), &PartsPage::moveOutside, canMoveOut);
}

void PartsPage::addInside()
{
    if (current())
        addPart(current(), std::size_t(-1));
    else
        addBeside();
}

void PartsPage::addBeside()
{
    const auto records = session().records();
    const Component *beside = records->find(current());
    const Id<Component> parent = beside ? beside->parent_id : Id<Component>{};
    const auto neighbours = acts::partsInside(*records, parent);
    const auto place = std::ranges::find(neighbours, current());
    addPart(parent, std::size_t(place - neighbours.begin()) + 1);
}

void PartsPage::addPart(Id<Component> parent, std::size_t row)
{
    const QString where =
        parent ? tr("A new part inside %1").arg(partName(*session().records(), parent))
               : tr("A new part at the top");
    showDetail();
    m_detail->askLine().ask(
        {.words = where,
         .confirm = tr("Add it"),
         .textLabel = tr("Name"),
         .textMissing = tr("A part needs a name.")},
        [this, parent, row](const ActLine::Answer &answer) {
            Id<Component> added;
            const bool isDone =
                session().change(tr("Part added: %1").arg(answer.text), [&](Edit &edit) {
                    added = acts::addPart(
                        edit, Component{.parent_id = parent, .name = toStd(answer.text)}, row);
                });
            if (isDone)
                m_tree->choose(added);
            return isDone;
        });
}

bool PartsPage::hasPart()
{
    if (!current())
        session().say(tr("Choose a part in the tree first."));
    return bool(current());
}

void PartsPage::withdrawChosen()
{
    if (m_tree->chosen().size() > 1) {
        m_right->setCurrentWidget(m_several);
        m_several->withdraw();
    } else if (hasPart()) {
        showDetail();
        askToWithdraw(session(), m_detail->askLine(), {RecordType::Component, current().value()});
    }
}

void PartsPage::copyCurrent()
{
    const auto part = current().value();
    if (!hasPart() || !m_begun.mayStart(part, {part}))
        return;
    m_branch->start(current());
    m_right->setCurrentWidget(m_branch);
}

void PartsPage::pasteList()
{
    ListDialog dialog(session(), this);
    dialog.setWithin(current());
    dialog.setText(QGuiApplication::clipboard()->text());
    dialog.exec();
}

void PartsPage::moveUp()
{
    if (current())
        moveAmong(session(), current(), -1);
}

void PartsPage::moveDown()
{
    if (current())
        moveAmong(session(), current(), 1);
}

void PartsPage::moveIn()
{
    if (current())
        moveInto(session(), current());
}

void PartsPage::moveOutside()
{
    if (current())
        moveOut(session(), current());
}

} // namespace lastrivet::ui
