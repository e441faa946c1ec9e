// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoListModel.h"

#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PictureLoader.h"

#include <algorithm>
#include <set>
#include <utility>

namespace lastrivet::ui {

PhotoListModel::PhotoListModel(Session &session, PictureLoader &loader, QObject *parent)
    : QAbstractListModel(parent)
    , m_session(session)
    , m_loader(loader)
{
    connect(&loader, &PictureLoader::loaded, this, [this](qint64 id) { tellChanged({id}); });
}

void PhotoListModel::show(PhotoOrder order, PhotoFilter filter)
{
    m_order = order;
    m_filter = std::move(filter);
    fill();
}

void PhotoListModel::apply(const ChangeNotice &notice)
{
    if (mayDiffer(notice))
        fill();
    std::unordered_set<std::int64_t> touched;
    for (const RecordRef &record : notice.touched) {
        if (record.type == RecordType::Media)
            touched.insert(record.id);
    }
    tellChanged(touched);
}

/// Which photos there are and under which heading follows from the photos, the parts, and the
/// records that photos belong to.
bool PhotoListModel::mayDiffer(const ChangeNotice &notice) const
{
    std::set<std::pair<RecordType, std::int64_t>> others;
    for (const RecordRef &record : notice.touched) {
        if (record.type == RecordType::Media || record.type == RecordType::Component)
            return true;
        others.emplace(record.type, record.id);
    }
    return std::ranges::any_of(notice.after->media, [&](const Media &media) {
        return std::ranges::any_of(media.links, [&](const Media::Link &link) {
            return others.contains({link.subject, link.id});
        });
    });
}

void PhotoListModel::fill()
{
    const auto records = m_session.records();
    std::vector<Row> rows;
    std::vector<Section> sections;
    for (const PhotoSection &section : photoSections(*records, m_order, m_filter)) {
        sections.push_back({section.key, section.title, section.within, int(rows.size()),
                            int(section.photos.size())});
        for (const Id<Media> media : section.photos)
            rows.push_back({section.key, media});
    }
    setRows(std::move(rows), std::move(sections));
}

void PhotoListModel::setRows(std::vector<Row> rows, std::vector<Section> sections)
{
    const auto [ownFront, newFront] = std::ranges::mismatch(m_rows, rows);
    const auto first = std::distance(m_rows.begin(), ownFront);
    std::ptrdiff_t same = 0;
    const auto shorter = std::ptrdiff_t(std::min(m_rows.size(), rows.size())) - first;
    while (same < shorter && m_rows[m_rows.size() - 1 - std::size_t(same)] ==
                                 rows[rows.size() - 1 - std::size_t(same)])
        ++same;
    const auto ownEnd = std::ptrdiff_t(m_rows.size()) - same;
    const auto newEnd = std::ptrdiff_t(rows.size()) - same;
    const bool isOther = m_sections != sections;
    m_sections = std::move(sections);
    if (ownEnd > first) {
        beginRemoveRows({}, int(first), int(ownEnd) - 1);
        m_rows.erase(m_rows.begin() + first, m_rows.begin() + ownEnd);
        endRemoveRows();
    }
    if (newEnd > first) {
        beginInsertRows({}, int(first), int(newEnd) - 1);
        m_rows = std::move(rows);
        endInsertRows();
    }
    std::vector<std::int64_t> ids;
    for (const Row &row : m_rows)
        ids.push_back(row.media.value());
    std::ranges::sort(ids);
    m_fileCount = int(std::ranges::unique(ids).begin() - ids.begin());
    if (isOther)
        Q_EMIT sectionsChanged();
}

/// One signal per run of rows.
void PhotoListModel::tellChanged(const std::unordered_set<std::int64_t> &media)
{
    const auto isMeant = [&](std::size_t row) {
        return row < m_rows.size() && media.contains(m_rows[row].media.value());
    };
    for (std::size_t row = 0; row < m_rows.size() && !media.empty(); ++row) {
        const std::size_t first = row;
        while (isMeant(row))
            ++row;
        if (row > first)
            Q_EMIT dataChanged(index(int(first)), index(int(row) - 1));
    }
}

const Media *PhotoListModel::mediaAt(int row) const
{
    return m_session.records()->find(idAt(row));
}

int PhotoListModel::rowOf(Id<Media> media) const
{
    const auto found = std::ranges::find(m_rows, media, &Row::media);
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int PhotoListModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant PhotoListModel::data(const QModelIndex &index, int role) const
{
    const Media *media = index.isValid() ? mediaAt(index.row()) : nullptr;
    return media ? mediaData(*media, role, m_loader) : QVariant();
}

} // namespace lastrivet::ui
