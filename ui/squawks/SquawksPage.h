// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

class QLabel;
class QListView;
class QScrollArea;
class QStackedWidget;

namespace lastrivet::ui {

class EmptyPlace;
class PictureLoader;
class SquawkCapture;
class SquawkEditor;
class SquawkFilterBar;
class SquawkModel;

/// The squawks: one line to write down a new one, the list in the order in which they call for
/// work, and the chosen one to work on.
class SquawksPage final : public Page {
    Q_OBJECT

public:
    explicit SquawksPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;
    Id<Component> shownPart() const override;
    SquawkFilterBar &filterBar() const { return *m_filter; }
    /// Writes the list as it is filtered: a PDF, or CSV where the file's name ends so.
    void writeList(const QString &file);

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;

private:
    void build();
    QWidget *buildList();
    QWidget *buildFoot();
    QWidget *buildEditor();
    void buildKeys();
    void filter();
    void askToWrite(const QString &ending, const QString &kinds);
    /// Scrolls to the chosen squawk where another order took it away from row `before`.
    void followChosen(int before);
    void showCurrent();
    void choose(int row);
    void bringUp(RecordRef record);
    /// The line for a new squawk while there is nothing in the list.
    QWidget &list() const;
    void updateWords();

    SquawkModel *m_model;
    PictureLoader *m_loader;
    SquawkCapture *m_capture;
    SquawkFilterBar *m_filter;
    QLabel *m_count;
    QListView *m_list;
    EmptyPlace *m_empty;
    EmptyPlace *m_noMatch;
    QStackedWidget *m_stack;
    SquawkEditor *m_editor;
    QScrollArea *m_editorArea;
};

} // namespace lastrivet::ui
