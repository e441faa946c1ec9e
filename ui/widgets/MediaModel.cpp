// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/MediaModel.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/PictureLoader.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// When it was taken; where nobody knows, the day on which it was taken in, and that it is this.
QString whenText(const Media &media)
{
    if (media.taken_on || !media.imported_on)
        return dateText(media.taken_on);
    return MediaModel::tr("%1 (taken in)").arg(dayText(*media.imported_on));
}

} // namespace

QString mediaTitle(const Media &media)
{
    // A caption may have several lines; a title is one.
    if (QString caption = toQt(media.caption).simplified(); !caption.isEmpty())
        return caption;
    const QString when = whenText(media);
    return when.isEmpty() ? toQt(media.file) : when;
}

QString shownWords(const Media &media)
{
    QStringList words;
    for (std::size_t i = 0; i < Words<Shows>::list.size(); ++i) {
        if (media.shows.contains(Shows(i)))
            words.append(plainWord(Words<Shows>::list[i]));
    }
    return words.join(QStringLiteral(", "));
}

QString mediaFacts(const Media &media)
{
    QStringList facts{whenText(media), shownWords(media)};
    facts.removeAll(QString());
    return facts.join(QStringLiteral(" · "));
}

QVariant mediaData(const Media &media, int role, PictureLoader &loader)
{
    switch (role) {
    case Qt::DisplayRole:
        return mediaTitle(media);
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1, %2").arg(mediaTitle(media), mediaFacts(media));
    case Qt::DecorationRole:
        return loader.small(media);
    case MediaModel::IdRole:
        return qlonglong(media.id.value());
    case Qt::ToolTipRole:
    case MediaModel::FailureRole:
        return loader.failure(media.id);
    case MediaModel::KindRole:
        return plainWord(word(media.kind));
    case MediaModel::DayRole:
        // Without a caption the day is the title.
        return media.caption.empty() ? QString() : whenText(media);
    case MediaModel::ShowsRole:
        return shownWords(media);
    default:
        return {};
    }
}

MediaModel::MediaModel(Session &session, PictureLoader &loader, QObject *parent)
    : RecordRowsModel(parent)
    , m_session(session)
    , m_loader(loader)
{
    connect(&loader, &PictureLoader::loaded, this, [this](qint64 id) {
        touch({{RecordType::Media, id}});
    });
}

void MediaModel::setFilter(Filter filter)
{
    m_filter = std::move(filter);
    fill();
}

void MediaModel::fill()
{
    const auto records = m_session.records();
    std::vector<const Media *> shown;
    for (const Media &media : records->media) {
        if (!media.withdrawn_on && (!m_filter || m_filter(*records, media)))
            shown.push_back(&media);
    }
    std::ranges::stable_sort(shown, [](const Media *a, const Media *b) {
        const auto dayA = dayOf(*a);
        const auto dayB = dayOf(*b);
        if (!dayA || !dayB)
            return bool(dayA) && !dayB;
        return sortsBefore(*dayB, *dayA);
    });
    std::vector<RecordRef> rows;
    for (const Media *media : shown)
        rows.push_back({RecordType::Media, media->id.value()});
    setRows(rows);
}

void MediaModel::apply(const ChangeNotice &notice)
{
    fill();
    touch(notice.touched);
}

const Media *MediaModel::mediaAt(int row) const
{
    return m_session.records()->find(Id<Media>{recordAt(row).id});
}

int MediaModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : 1;
}

QVariant MediaModel::data(const QModelIndex &index, int role) const
{
    const Media *media = mediaAt(index.row());
    return media ? mediaData(*media, role, m_loader) : QVariant();
}

} // namespace lastrivet::ui
