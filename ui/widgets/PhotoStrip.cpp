// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PhotoStrip.h"

#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PhotoDelegate.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 108;

} // namespace

PhotoStrip::PhotoStrip(Session &session, PictureLoader &loader, QWidget *parent)
    : QListView(parent)
    , m_session(session)
    , m_model(new MediaModel(session, loader, this))
{
    auto *delegate = new PhotoDelegate(session.theme(), edge, this);
    setModel(m_model);
    setItemDelegate(delegate);
    setFlow(QListView::LeftToRight);
    setWrapping(false);
    setUniformItemSizes(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFixedHeight(delegate->cardSize(fontMetrics()).height() + 20);
    setAccessibleName(tr("Photos"));
    setTabKeyNavigation(false);
    connect(this, &QListView::activated, this,
            [this](const QModelIndex &index) { m_session.goTo(m_model->recordAt(index.row())); });
}

QSize PhotoStrip::frame() const
{
    return static_cast<const PhotoDelegate *>(itemDelegate())->frame();
}

void PhotoStrip::show(const std::vector<RecordRef> &records)
{
    m_model->setFilter([records](const Records &, const Media &media) {
        return std::ranges::any_of(media.links, [&](const Media::Link &link) {
            return std::ranges::find(records, RecordRef{link.subject, link.id}) != records.end();
        });
    });
    setVisible(count() > 0);
}

void PhotoStrip::showFiles(const std::vector<Id<Media>> &files)
{
    m_model->setFilter([files](const Records &, const Media &media) {
        return std::ranges::find(files, media.id) != files.end();
    });
    setVisible(count() > 0);
}

void PhotoStrip::apply(const ChangeNotice &notice)
{
    m_model->apply(notice);
    setVisible(count() > 0);
}

int PhotoStrip::count() const
{
    return m_model->rowCount();
}

} // namespace lastrivet::ui
