// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

#include <map>
#include <vector>

class QButtonGroup;
class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QSplitter;
class QStackedWidget;
class QTreeView;

namespace lastrivet::ui {

class ActLine;
class PhotoStrip;
class PictureLoader;
class RecordForm;
class SectionModel;
class Session;

/// One part: what it is, and everything on record of it, section by section.
class PartDetail final : public QWidget {
    Q_OBJECT

public:
    PartDetail(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    void show(Id<Component> part);
    Id<Component> shown() const { return m_part; }
    /// Opens the section of the record and chooses it there.
    void showRecord(RecordRef record);
    void apply(const ChangeNotice &notice);
    void applyAnswer();
    /// Opens the fields of the part itself and puts the cursor into its name.
    void editPart();
    ActLine &askLine() const { return *m_ask; }
    QTreeView *list() const { return m_list; }

Q_SIGNALS:
    void finished();

private:
    void build();
    QWidget *buildBar();
    QWidget *buildLists();
    void buildKeys();
    void choose(int section);
    void updateWords();
    void updateCounts();
    void showCurrent();
    void fitColumns();
    void addNew();
    void openCurrent();
    void withdrawCurrent();
    RecordRef current() const;
    RecordForm *formFor(int section);

    Session &m_session;
    Id<Component> m_part;
    int m_section = 0;
    QLabel *m_heading;
    QLabel *m_stateShape;
    QLabel *m_state;
    QLabel *m_figures;
    QButtonGroup *m_buttons;
    QCheckBox *m_below;
    ActLine *m_ask;
    SectionModel *m_model;
    QTreeView *m_list;
    QLabel *m_nothing;
    QLineEdit *m_new;
    QStackedWidget *m_stack;
    QSplitter *m_lists;
    QScrollArea *m_formArea;
    QStackedWidget *m_forms;
    std::map<int, RecordForm *> m_formOf;
    RecordForm *m_about;
    PhotoStrip *m_photos;
};

} // namespace lastrivet::ui
