// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkModel.h"

#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <algorithm>
#include <array>

namespace lastrivet::ui {

using readiness::Reachable;

QString squawkState(const Squawk &squawk, Moment asOf)
{
    if (happened(squawk.verified_on, asOf))
        return SquawkModel::tr("verified %1").arg(dayText(*squawk.verified_on));
    if (happened(squawk.accepted_on, asOf))
        return SquawkModel::tr("accepted as it is %1").arg(dayText(*squawk.accepted_on));
    if (!happened(squawk.fixed_on, asOf))
        return SquawkModel::tr("open");
    switch (squawk.verify_by.value_or(SignerRole::Builder)) {
    case SignerRole::Inspector:
        return SquawkModel::tr("fixed, the inspector has to look");
    case SignerRole::Adviser:
        return SquawkModel::tr("fixed, the adviser has to look");
    case SignerRole::Builder:
        break;
    }
    return SquawkModel::tr("fixed, to be checked");
}

SquawkModel::SquawkModel(Session &session, QObject *parent)
    : RecordRowsModel(parent)
    , m_session(session)
{
    fill();
}

void SquawkModel::setFilter(const Filter &filter)
{
    if (filter == m_filter)
        return;
    m_filter = filter;
    fill();
}

void SquawkModel::fill()
{
    const auto records = m_session.records();
    const Moment today = m_session.today();
    const auto before = m_groups;
    m_listed.clear();
    m_groups = {};
    std::vector<RecordRef> rows;
    for (auto &listed : readiness::squawkOrder(*records, *m_session.answer(), today)) {
        if (passes(m_filter, listed, *records, today)) {
            rows.push_back({RecordType::Squawk, listed.id.value()});
            Group &group = m_groups[std::size_t(listed.reachable)];
            if (group.count++ == 0)
                group.first = listed.id;
        }
        m_listed.emplace(listed.id, std::move(listed));
    }
    setRows(rows);
    // Headings stand on the first rows of their groups and say how many there are.
    if (before != m_groups)
        touchAll();
}

void SquawkModel::apply(const ChangeNotice &notice)
{
    fill();
    touch(notice.touched);
}

void SquawkModel::applyAnswer()
{
    const auto before = m_listed;
    fill();
    std::vector<RecordRef> different;
    for (const auto &[id, listed] : m_listed) {
        const auto known = before.find(id);
        if (known == before.end() || known->second != listed)
            different.push_back({RecordType::Squawk, id.value()});
    }
    touch(different);
}

int SquawkModel::notForLong() const
{
    return int(std::ranges::count_if(m_listed, [](const auto &entry) {
        return entry.second.reachable == Reachable::NotForLong;
    }));
}

std::vector<readiness::ListedSquawk> SquawkModel::listed() const
{
    std::vector<readiness::ListedSquawk> list;
    for (const RecordRef &row : rows())
        list.push_back(m_listed.at(Id<Squawk>{row.id}));
    return list;
}

const readiness::ListedSquawk *SquawkModel::listed(Id<Squawk> squawk) const
{
    const auto found = m_listed.find(squawk);
    return found == m_listed.end() ? nullptr : &found->second;
}

/// A row that is on its way out of the list belongs to no group.
QString SquawkModel::heading(Id<Squawk> squawk) const
{
    const auto group = std::ranges::find(m_groups, squawk, &Group::first);
    if (!squawk || group == m_groups.end())
        return {};
    const int count = group->count;
    switch (Reachable(group - m_groups.begin())) {
    case Reachable::NotForLong:
        return tr("Soon out of reach (%1)").arg(count);
    case Reachable::NoLonger:
        return tr("Out of reach (%1)").arg(count);
    case Reachable::Yes:
        return tr("In reach (%1)").arg(count);
    case Reachable::Done:
        break;
    }
    return tr("Done (%1)").arg(count);
}

int SquawkModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : 1;
}

QString SquawkModel::reachWords(Id<Squawk> squawk) const
{
    const auto listed = m_listed.find(squawk);
    if (listed == m_listed.end() || listed->second.closings.empty())
        return {};
    const IdSet<Closing> &closings = listed->second.closings;
    const QString first =
        shortName(*m_session.records(), {RecordType::Closing, closings.front().value()});
    const int more = int(closings.size()) - 1;
    if (listed->second.reachable == Reachable::NotForLong)
        return (more > 0 ? tr("last chance before %1 and %n more", nullptr, more)
                         : tr("last chance before %1"))
            .arg(first);
    return (more > 0 ? tr("out of reach: open %1 and %n more", nullptr, more)
                     : tr("out of reach: open %1"))
        .arg(first);
}

QString SquawkModel::wholeText(const Squawk &squawk) const
{
    const auto records = m_session.records();
    QStringList parts{toQt(squawk.number),
                      toQt(squawk.title),
                      severityWord(squawk.severity),
                      partName(*records, squawk.component_id),
                      squawkState(squawk, m_session.today()),
                      reachWords(squawk.id)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

QVariant SquawkModel::data(const QModelIndex &index, int role) const
{
    const auto records = m_session.records();
    const Squawk *squawk = records->find(Id<Squawk>{recordAt(index.row()).id});
    if (!squawk)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return toQt(squawk->title);
    case Qt::AccessibleTextRole:
        return wholeText(*squawk);
    case SeverityRole:
        return int(squawk->severity);
    case NumberRole:
        return toQt(squawk->number);
    case PlaceRole:
        return squawk->component_id ? partName(*records, squawk->component_id) : tr("on papers");
    case ReachRole:
        return reachWords(squawk->id);
    case StateRole:
        return squawkState(*squawk, m_session.today());
    case UrgentRole:
        return listed(squawk->id) && listed(squawk->id)->reachable == Reachable::NotForLong;
    case HeadingRole:
        return heading(squawk->id);
    default:
        return {};
    }
}

} // namespace lastrivet::ui
