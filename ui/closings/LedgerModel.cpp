// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/LedgerModel.h"

#include "core/readiness/Sentences.h"
#include "ui/convert/QtText.h"

#include <algorithm>

namespace lastrivet::ui {

using namespace readiness;

namespace {

auto isAbout(RecordRef record)
{
    return [record](const Blocker &blocker) { return blocker.record == record; };
}

} // namespace

void LedgerModel::show(Source source)
{
    auto lines = ledger(source.answer, *source.records, source.as_of);
    const bool isSame =
        m_source && m_source->answer.id == source.answer.id && m_lines.size() == lines.size();
    m_source = std::move(source);
    if (!isSame) {
        beginResetModel();
        m_lines = std::move(lines);
        endResetModel();
        return;
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines[i] != m_lines[i])
            replaceLine(int(i), std::move(lines[i]));
    }
}

void LedgerModel::replaceLine(int row, LedgerLine line)
{
    const QModelIndex at = index(row, 0);
    removeMended(at, line.blockers);
    insertNew(at, line.blockers);
    const int count = int(line.blockers.size());
    m_lines[std::size_t(row)] = std::move(line);
    Q_EMIT dataChanged(at, at);
    if (count > 0)
        Q_EMIT dataChanged(index(0, 0, at), index(count - 1, 0, at));
}

void LedgerModel::removeMended(const QModelIndex &at, const std::vector<Blocker> &now)
{
    auto &shown = m_lines[std::size_t(at.row())].blockers;
    for (std::size_t i = shown.size(); i-- > 0;) {
        if (std::any_of(now.begin(), now.end(), isAbout(shown[i].record)))
            continue;
        beginRemoveRows(at, int(i), int(i));
        shown.erase(shown.begin() + std::ptrdiff_t(i));
        endRemoveRows();
    }
}

void LedgerModel::insertNew(const QModelIndex &at, const std::vector<Blocker> &now)
{
    auto &shown = m_lines[std::size_t(at.row())].blockers;
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (i < shown.size() && shown[i].record == now[i].record)
            continue;
        beginInsertRows(at, int(i), int(i));
        shown.insert(shown.begin() + std::ptrdiff_t(i), now[i]);
        endInsertRows();
    }
    // Of blockers that speak of one record, or that changed places, some are left over.
    if (shown.size() > now.size()) {
        beginRemoveRows(at, int(now.size()), int(shown.size()) - 1);
        shown.erase(shown.begin() + std::ptrdiff_t(now.size()), shown.end());
        endRemoveRows();
    }
}

const LedgerLine &LedgerModel::line(const QModelIndex &index) const
{
    const auto parentRow = index.internalId();
    return m_lines[parentRow == 0 ? std::size_t(index.row()) : std::size_t(parentRow - 1)];
}

const Blocker *LedgerModel::blocker(const QModelIndex &index) const
{
    if (!index.isValid() || index.internalId() == 0)
        return nullptr;
    return &line(index).blockers[std::size_t(index.row())];
}

Mend LedgerModel::mend(const QModelIndex &index) const
{
    const auto *about = blocker(index);
    return about && !isClosed(m_source->answer.state) ? mendFor(*about) : Mend::None;
}

QString LedgerModel::sentence(const Blocker &blocker) const
{
    return asSentence(readiness::sentence(blocker, *m_source->records));
}

QString LedgerModel::clearedBy(const Blocker &blocker) const
{
    const Source &of = *m_source;
    const Closing *closing =
        of.answer.state == State::ClosedEarly ? of.records->find(of.answer.id) : nullptr;
    return asSentence(closing ? gapsClearedBy(*closing, *of.profile)
                              : readiness::clearedBy(blocker, *of.records, *of.profile));
}

QString LedgerModel::source(const Blocker &blocker) const
{
    return sourceWords(readiness::source(blocker, *m_source->records, *m_source->profile));
}

QModelIndex LedgerModel::index(int row, int column, const QModelIndex &parent) const
{
    if (!hasIndex(row, column, parent))
        return {};
    return createIndex(row, column, quintptr(parent.isValid() ? parent.row() + 1 : 0));
}

QModelIndex LedgerModel::parent(const QModelIndex &index) const
{
    if (!index.isValid() || index.internalId() == 0)
        return {};
    return createIndex(int(index.internalId()) - 1, 0, quintptr(0));
}

int LedgerModel::rowCount(const QModelIndex &parent) const
{
    if (!parent.isValid())
        return int(m_lines.size());
    if (parent.internalId() != 0)
        return 0;
    return int(m_lines[std::size_t(parent.row())].blockers.size());
}

int LedgerModel::columnCount(const QModelIndex &) const
{
    return 1;
}

QVariant LedgerModel::data(const QModelIndex &index, int role) const
{
    const LedgerLine &shown = line(index);
    const Blocker *about = blocker(index);
    if (role == Qt::DisplayRole)
        return about ? sentence(*about) : asSentence(demandOf(shown.rule));
    if (role == Qt::ToolTipRole)
        return about ? QVariant(source(*about)) : QVariant();
    if (role == Qt::AccessibleTextRole) {
        if (about)
            return QStringLiteral("%1. %2").arg(sentence(*about), clearedBy(*about));
        return withColon(
            asSentence(demandOf(shown.rule)),
            QStringLiteral("%1, %2").arg(inWords(readiness::inWords(shown.outcome)),
                                         inWords(countedBy(shown.rule, shown.looked_at))));
    }
    return {};
}

} // namespace lastrivet::ui
