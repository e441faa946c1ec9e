// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/CreationDays.h"
#include "core/project/Project.h"
#include "ui/daylog/EntryPhotos.h"
#include "ui/widgets/RecordRowsModel.h"

#include <QTimer>

#include <map>

namespace lastrivet::ui {

class PictureLoader;
class Session;

/// The log by day, the latest first: each day with its total, and below it what was done.
class LogModel final : public RecordRowsModel {
    Q_OBJECT

public:
    enum Role {
        IsDayRole = Qt::UserRole,
        TotalRole,
        TimeRole,
        DurationRole,
        PlaceRole,
        KindRole,
        WhoRole,
        MarksRole,
        PhotosRole,
        PicturesRole, ///< the first few photos as `QList<QPixmap>`
    };

    explicit LogModel(Session &session, QObject *parent = nullptr);

    /// Where the pictures beside entries come from; without it there are none.
    void setPictures(PictureLoader *loader);
    /// Entries that hold all words in note, part, kind or names.
    void setFilter(const QString &text);
    void apply(const ChangeNotice &notice);
    /// Minutes and number of the entries shown.
    Minutes total() const { return m_total; }
    int entryCount() const;
    /// The day on which an entry was written down; empty when the journal does not tell. Throws a
    /// `Fault` when it cannot be read.
    std::optional<Moment> writtenOn(Id<WorkSession> entry);
    static bool isDay(RecordRef row) { return row.type == RecordType::Project; }

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    void fill();
    void readJournal();
    void pictureLoaded(qint64 media);
    QVariant pictures(const WorkSession &session) const;
    QVariant dayData(std::int64_t day, int role) const;
    QVariant entryData(const WorkSession &session, int role) const;
    QString timeText(const WorkSession &session) const;
    QString whoText(const WorkSession &session) const;
    QString marksText(const WorkSession &session) const;
    QString whatText(const WorkSession &session) const;
    QString wholeText(const WorkSession &session) const;

    Session &m_session;
    QString m_filter;
    std::map<std::int64_t, Minutes> m_dayTotals;
    Minutes m_total;
    EntryPhotos m_photos;
    PictureLoader *m_loader = nullptr;
    entry::CreationDays m_created;
    QTimer m_journalTimer;
};

} // namespace lastrivet::ui
