// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

class QLineEdit;
class QSortFilterProxyModel;
class QStackedWidget;
class QTreeView;

namespace lastrivet::ui {

class EmptyPlace;
class PartDetail;
class PartTreeModel;
class PictureLoader;

/// The tree of parts beside the part that is chosen in it.
class PartsPage final : public Page {
    Q_OBJECT

public:
    explicit PartsPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void themeChanged() override;

private:
    void build();
    QWidget *buildTree();
    QWidget *buildActs();
    void buildKeys();
    void addKey(const QKeySequence &keys, void (PartsPage::*act)());
    Id<Component> current() const;
    void choose(Id<Component> part);
    void showCurrent();
    void filter();
    void addInside();
    void addBeside();
    void addPart(Id<Component> parent, std::size_t row);
    void withdrawCurrent();
    void moveUp();
    void moveDown();
    void moveIn();
    void moveOutside();
    void updateWords();

    PartTreeModel *m_model;
    QSortFilterProxyModel *m_filtered;
    PictureLoader *m_loader;
    QLineEdit *m_filter;
    QTreeView *m_tree;
    EmptyPlace *m_empty;
    QStackedWidget *m_stack;
    PartDetail *m_detail;
};

} // namespace lastrivet::ui
