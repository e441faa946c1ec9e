// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QListView>

namespace lastrivet::ui {

class MediaModel;
class PictureLoader;
class Session;

/// The photos of a record side by side, in one line.
class PhotoStrip final : public QListView {
    Q_OBJECT

public:
    PhotoStrip(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    /// Photos linked to one of these records.
    void show(const std::vector<RecordRef> &records);
    /// These photos and videos.
    void showFiles(const std::vector<Id<Media>> &files);
    void apply(const ChangeNotice &notice);
    int count() const;
    /// The place of each picture, for a loader that has no other pictures to bring.
    QSize frame() const;

private:
    Session &m_session;
    MediaModel *m_model;
};

} // namespace lastrivet::ui
