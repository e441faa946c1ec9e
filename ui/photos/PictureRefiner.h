// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <QObject>

namespace lastrivet::ui {

class PictureLoader;
class PictureView;
class Session;

/// Brings a photograph into a view: at once as small as it is there already, sharp as soon as its
/// large copy is read, and with all of its pixels when the view wants them.
class PictureRefiner final : public QObject {
    Q_OBJECT

public:
    /// `loader` outlives it, and so does `view`.
    PictureRefiner(Session &session, PictureLoader &loader, PictureView &view,
                   QObject *parent = nullptr);

    void show(const Media &media);

private:
    void loadAllPixels();

    Session &m_session;
    PictureLoader &m_loader;
    PictureView &m_view;
    Id<Media> m_shown;
    bool m_isRefining = false;
};

} // namespace lastrivet::ui
