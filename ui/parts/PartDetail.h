// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

class QStackedWidget;
class QTreeView;

namespace lastrivet::ui {

class ActLine;
class PartHead;
class PartPhotos;
class PictureLoader;
class RecordForm;
class SectionChoice;
class SectionList;
class Session;
struct PartFigures;

/// One part, or the whole aircraft: what it is, and everything on record of it, section by section.
class PartDetail final : public QWidget {
    Q_OBJECT

public:
    PartDetail(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    /// No part stands for the whole aircraft.
    void show(Id<Component> part, const PartFigures &figures);
    Id<Component> shown() const { return m_part; }
    /// Opens the section of the record and chooses it there.
    void showRecord(RecordRef record);
    void apply(const ChangeNotice &notice, const PartFigures &figures);
    void applyAnswer(const PartFigures &figures);
    void themeChanged();
    /// Opens the fields of the part itself and puts the cursor into its name.
    void editPart();
    ActLine &askLine() const { return *m_ask; }
    SectionList &lists() const { return *m_lists; }
    QTreeView *list() const;

Q_SIGNALS:
    void finished();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    QWidget *buildAbout();
    void choose(int section);
    void fill();
    void updateCounts();
    void giveBack();

    Session &m_session;
    Id<Component> m_part;
    int m_photoCount = 0;
    PartHead *m_head;
    ActLine *m_ask;
    SectionChoice *m_choice;
    QStackedWidget *m_stack;
    SectionList *m_lists;
    PartPhotos *m_photos;
    RecordForm *m_about;
    bool m_isAskedInList = false;
};

} // namespace lastrivet::ui
