// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchView.h"

#include "ui/bench/BenchPicture.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PhotoDelegate.h"
#include "ui/widgets/PictureLoader.h"

#include <QLabel>
#include <QListView>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cstdint>
#include <unordered_set>

// The newest pictures of the bench view, and one of them as large as the bench.
namespace lastrivet::ui {

namespace {

constexpr std::size_t picturesShown = 12;
constexpr int pictureEdge = 220;

} // namespace

QWidget *BenchView::buildPictures()
{
    auto *place = new QWidget(this);
    m_loader = new PictureLoader(m_session, this);
    auto *delegate = new PhotoDelegate(m_session.theme(), pictureEdge, this);
    m_loader->setFrame(delegate->frame());
    m_media = new MediaModel(m_session, *m_loader, this);
    m_pictures->setModel(m_media);
    m_pictures->setItemDelegate(delegate);
    m_pictures->setFlow(QListView::LeftToRight);
    m_pictures->setWrapping(false);
    m_pictures->setUniformItemSizes(true);
    m_pictures->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_pictures->setFixedHeight(delegate->cardSize(fontMetrics()).height() + 40);
    m_pictures->setAccessibleName(tr("Newest pictures"));
    m_noPictures->setForegroundRole(QPalette::PlaceholderText);
    m_noPictures->setWordWrap(true);
    auto *layout = new QVBoxLayout(place);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(heading(tr("Newest pictures"), place));
    layout->addWidget(m_noPictures);
    layout->addWidget(m_pictures);
    // One press in gloves is enough; the keyboard has Enter.
    connect(m_pictures, &QListView::clicked, this,
            [this](const QModelIndex &index) { enlarge(index.row()); });
    connect(m_pictures, &QListView::activated, this,
            [this](const QModelIndex &index) { enlarge(index.row()); });
    return place;
}

void BenchView::showPictures()
{
    std::unordered_set<std::int64_t> newest;
    for (std::size_t i = 0; i < std::min(m_here.photos.size(), picturesShown); ++i)
        newest.insert(m_here.photos[i].value());
    m_noPictures->setVisible(newest.empty());
    m_pictures->setVisible(!newest.empty());
    m_media->setFilter([newest](const Records &, const Media &media) {
        return newest.contains(media.id.value());
    });
}

void BenchView::enlarge(int row)
{
    const Media *media = row >= 0 && row < m_media->rowCount() ? m_media->mediaAt(row) : nullptr;
    if (!media)
        return;
    m_pictures->setCurrentIndex(m_media->index(row, 0));
    if (!m_picture) {
        m_picture = new BenchPicture(m_session, *m_loader, this);
        m_stack->addWidget(m_picture);
        connect(m_picture, &BenchPicture::left, this, &BenchView::reduce);
        connect(m_picture, &BenchPicture::stepped, this,
                [this](int by) { enlarge(m_pictures->currentIndex().row() + by); });
    }
    m_stack->setCurrentWidget(m_picture);
    m_picture->showPicture(*media);
}

bool BenchView::isEnlarged() const
{
    return m_picture && m_stack->currentWidget() == m_picture;
}

void BenchView::reduce()
{
    if (!isEnlarged())
        return;
    m_stack->setCurrentIndex(1);
    m_pictures->setFocus();
}

} // namespace lastrivet::ui
