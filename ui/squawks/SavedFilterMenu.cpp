// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SavedFilterMenu.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/squawks/SquawkFilterBar.h"
#include "ui/widgets/ActLine.h"

#include <QMenu>

#include <algorithm>

namespace lastrivet::ui {

SavedFilterMenu::SavedFilterMenu(Session &session, SquawkFilterBar &bar, ActLine &ask,
                                 QWidget *parent)
    : QPushButton(tr("Saved", "filters"), parent)
    , m_session(session)
    , m_bar(bar)
    , m_ask(ask)
    , m_filters(session)
    , m_menu(new QMenu(this))
{
    setAccessibleName(tr("Saved filters"));
    setToolTip(accessibleName());
    setMenu(m_menu);
    connect(m_menu, &QMenu::aboutToShow, this, &SavedFilterMenu::fill);
}

QString SavedFilterMenu::chosenName() const
{
    const auto shown = m_bar.filter();
    const auto found = std::ranges::find(m_filters.all(), shown, &SavedFilters::Named::filter);
    return found == m_filters.all().end() ? QString() : found->name;
}

void SavedFilterMenu::fill()
{
    m_menu->clear();
    const QString chosen = chosenName();
    for (const SavedFilters::Named &named : m_filters.all()) {
        auto *action = m_menu->addAction(onButton(named.name));
        action->setCheckable(true);
        action->setChecked(named.name == chosen);
        connect(action, &QAction::triggered, this,
                [this, filter = named.filter] { m_bar.setFilter(filter); });
    }
    if (m_filters.all().empty())
        m_menu->addAction(tr("No filter is saved yet"))->setEnabled(false);
    m_menu->addSeparator();
    auto *save = m_menu->addAction(tr("Save this filter…"));
    save->setEnabled(!m_session.isReadOnly());
    connect(save, &QAction::triggered, this, [this] {
        askForName(tr("A name for this filter; one of the same name is replaced."), {},
                   [this](const QString &name) { m_filters.save(name, m_bar.filter()); });
    });
    if (!chosen.isEmpty() && !m_session.isReadOnly())
        addOfChosen();
}

void SavedFilterMenu::addOfChosen()
{
    const QString chosen = chosenName();
    connect(m_menu->addAction(tr("Rename “%1”…").arg(onButton(chosen))), &QAction::triggered, this,
            [this, chosen] {
                askForName(tr("The new name of “%1”.").arg(chosen), chosen,
                           [this, chosen](const QString &name) { m_filters.rename(chosen, name); });
            });
    connect(m_menu->addAction(tr("Delete “%1”").arg(onButton(chosen))), &QAction::triggered, this,
            [this, chosen] {
                m_filters.remove(chosen);
                m_session.say(tr("The filter “%1” is deleted; no record has changed.").arg(chosen));
            });
}

void SavedFilterMenu::askForName(const QString &words, const QString &name,
                                 const std::function<void(const QString &)> &use)
{
    m_ask.ask({.words = words,
               .confirm = tr("Save"),
               .textLabel = tr("Name"),
               .text = name,
               .textMissing = tr("A saved filter needs a name.")},
              [use](const ActLine::Answer &answer) {
                  use(answer.text);
                  return true;
              });
}

} // namespace lastrivet::ui
