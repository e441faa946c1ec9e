// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartPhotos.h"

#include "ui/parts/PartFigures.h"
#include "ui/parts/SectionModel.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PhotoDelegate.h"
#include "ui/widgets/PictureLoader.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 112;

} // namespace

PartPhotos::PartPhotos(Session &session, PictureLoader &loader, QWidget *parent)
    : QListView(parent)
    , m_session(session)
    , m_model(new MediaModel(session, loader, this))
{
    auto *delegate = new PhotoDelegate(session.theme(), edge, this);
    loader.setFrame(delegate->frame());
    setModel(m_model);
    setItemDelegate(delegate);
    setFlow(QListView::LeftToRight);
    setWrapping(true);
    setResizeMode(QListView::Adjust);
    setUniformItemSizes(true);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setAccessibleName(tr("Photos of the part"));
    setTabKeyNavigation(false);
    connect(this, &QListView::activated, this,
            [this](const QModelIndex &index) { m_session.goTo(m_model->recordAt(index.row())); });
}

void PartPhotos::show(Id<Component> part, bool isWithBelow)
{
    const auto parts = partsShown(*m_session.records(), part, isWithBelow);
    // Also pictures of no part belong to the aircraft.
    m_model->setFilter([parts, isWhole = !part](const Records &records, const Media &media) {
        return media.kind != MediaKind::Document &&
               (isWhole || std::ranges::any_of(media.links, [&](const Media::Link &link) {
                    const Id<Component> shown = partOfLink(records, link);
                    return shown && parts.contains(shown.value());
                }));
    });
}

void PartPhotos::apply(const ChangeNotice &notice)
{
    m_model->apply(notice);
}

} // namespace lastrivet::ui
