// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogModel.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RecordNames.h"

#include <QLocale>
#include <QPixmap>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr std::size_t journalRowsAtOnce = 100;
constexpr int readAgainMilliseconds = 10000;
constexpr qsizetype mostPictures = 3;

std::int64_t dayNumber(Moment moment)
{
    return moment.day().time_since_epoch().count();
}

Moment dayOfNumber(std::int64_t number)
{
    return *Moment::ofDay(std::chrono::sys_days{std::chrono::days{number}});
}

} // namespace

LogModel::LogModel(Session &session, QObject *parent)
    : RecordRowsModel(parent)
    , m_session(session)
    , m_created(session.project())
{
    m_photos.read(*session.records());
    fill();
    connect(&m_journalTimer, &QTimer::timeout, this, &LogModel::readJournal);
    m_journalTimer.start(0);
}

/// The journal is read in slices between other events, so that the page is there at once.
void LogModel::readJournal()
{
    const auto isMore = m_session.read([this] { return m_created.readSome(journalRowsAtOnce); });
    if (isMore && !*isMore) {
        m_journalTimer.stop();
        touchAll();
        return;
    }
    // No haste while the disk is away.
    const int pause = isMore ? 0 : readAgainMilliseconds;
    if (m_journalTimer.interval() != pause)
        m_journalTimer.setInterval(pause);
}

std::optional<Moment> LogModel::writtenOn(Id<WorkSession> entry)
{
    while (m_created.readSome(journalRowsAtOnce))
        ;
    return m_created.createdOn(entry);
}

void LogModel::setPictures(PictureLoader *loader)
{
    m_loader = loader;
    connect(loader, &PictureLoader::loaded, this, &LogModel::pictureLoaded);
}

void LogModel::pictureLoaded(qint64 media)
{
    const Media *photo = m_session.records()->find(Id<Media>{media});
    if (!photo || !photo->taken_on)
        return touchAll();
    // The picture may stand with any entry of its day, and stands with those that it is linked to:
    // of work over midnight, or of a camera whose clock is wrong.
    const auto isLinked = [photo](RecordRef entry) {
        return std::ranges::any_of(photo->links, [entry](const Media::Link &link) {
            return link.subject == RecordType::WorkSession && link.id == entry.id;
        });
    };
    std::vector<RecordRef> itsEntries;
    for (const RecordRef row : rows()) {
        const WorkSession *entry =
            isDay(row) ? nullptr : m_session.records()->find(Id<WorkSession>{row.id});
        if (entry && entry->began &&
            (entry->began->dayOnly() == photo->taken_on->dayOnly() || isLinked(row)))
            itsEntries.push_back(row);
    }
    touch(itsEntries);
}

QVariant LogModel::pictures(const WorkSession &session) const
{
    if (!m_loader)
        return {};
    const auto records = m_session.records();
    QList<QPixmap> pictures;
    for (const Id<Media> id : m_photos.of(session, *records)) {
        const QPixmap picture = m_loader->small(*records->find(id));
        if (!picture.isNull())
            pictures.append(picture);
        if (pictures.size() == mostPictures)
            break;
    }
    return QVariant::fromValue(pictures);
}

void LogModel::setFilter(const QString &text)
{
    m_filter = text;
    fill();
    touchAll();
}

void LogModel::fill()
{
    const auto records = m_session.records();
    const QStringList words = m_filter.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<const WorkSession *> shown;
    for (const WorkSession &session : records->work_sessions) {
        const auto holds = [&](const QString &word) {
            return wholeText(session).contains(word, Qt::CaseInsensitive);
        };
        if (!session.withdrawn_on && session.began && std::ranges::all_of(words, holds))
            shown.push_back(&session);
    }
    std::ranges::stable_sort(shown, [](const WorkSession *a, const WorkSession *b) {
        if (a->began->day() != b->began->day())
            return a->began->day() > b->began->day();
        return sortsBefore(*a->began, *b->began);
    });
    m_dayTotals.clear();
    m_total = {};
    std::vector<RecordRef> rows;
    for (const WorkSession *session : shown) {
        const std::int64_t day = dayNumber(*session->began);
        if (m_dayTotals.find(day) == m_dayTotals.end())
            rows.push_back({RecordType::Project, day});
        m_dayTotals[day] += session->minutes.value_or(Minutes{});
        m_total += session->minutes.value_or(Minutes{});
        rows.push_back({RecordType::WorkSession, session->id.value()});
    }
    setRows(rows);
}

void LogModel::apply(const ChangeNotice &notice)
{
    const bool isRead = m_session
                            .read([&] {
                                m_created.apply(notice);
                                return true;
                            })
                            .has_value();
    if (!isRead)
        m_journalTimer.start(readAgainMilliseconds);
    const auto totals = m_dayTotals;
    const bool isOfPhotos = std::ranges::any_of(
        notice.touched, [](RecordRef record) { return record.type == RecordType::Media; });
    if (isOfPhotos)
        m_photos.read(*m_session.records());
    fill();
    if (isOfPhotos)
        touchAll();
    std::vector<RecordRef> different = notice.touched;
    for (const auto &[day, total] : m_dayTotals) {
        const auto before = totals.find(day);
        if (before != totals.end() && before->second != total)
            different.push_back({RecordType::Project, day});
    }
    touch(different);
}

int LogModel::entryCount() const
{
    return rowCount() - int(m_dayTotals.size());
}

int LogModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : 1;
}

Qt::ItemFlags LogModel::flags(const QModelIndex &index) const
{
    if (index.isValid() && isDay(recordAt(index.row())))
        return Qt::NoItemFlags; // the cursor goes from entry to entry
    return RecordRowsModel::flags(index);
}

QVariant LogModel::data(const QModelIndex &index, int role) const
{
    const RecordRef row = recordAt(index.row());
    if (isDay(row))
        return dayData(row.id, role);
    const WorkSession *session = m_session.records()->find(Id<WorkSession>{row.id});
    return session && session->began ? entryData(*session, role) : QVariant();
}

QVariant LogModel::dayData(std::int64_t day, int role) const
{
    const auto total = m_dayTotals.find(day);
    const Minutes minutes = total == m_dayTotals.end() ? Minutes{} : total->second;
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return QLocale().toString(toDate(dayOfNumber(day)), QLocale::LongFormat);
    case IsDayRole:
        return true;
    case TotalRole:
        return minutes.count() > 0 ? hoursText(minutes) : QString();
    default:
        return {};
    }
}

QVariant LogModel::entryData(const WorkSession &session, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
        return whatText(session);
    case Qt::AccessibleTextRole:
        return wholeText(session);
    case TimeRole:
        return timeText(session);
    case DurationRole:
        return session.minutes ? hoursText(*session.minutes) : QString();
    case PlaceRole:
        return partName(*m_session.records(), session.component_id);
    case KindRole:
        return plainWord(word(session.kind));
    case WhoRole:
        return whoText(session);
    case MarksRole:
        return marksText(session);
    case PhotosRole:
        return int(m_photos.of(session, *m_session.records()).size());
    case PicturesRole:
        return pictures(session);
    default:
        return {};
    }
}

} // namespace lastrivet::ui
