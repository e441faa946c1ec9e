// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

#include <array>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTreeView;

namespace lastrivet::ui {

class EmptyPlace;
class PartFilter;
class PartTreeModel;
class Session;
struct PartFigures;

/// The tree of parts with the line that filters it, and the whole aircraft above it.
class PartTree final : public QWidget {
    Q_OBJECT

public:
    explicit PartTree(Session &session, QWidget *parent = nullptr);

    /// The tree, or the button that begins it.
    QWidget *firstFocus() const;
    QTreeView &view() const { return *m_view; }
    /// None while the whole aircraft is chosen.
    Id<Component> current() const;
    /// Every chosen part; in the order of the tree.
    std::vector<Id<Component>> chosen() const;
    /// Takes the filter away where it hides the part.
    void choose(Id<Component> part);
    void choose(const std::vector<Id<Component>> &parts);
    void chooseWhole();
    PartFigures figures(Id<Component> part) const;
    void focusFilter();

    void apply(const ChangeNotice &notice);
    void applyAnswer();

Q_SIGNALS:
    void chosenChanged();
    void openWanted();
    void firstWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    void buildView();
    void connectView();
    /// Names can be told apart; counts that have no room then are left to the chosen part, and a
    /// column without any count is not there.
    void fitColumns();
    void widenHours();
    /// The name of the current part, however far to the right it begins.
    void showName();
    bool isUsed(int column) const;
    void filter();
    void openAbove(const QModelIndex &index);
    void bring(Id<Component> part);
    std::vector<Id<Component>> heirs() const;
    void updateWords();

    Session &m_session;
    PartTreeModel *m_model;
    PartFilter *m_filtered;
    QLineEdit *m_filter;
    QLabel *m_fitting;
    QPushButton *m_whole;
    QTreeView *m_view;
    EmptyPlace *m_empty;
    QStackedWidget *m_stack;
    /// Of the columns behind the names, in their order.
    std::array<int, 4> m_widths{};
    /// Of the names' column, for the current part to be read.
    int m_askedForName = 0;
    /// The part that was chosen before the words of the filter fitted none.
    Id<Component> m_before;
    bool m_isFollowing = false;
};

} // namespace lastrivet::ui
