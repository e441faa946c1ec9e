// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkModel.h"

#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <algorithm>

namespace lastrivet::ui {

using readiness::Reachable;

QString squawkState(const Squawk &squawk)
{
    if (squawk.verified_on)
        return SquawkModel::tr("verified %1").arg(dayText(*squawk.verified_on));
    if (squawk.accepted_on)
        return SquawkModel::tr("accepted as it is %1").arg(dayText(*squawk.accepted_on));
    if (!squawk.fixed_on)
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

bool SquawkModel::isShown(const Squawk &squawk) const
{
    if (m_filter.isOpenOnly && !acts::isOpen(squawk))
        return false;
    if (m_filter.severity && squawk.severity != *m_filter.severity)
        return false;
    const QString text = wholeText(squawk) + toQt(squawk.detail) + toQt(squawk.correction);
    const QStringList words = m_filter.text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::ranges::all_of(
        words, [&](const QString &word) { return text.contains(word, Qt::CaseInsensitive); });
}

void SquawkModel::fill()
{
    const auto records = m_session.records();
    m_listed.clear();
    std::vector<RecordRef> rows;
    for (auto &listed : readiness::squawkOrder(*records, *m_session.answer())) {
        if (isShown(*records->find(listed.id)))
            rows.push_back({RecordType::Squawk, listed.id.value()});
        m_listed.emplace(listed.id, std::move(listed));
    }
    setRows(rows);
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

int SquawkModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : 1;
}

QString SquawkModel::reachWords(Id<Squawk> squawk) const
{
    const auto listed = m_listed.find(squawk);
    if (listed == m_listed.end() || listed->second.closings.empty())
        return {};
    const auto &closings = listed->second.closings;
    const QString first = shortName(*m_session.records(),
                                    {RecordType::Closing, closings.front().value()});
    const QString more =
        closings.size() > 1 ? tr(" and %n more", nullptr, int(closings.size()) - 1) : QString();
    if (listed->second.reachable == Reachable::NotForLong)
        return tr("last chance before %1").arg(first) + more;
    return tr("out of reach: open %1").arg(first) + more;
}

QString SquawkModel::wholeText(const Squawk &squawk) const
{
    const auto records = m_session.records();
    QStringList parts{toQt(squawk.number), toQt(squawk.title), severityWord(squawk.severity),
                      partName(*records, squawk.component_id), squawkState(squawk),
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
        return squawk->component_id ? partName(*records, squawk->component_id)
                                    : tr("on papers");
    case ReachRole:
        return reachWords(squawk->id);
    case StateRole:
        return squawkState(*squawk);
    case UrgentRole: {
        const auto listed = m_listed.find(squawk->id);
        return listed != m_listed.end() && listed->second.reachable == Reachable::NotForLong;
    }
    default:
        return {};
    }
}

} // namespace lastrivet::ui
