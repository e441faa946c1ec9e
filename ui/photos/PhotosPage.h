// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/MissingPictures.h"
#include "ui/shell/Page.h"
#include "ui/widgets/PictureInbox.h"

#include <vector>

class QSplitter;
class QStackedWidget;

namespace lastrivet::ui {

class EmptyPlace;
class MatchBar;
class MissingView;
class PhotoBar;
class PhotoBrowser;
class PhotoDetail;
class PhotoIntake;
class PhotoViewer;
class PictureLoader;
class TroubleList;
class WatchBar;
class WatchedFolder;

/// All photos by date or by part: taking them in, saying what they show and belong to, looking at
/// one large, and what is still missing.
class PhotosPage final : public Page {
    Q_OBJECT

public:
    explicit PhotosPage(Session &session, QWidget *parent = nullptr);
    ~PhotosPage() override;

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;
    Id<Component> shownPart() const override;
    /// Takes files in, as a drop or the file dialog does; they belong to the part that is shown.
    void takeIn(const QStringList &files);
    void takeIn(const QStringList &files, const std::vector<Media::Link> &links);
    /// The folder whose line is shown; it outlives the page.
    void watch(WatchedFolder &folder);

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    void build();
    QWidget *buildList();
    void buildKeys();
    void connectBars();
    void connectViews();
    void askForFiles(const std::vector<Media::Link> &links);
    std::vector<Media::Link> linksHere() const;
    void paste();
    void refill();
    void showPlace();
    QString whyEmpty() const;
    void lookForMissing();
    void choose(const std::vector<qint64> &media);
    void openViewer();
    void leaveViewer();
    void step(int by);

    PictureLoader *m_loader;
    PhotoIntake *m_intake;
    PhotoBar *m_bar;
    WatchBar *m_watch;
    MatchBar *m_match;
    TroubleList *m_troubles;
    PhotoBrowser *m_browser;
    EmptyPlace *m_empty;
    QStackedWidget *m_place;
    QSplitter *m_parts;
    MissingView *m_missingView;
    PhotoDetail *m_detail;
    PhotoViewer *m_viewer;
    QStackedWidget *m_views;
    PictureInbox m_inbox;
    readiness::MissingPictures m_missing;
};

} // namespace lastrivet::ui
