// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchPicture.h"

#include "ui/photos/PictureView.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PictureLoader.h"

#include <QHBoxLayout>
#include <QImage>
#include <QLabel>
#include <QPixmap>
#include <QPushButton>
#include <QSize>
#include <QVBoxLayout>

namespace lastrivet::ui {

BenchPicture::BenchPicture(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_loader(loader)
    , m_picture(new PictureView(session.theme(), this))
    , m_title(new QLabel(this))
{
    m_picture->setReadOnly(true);
    m_title->setWordWrap(true);
    auto *back = new QPushButton(tr("Back to the part (Esc)"), this);
    auto *head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(back);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(head);
    layout->addWidget(m_picture, 1);
    connect(back, &QPushButton::clicked, this, &BenchPicture::left);
    connect(m_picture, &PictureView::left, this, &BenchPicture::left);
    connect(m_picture, &PictureView::stepped, this, &BenchPicture::stepped);
    connect(m_picture, &PictureView::morePixelsWanted, this, &BenchPicture::loadAllPixels);
}

void BenchPicture::showPicture(const Media &media)
{
    m_shown = media.id;
    m_isRefining = false;
    const QString title = mediaTitle(media);
    m_title->setText(title);
    m_picture->setAccessibleName(title);
    m_picture->marks().show(media.annotations);
    m_picture->showPicture(m_loader.small(media),
                           QSize(int(media.width.value_or(0)), int(media.height.value_or(0))));
    m_loader.large(media, this, [this, id = media.id](const QImage &image, const QString &why) {
        if (id != m_shown)
            return;
        if (image.isNull())
            m_picture->showWords(why);
        else
            m_picture->refine(QPixmap::fromImage(image));
    });
    m_picture->setFocus();
}

void BenchPicture::loadAllPixels()
{
    const Media *media = m_session.records()->find(m_shown);
    if (m_isRefining || !media)
        return;
    m_isRefining = true;
    m_loader.original(*media, this, [this, id = media->id](const QImage &image, const QString &) {
        if (id == m_shown && !image.isNull())
            m_picture->refine(QPixmap::fromImage(image));
    });
}

} // namespace lastrivet::ui
