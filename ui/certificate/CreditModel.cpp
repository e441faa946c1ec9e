// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/CreditModel.h"

#include "core/credit/CreditSentences.h"
#include "core/credit/Tenths.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QFont>

#include <algorithm>
#include <array>
#include <unordered_map>

namespace lastrivet::ui {

namespace {

struct ColumnOf {
    const char *head;
    const char *meaning;
    bool isNumber;
};

constexpr std::array columns{
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "Section"), "", false},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "Task"), "", false},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "A"),
             QT_TRANSLATE_NOOP("CreditModel", "Tenths done by the maker of kit or part"), true},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "B"),
             QT_TRANSLATE_NOOP("CreditModel", "Tenths done by paid help"), true},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "C"),
             QT_TRANSLATE_NOOP("CreditModel", "Tenths assembled by the builder"), true},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "D"),
             QT_TRANSLATE_NOOP("CreditModel", "Tenths fabricated by the builder"), true},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "Builder"),
             QT_TRANSLATE_NOOP("CreditModel", "Tick of the builder, in two columns"), true},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "Maker"),
             QT_TRANSLATE_NOOP("CreditModel", "Tick of the maker, in two columns"), true},
    ColumnOf{QT_TRANSLATE_NOOP("CreditModel", "Shown by"),
             QT_TRANSLATE_NOOP("CreditModel", "Pictures and log entries on record"), false},
};

QString tenthsWords(std::int64_t tenths)
{
    return tenths == 0 ? QString() : QString::number(tenths);
}

QString evidenceWords(const credit::TaskEvidence &evidence)
{
    QStringList parts;
    if (!evidence.pictures.empty())
        parts << CreditModel::tr("%n pictures", nullptr, int(evidence.pictures.size()));
    if (!evidence.sessions.empty())
        parts << CreditModel::tr("%n entries", nullptr, int(evidence.sessions.size()));
    return parts.join(QStringLiteral(", "));
}

} // namespace

CreditModel::CreditModel(Session &session, QObject *parent)
    : QAbstractTableModel(parent)
    , m_session(session)
{
    refresh();
}

/// Sections stand in the order in which their first row came, rows in theirs.
std::vector<CreditModel::Row> CreditModel::readRows() const
{
    const auto records = m_session.records();
    const credit::EvidenceFinder finder(*records);
    std::unordered_map<std::string, int> order;
    std::vector<Row> rows;
    for (const CreditTask &task : records->credit_tasks) {
        if (task.withdrawn_on)
            continue;
        order.try_emplace(task.section, int(order.size()));
        rows.push_back({task, finder.of(task)});
    }
    std::ranges::stable_sort(rows, {}, [&](const Row &row) { return order.at(row.task.section); });
    for (std::size_t i = 0; i < rows.size(); ++i)
        rows[i].isFirstOfSection = i == 0 || rows[i - 1].task.section != rows[i].task.section;
    return rows;
}

void CreditModel::refresh()
{
    auto rows = readRows();
    const auto isSame = [](const Row &a, const Row &b) { return a.task.id == b.task.id; };
    if (!std::ranges::equal(rows, m_rows, isSame)) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        return;
    }
    m_rows = std::move(rows);
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

Id<CreditTask> CreditModel::taskAt(int row) const
{
    return row >= 0 && row < rowCount() ? m_rows[std::size_t(row)].task.id : Id<CreditTask>{};
}

int CreditModel::rowOf(Id<CreditTask> task) const
{
    const auto found = std::ranges::find(m_rows, task, [](const Row &row) { return row.task.id; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

const credit::TaskEvidence &CreditModel::evidenceAt(int row) const
{
    return m_rows[std::size_t(row)].evidence;
}

int CreditModel::nextGap(int row) const
{
    const auto begin = m_rows.begin();
    const bool isOne = taskAt(row) && m_rows[std::size_t(row)].isGap();
    const auto behind = std::find_if(begin + (isOne ? row + 1 : 0), m_rows.end(),
                                     [](const Row &each) { return each.isGap(); });
    const auto found = behind != m_rows.end() ? behind : std::ranges::find_if(m_rows, &Row::isGap);
    return found == m_rows.end() ? -1 : int(found - begin);
}

int CreditModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

int CreditModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(columns.size());
}

QString CreditModel::text(const Row &row, int column) const
{
    const CreditTask &task = row.task;
    const auto tenths = credit::tenthsOf(task);
    switch (column) {
    case Section:
        return row.isFirstOfSection ? toQt(task.section) : QString();
    case Task:
        return task.added ? tr("%1 (added)").arg(toQt(task.task)) : toQt(task.task);
    case Maker:
        return tenthsWords(tenths.kit);
    case Paid:
        return tenthsWords(tenths.commercial);
    case Assembled:
        return tenthsWords(tenths.assembly);
    case Made:
        return tenthsWords(tenths.fabrication);
    case BuilderTick:
        return tickWords(credit::halfTicksOf(task).builder);
    case MakerTick:
        return tickWords(credit::halfTicksOf(task).maker);
    case Evidence:
        if (task.not_applicable)
            return tr("does not apply");
        return row.isGap() ? tr("no picture") : evidenceWords(row.evidence);
    default:
        return {};
    }
}

QVariant CreditModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Row &row = m_rows[std::size_t(index.row())];
    const Colours &colours = m_session.theme().colours();
    switch (role) {
    case Qt::DisplayRole:
        return text(row, index.column());
    case Qt::ToolTipRole:
        return index.column() == Section ? toQt(row.task.section) : text(row, index.column());
    case Qt::DecorationRole:
        if (index.column() == Evidence && row.isGap())
            return m_session.theme().icon(QStringLiteral("weights/should"), colours.hold);
        return {};
    case Qt::ForegroundRole:
        if (row.task.not_applicable)
            return colours.quietText;
        return {};
    case Qt::TextAlignmentRole:
        return int(
            (columns[std::size_t(index.column())].isNumber ? Qt::AlignRight : Qt::AlignLeft) |
            Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant CreditModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    const ColumnOf &column = columns[std::size_t(section)];
    if (role == Qt::DisplayRole)
        return QCoreApplication::translate("CreditModel", column.head);
    if (role == Qt::ToolTipRole && *column.meaning)
        return QCoreApplication::translate("CreditModel", column.meaning);
    if (role == Qt::TextAlignmentRole)
        return int((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    return {};
}

QString tickWords(std::int64_t halfTicks)
{
    return halfTicks == 0 ? QString() : toQt(credit::ticksText(halfTicks));
}

} // namespace lastrivet::ui
