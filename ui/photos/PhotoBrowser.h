// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/photos/PhotoSections.h"

#include <QWidget>

#include <vector>

namespace lastrivet::ui {

class HeadingList;
class PhotoGrid;
class PhotoListModel;
class PictureLoader;
class Session;

/// The photos under their headings and the list of the headings; what is chosen stays chosen,
/// wherever it moves.
class PhotoBrowser final : public QWidget {
    Q_OBJECT

public:
    PhotoBrowser(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    PhotoGrid &grid() const { return *m_grid; }
    void show(PhotoOrder order, const PhotoFilter &filter);
    void apply(const ChangeNotice &notice);
    /// How many files are shown.
    int fileCount() const;

    /// The chosen files, by id.
    std::vector<Id<Media>> chosen() const;
    /// Chooses files and brings the first into view; false when none of them is shown.
    bool choose(const std::vector<Id<Media>> &media);
    bool isShown(Id<Media> media) const;
    /// The file where the keyboard is, or null.
    const Media *current() const;
    /// Goes on in the list; false at its ends.
    bool step(int by);

Q_SIGNALS:
    void chosenChanged();
    /// The current file is to be shown large.
    void opened();

private:
    void build();
    void keepChosen(const std::vector<Id<Media>> &media);

    PhotoListModel *m_model;
    HeadingList *m_headings;
    PhotoGrid *m_grid;
};

} // namespace lastrivet::ui
