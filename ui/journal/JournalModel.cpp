// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalModel.h"

#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/journal/Account.h"
#include "core/project/JournalMarks.h"
#include "ui/convert/QtText.h"
#include "ui/journal/ScreenWording.h"
#include "ui/print/JournalWords.h"
#include "ui/shell/Session.h"

#include <QLocale>

#include <algorithm>
#include <chrono>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr std::size_t recordsNamed = 3;

/// Rows that may hold a whole project: they are opened only when somebody asks for them.
bool isBulky(ChangeKind kind)
{
    return kind == ChangeKind::Import || kind == ChangeKind::Merge || kind == ChangeKind::Migration;
}

} // namespace

JournalModel::JournalModel(Session &session, QObject *parent)
    : QAbstractListModel(parent)
    , m_session(session)
    , m_words(screenWording())
{
}

bool JournalModel::reload()
{
    const std::int64_t newest = m_entries.empty() ? 0 : m_entries.back().seq;
    const auto added = m_session.read([&] { return m_session.project().journal(newest); });
    if (!added)
        return false;
    beginResetModel();
    m_entries.insert(m_entries.end(), added->begin(), added->end());
    m_readings.clear();
    tellTimes();
    list();
    endResetModel();
    return true;
}

void JournalModel::tellTimes()
{
    using namespace std::chrono;
    const std::string &zone = m_session.records()->project.time_zone;
    if (zone != m_zone)
        m_times.clear();
    m_zone = zone;
    m_times.reserve(m_entries.size());
    for (std::size_t i = m_times.size(); i < m_entries.size(); ++i)
        m_times.push_back(
            localMoment(sys_time<milliseconds>(milliseconds(m_entries[i].stamp)), zone));
}

void JournalModel::setFilter(const JournalFilter &filter)
{
    beginResetModel();
    m_filter = filter;
    list();
    endResetModel();
}

void JournalModel::setRowsOnly(std::optional<std::unordered_set<std::int64_t>> only)
{
    beginResetModel();
    m_only = std::move(only);
    list();
    endResetModel();
}

void JournalModel::list()
{
    m_rows.clear();
    m_listed = 0;
    std::optional<Moment> day;
    for (std::size_t i = m_entries.size(); i-- > 0;) {
        const JournalEntry &entry = m_entries[i];
        if ((m_only && !m_only->contains(entry.seq)) || !m_filter.matches(entry, m_times[i]))
            continue;
        if (day != m_times[i].dayOnly()) {
            day = m_times[i].dayOnly();
            m_rows.push_back({true, i});
        }
        m_rows.push_back({false, i});
        ++m_listed;
    }
}

const JournalEntry *JournalModel::entryAt(int row) const
{
    if (row < 0 || row >= rowCount() || m_rows[std::size_t(row)].isDay)
        return nullptr;
    return &m_entries[m_rows[std::size_t(row)].entry];
}

int JournalModel::rowOf(std::int64_t seq) const
{
    const auto found = std::ranges::find_if(
        m_rows, [&](const Row &row) { return !row.isDay && m_entries[row.entry].seq == seq; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int JournalModel::firstEntry() const
{
    return m_rows.empty() ? -1 : 1;
}

std::vector<std::int64_t> JournalModel::listed() const
{
    std::vector<std::int64_t> seqs;
    for (const Row &row : m_rows) {
        if (!row.isDay)
            seqs.push_back(m_entries[row.entry].seq);
    }
    std::ranges::sort(seqs);
    return seqs;
}

QStringList JournalModel::people() const
{
    QStringList people;
    for (const JournalEntry &entry : m_entries) {
        if (!entry.who.empty() && !people.contains(toQt(entry.who)))
            people << toQt(entry.who);
    }
    people.sort(Qt::CaseInsensitive);
    return people;
}

const JournalModel::Reading &JournalModel::readingOf(std::size_t at) const
{
    const std::int64_t seq = m_entries[at].seq;
    const auto known = m_readings.find(seq);
    return known != m_readings.end() ? known->second
                                     : m_readings.emplace(seq, read(at)).first->second;
}

JournalModel::Reading JournalModel::read(std::size_t at) const
{
    const JournalEntry &entry = m_entries[at];
    const bool isAhead = at > 0 && isPushedAhead(entry, m_entries[at - 1]);
    if (isBulky(entry.kind))
        return {print::marksIn(m_words, isAhead, {}), {}};
    try {
        const auto records = m_session.records();
        const auto changes = m_session.project().changesOf(entry.seq);
        const auto late = lateDates(entry, changes, records->project.time_zone,
                                    m_session.project().profile().late_entry_days);
        return {print::marksIn(m_words, isAhead, late), namesOf(changes)};
    } catch (const Fault &fault) {
        return {{inWords(fault.message())}, {}};
    }
}

QString JournalModel::namesOf(const std::vector<JournalChange> &changes) const
{
    QStringList names;
    for (std::size_t i = 0; i < std::min(changes.size(), recordsNamed); ++i)
        names << m_words.text(journal::nameOf(*m_session.records(), changes[i]));
    const QString named = names.join(QStringLiteral(", "));
    const int more = int(changes.size()) - int(names.size());
    return more > 0 ? tr("%1 and %n more", nullptr, more).arg(named) : named;
}

QStringList JournalModel::marksOf(const JournalEntry &entry) const
{
    return readingOf(std::size_t(&entry - m_entries.data())).marks;
}

QString JournalModel::undoneBy(const JournalEntry &entry) const
{
    if (entry.undoes.empty())
        return {};
    const auto undone = std::ranges::find(m_entries, entry.undoes, &JournalEntry::change_id);
    return undone == m_entries.end() ? QString() : toQt(undone->label);
}

Moment JournalModel::timeOf(const JournalEntry &entry) const
{
    return m_times[std::size_t(&entry - m_entries.data())];
}

int JournalModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

Qt::ItemFlags JournalModel::flags(const QModelIndex &index) const
{
    // The cursor goes from entry to entry.
    return index.isValid() && m_rows[std::size_t(index.row())].isDay
               ? Qt::NoItemFlags
               : QAbstractListModel::flags(index);
}

QVariant JournalModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Row &row = m_rows[std::size_t(index.row())];
    if (!row.isDay)
        return entryData(row.entry, role);
    if (role == IsDayRole)
        return true;
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
        return QLocale().toString(toDate(m_times[row.entry]), QLocale::LongFormat);
    return {};
}

QString JournalModel::marksText(std::size_t at) const
{
    QStringList marks{print::kindIn(m_words, m_entries[at])};
    marks << readingOf(at).marks;
    marks.removeAll(QString());
    return marks.join(QStringLiteral(" · "));
}

QVariant JournalModel::entryData(std::size_t at, int role) const
{
    const JournalEntry &entry = m_entries[at];
    switch (role) {
    case Qt::DisplayRole:
        return toQt(entry.label);
    case Qt::AccessibleTextRole: {
        QStringList parts{toQt(entry.label), toQt(entry.who), dateText(m_times[at])};
        parts.removeAll(QString());
        return parts.join(QStringLiteral(", "));
    }
    case IsDayRole:
        return false;
    case TimeRole:
        return timeText(m_times[at]);
    case WhoRole:
        return toQt(entry.who);
    case MarksRole:
        return marksText(at);
    case RecordsRole:
        return readingOf(at).records;
    default:
        return {};
    }
}

} // namespace lastrivet::ui
