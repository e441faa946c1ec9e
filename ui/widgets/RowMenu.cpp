// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowMenu.h"

#include <QAbstractItemView>
#include <QAction>
#include <QContextMenuEvent>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QMenu>
#include <QPushButton>
#include <QShortcut>
#include <QVariant>

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr auto keysProperty = "rowKeys";

bool asksForMenu(const QKeyEvent &key)
{
    return (key.key() == Qt::Key_Menu && key.modifiers() == Qt::NoModifier) ||
           (key.key() == Qt::Key_F10 && key.modifiers() == Qt::ShiftModifier);
}

/// What came into a layout with the press that asks is shown only when events are worked off.
bool isPutAway(const QWidget &button)
{
    for (const QWidget *each = &button; each && !each->isWindow(); each = each->parentWidget()) {
        if (each->isHidden() && each->testAttribute(Qt::WA_WState_ExplicitShowHide))
            return true;
    }
    return false;
}

/// Not every desktop shows keys in such menus by itself.
void showKeys(QAction &line, const QKeySequence &keys)
{
    line.setShortcut(keys);
    line.setShortcutVisibleInContextMenu(true);
}

/// Keeps what is typed while a menu is open from the keys of the list, which has the keyboard all
/// the while: F would mark a squawk behind the menu as fixed.
class MenuKeys final : public QObject {
public:
    explicit MenuKeys(QMenu &menu)
        : QObject(&menu)
    {
        menu.installEventFilter(this);
    }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override
    {
        if (event->type() != QEvent::ShortcutOverride)
            return QObject::eventFilter(watched, event);
        event->accept();
        return true;
    }
};

} // namespace

RowMenu::RowMenu(QAbstractItemView &list)
    : QObject(&list)
    , m_list(list)
{
    list.installEventFilter(this);
    list.viewport()->installEventFilter(this);
}

void RowMenu::tellKeys(QPushButton &button, const QKeySequence &keys)
{
    button.setProperty(keysProperty, QVariant::fromValue(keys));
}

void RowMenu::addLine(QMenu &menu, const QString &words, const QKeySequence &keys, bool isPossible,
                      std::function<void()> run)
{
    QAction *line = menu.addAction(words);
    showKeys(*line, keys);
    line->setEnabled(isPossible);
    connect(line, &QAction::triggered, &menu, std::move(run));
}

void RowMenu::addButton(QPushButton &button)
{
    addMore([&button](QMenu &menu) { addShown(menu, button); });
}

void RowMenu::addBar(QWidget &bar)
{
    addMore([&bar](QMenu &menu) {
        for (QPushButton *button : bar.findChildren<QPushButton *>())
            addShown(menu, *button);
    });
}

void RowMenu::addKey(QShortcut &key, std::function<bool()> isPossible)
{
    addMore([&key, isPossible = std::move(isPossible)](QMenu &menu) {
        addLine(menu, key.whatsThis(), key.key(), isPossible(), [&key] { Q_EMIT key.activated(); });
    });
}

void RowMenu::addMore(Fill fill)
{
    m_fills.push_back(std::move(fill));
}

/// A button may go, with what it was about, while the menu is open.
void RowMenu::addShown(QMenu &menu, QPushButton &button)
{
    if (isPutAway(button))
        return;
    QAction *line = menu.addAction(button.icon(), button.text());
    showKeys(*line, button.property(keysProperty).value<QKeySequence>());
    line->setEnabled(button.isEnabled());
    line->setCheckable(button.isCheckable());
    line->setChecked(button.isChecked());
    connect(line, &QAction::triggered, &button, &QPushButton::click);
}

bool RowMenu::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::ContextMenu) {
        const auto &asked = *static_cast<QContextMenuEvent *>(event);
        if (asked.reason() == QContextMenuEvent::Mouse && watched == m_list.viewport())
            open(m_list.indexAt(asked.pos()), asked.pos());
        else
            openForCurrent();
        return true;
    }
    const bool isAsked = watched == &m_list && event->type() == QEvent::KeyPress &&
                         asksForMenu(*static_cast<QKeyEvent *>(event));
    if (isAsked)
        openForCurrent();
    return isAsked || QObject::eventFilter(watched, event);
}

void RowMenu::openForCurrent()
{
    const QModelIndex row = m_list.currentIndex();
    if (!row.isValid())
        return;
    m_list.scrollTo(row);
    const QRect seen = m_list.visualRect(row).intersected(m_list.viewport()->rect());
    open(row, seen.center());
}

/// The page shows what is chosen, and its buttons are about that.
bool RowMenu::choose(const QModelIndex &row)
{
    QItemSelectionModel &selection = *m_list.selectionModel();
    if (!row.isValid() || !row.flags().testFlag(Qt::ItemIsSelectable))
        return false;
    if (!selection.isSelected(row))
        selection.setCurrentIndex(row,
                                  QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    return selection.isSelected(row);
}

void RowMenu::open(const QModelIndex &row, const QPoint &place)
{
    if (!choose(row))
        return;
    auto *menu = new QMenu(&m_list);
    new MenuKeys(*menu);
    connect(menu, &QMenu::aboutToHide, menu, &QObject::deleteLater);
    for (const Fill &fill : m_fills)
        fill(*menu);
    if (menu->isEmpty())
        menu->deleteLater();
    else
        menu->popup(m_list.viewport()->mapToGlobal(place));
}

} // namespace lastrivet::ui
