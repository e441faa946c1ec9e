// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListView;
class QPushButton;
class QStackedWidget;

namespace lastrivet::ui {

class EmptyPlace;
class PictureLoader;
class SquawkEditor;
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

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;

private:
    void build();
    QWidget *buildList();
    QWidget *buildFilter();
    void buildKeys();
    void capture();
    void explainCapture();
    void filter();
    void showCurrent();
    void choose(int row);
    void updateWords();

    SquawkModel *m_model;
    PictureLoader *m_loader;
    QLineEdit *m_capture;
    QLabel *m_captured;
    QLineEdit *m_text;
    QComboBox *m_severity;
    QPushButton *m_all;
    QLabel *m_count;
    QListView *m_list;
    EmptyPlace *m_empty;
    QStackedWidget *m_stack;
    SquawkEditor *m_editor;
};

} // namespace lastrivet::ui
