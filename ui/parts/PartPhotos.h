// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QListView>

namespace lastrivet::ui {

class MediaModel;
class PictureLoader;
class Session;

/// The photos of parts, of the work on them, and of their squawks.
class PartPhotos final : public QListView {
    Q_OBJECT

public:
    PartPhotos(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    void show(Id<Component> part, bool isWithBelow);
    void apply(const ChangeNotice &notice);

private:
    Session &m_session;
    MediaModel *m_model;
};

} // namespace lastrivet::ui
