// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/squawks/SavedFilters.h"

#include <QPushButton>

#include <functional>

class QMenu;

namespace lastrivet::ui {

class ActLine;
class SquawkFilterBar;

/// The button with the filters kept by name: to take one up, to keep, rename or delete one.
class SavedFilterMenu final : public QPushButton {
    Q_OBJECT

public:
    /// Names are asked for in `ask`.
    SavedFilterMenu(Session &session, SquawkFilterBar &bar, ActLine &ask,
                    QWidget *parent = nullptr);

    const SavedFilters::Filter &last() const { return m_filters.last(); }
    void keepLast(const SavedFilters::Filter &filter) { m_filters.keepLast(filter); }

private:
    void fill();
    void addOfChosen();
    /// The saved filter that the bar shows now; empty for none.
    QString chosenName() const;
    void askForName(const QString &words, const QString &name,
                    const std::function<void(const QString &)> &use);

    Session &m_session;
    SquawkFilterBar &m_bar;
    ActLine &m_ask;
    SavedFilters m_filters;
    QMenu *m_menu;
};

} // namespace lastrivet::ui
