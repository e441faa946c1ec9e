// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

#include <utility>
#include <vector>

class QComboBox;
class QLabel;
class QListView;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace lastrivet::ui {

class EmptyPlace;
class MediaModel;
class PhotoDetail;
class PhotoIntake;
class PhotoViewer;
class PictureLoader;
class RecordLine;

/// All photos by date: taking them in, saying what they show and belong to, looking at one large.
class PhotosPage final : public Page {
    Q_OBJECT

public:
    explicit PhotosPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;
    /// Takes files in, as a drop or the file dialog does.
    void takeIn(const QStringList &files);

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    using Pairs = std::vector<std::pair<Id<Media>, Id<WorkSession>>>;

    void build();
    QWidget *buildTop();
    QWidget *buildGrid();
    void buildKeys();
    void askForFiles();
    void filter();
    void fillMonths();
    void lookForMatches();
    void showMatches(const Pairs &matches);
    void confirmMatches();
    void showChosen();
    void openViewer();
    void step(int by);
    void updateWords();
    std::vector<Id<Media>> chosen() const;

    PictureLoader *m_loader;
    MediaModel *m_model;
    PhotoIntake *m_intake;
    QComboBox *m_which;
    RecordLine *m_part;
    QLabel *m_count;
    QWidget *m_matchBar;
    QLabel *m_matchWords;
    Pairs m_matches;
    QListWidget *m_months;
    QListView *m_grid;
    EmptyPlace *m_empty;
    QStackedWidget *m_stack;
    PhotoDetail *m_detail;
    PhotoViewer *m_viewer;
    QStackedWidget *m_views;
};

} // namespace lastrivet::ui
