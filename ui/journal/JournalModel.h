// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/JournalEntry.h"
#include "ui/journal/JournalFilter.h"
#include "ui/print/Wording.h"

#include <QAbstractListModel>
#include <QStringList>

#include <cstdint>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace lastrivet::ui {

class Session;

/// The journal by day, the latest first. What a row changed is read when the row is looked at.
class JournalModel final : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        IsDayRole = Qt::UserRole,
        TimeRole,
        WhoRole,
        MarksRole,   ///< kind, late dates, a clock that was set back
        RecordsRole, ///< what was touched, in a few words
    };

    explicit JournalModel(Session &session, QObject *parent = nullptr);

    /// Reads the rows that came since, and forgets what was known of all; false when they could
    /// not be read.
    bool reload();
    void setFilter(const JournalFilter &filter);
    /// Lists these rows only, by seq; all of them for none.
    void setRowsOnly(std::optional<std::unordered_set<std::int64_t>> only);

    /// Null for a day.
    const JournalEntry *entryAt(int row) const;
    /// -1 when it is not listed.
    int rowOf(std::int64_t seq) const;
    /// The first row that is no day, or -1.
    int firstEntry() const;
    const std::vector<JournalEntry> &entries() const { return m_entries; }
    int listedCount() const { return m_listed; }
    /// By seq, in rising order.
    std::vector<std::int64_t> listed() const;
    /// Everybody who wrote something, by name.
    QStringList people() const;
    /// What is marked beside a row's kind.
    QStringList marksOf(const JournalEntry &entry) const;
    /// What an undo or redo takes back; empty for others.
    QString undoneBy(const JournalEntry &entry) const;
    Moment timeOf(const JournalEntry &entry) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    /// A row of the list: an entry, or the day above some.
    struct Row {
        bool isDay;
        std::size_t entry;
    };
    struct Reading {
        QStringList marks;
        QString records;
    };

    /// Chooses what is listed.
    void list();
    const Reading &readingOf(std::size_t entry) const;
    Reading read(std::size_t entry) const;
    QString namesOf(const std::vector<JournalChange> &changes) const;
    QString marksText(std::size_t entry) const;
    QVariant entryData(std::size_t entry, int role) const;

    /// Brings the times up to the entries, in the zone that the project has now.
    void tellTimes();

    Session &m_session;
    print::Wording m_words;
    std::vector<JournalEntry> m_entries;
    /// Of each entry, in the workshop's time.
    std::vector<Moment> m_times;
    std::string m_zone;
    JournalFilter m_filter;
    std::optional<std::unordered_set<std::int64_t>> m_only;
    std::vector<Row> m_rows;
    int m_listed = 0;
    mutable std::unordered_map<std::int64_t, Reading> m_readings;
};

} // namespace lastrivet::ui
