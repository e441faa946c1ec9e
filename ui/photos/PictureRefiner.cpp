// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PictureRefiner.h"

#include "ui/photos/PictureView.h"
#include "ui/shell/Session.h"
#include "ui/widgets/PictureLoader.h"

#include <QImage>
#include <QPixmap>
#include <QSize>

namespace lastrivet::ui {

PictureRefiner::PictureRefiner(Session &session, PictureLoader &loader, PictureView &view,
                               QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_loader(loader)
    , m_view(view)
{
    connect(&m_view, &PictureView::morePixelsWanted, this, &PictureRefiner::loadAllPixels);
}

void PictureRefiner::show(const Media &media)
{
    m_shown = media.id;
    m_isRefining = false;
    m_view.showPicture(m_loader.small(media),
                       QSize(int(media.width.value_or(0)), int(media.height.value_or(0))));
    m_loader.large(media, this, [this, id = media.id](const QImage &image, const QString &why) {
        if (id != m_shown)
            return;
        if (image.isNull())
            m_view.showWords(why);
        else
            m_view.refine(QPixmap::fromImage(image));
    });
}

void PictureRefiner::loadAllPixels()
{
    const Media *media = m_session.records()->find(m_shown);
    if (m_isRefining || !media)
        return;
    m_isRefining = true;
    m_loader.original(*media, this, [this, id = media->id](const QImage &image, const QString &) {
        // What Qt cannot read (HEIC) stays as sharp as its large copy.
        if (id == m_shown && !image.isNull())
            m_view.refine(QPixmap::fromImage(image));
    });
}

} // namespace lastrivet::ui
