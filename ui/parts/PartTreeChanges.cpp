// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartTreeModel.h"

#include "ui/shell/Session.h"

#include <algorithm>

// How the model follows the records: it signals the removal of parts that are gone, the insertion
// of new ones, and moves of the others.
namespace lastrivet::ui {

namespace {

constexpr std::size_t mostSignals = 1000;

bool bearsOnFigures(const RecordRef &record)
{
    switch (record.type) {
    case RecordType::Component:
    case RecordType::Step:
    case RecordType::WorkSession:
    case RecordType::Squawk:
    case RecordType::Fastener:
    case RecordType::Media:
        return true;
    default:
        return false;
    }
}

} // namespace

void PartTreeModel::apply(const ChangeNotice &notice)
{
    const auto isPart = [](const RecordRef &record) {
        return record.type == RecordType::Component;
    };
    if (std::size_t(std::ranges::count_if(notice.touched, isPart)) > mostSignals) {
        reset();
        return;
    }
    if (std::ranges::any_of(notice.touched, isPart) && !applyShape(shapeOf(*notice.after))) {
        reset();
        return;
    }
    if (std::ranges::any_of(notice.touched, bearsOnFigures)) {
        const FiguresByPart before = std::move(m_figures);
        m_figures = figuresByPart(*notice.after, m_session.today());
        touchFigures(before);
    }
    for (const RecordRef &record : notice.touched) {
        if (isPart(record))
            touch(record.id);
    }
}

bool PartTreeModel::applyShape(const Shape &wanted)
{
    removeGone(wanted);
    insertNew(wanted, 0);
    if (!moveAll(wanted))
        return false;
    order(wanted);
    return true;
}

void PartTreeModel::removeGone(const Shape &wanted)
{
    std::unordered_set<std::int64_t> live;
    for (const auto &[parent, below] : wanted)
        live.insert(below.begin(), below.end());
    Ids gone;
    for (const auto &[id, parent] : m_parents) {
        if (!live.contains(id))
            gone.push_back(id);
    }
    // What stays but lies below something that goes is moved to the top first.
    for (const auto &[id, parent] : std::unordered_map(m_parents)) {
        if (live.contains(id) && parent != 0 && !live.contains(parent))
            move(id, 0);
    }
    for (const std::int64_t id : gone) {
        if (m_parents.contains(id))
            remove(id);
    }
}

void PartTreeModel::remove(std::int64_t id)
{
    const QModelIndex index = indexOf(Id<Component>{id});
    const std::int64_t parent = m_parents.at(id);
    beginRemoveRows(index.parent(), index.row(), index.row());
    std::erase(m_shape[parent], id);
    forget(id);
    endRemoveRows();
}

void PartTreeModel::forget(std::int64_t id)
{
    for (const std::int64_t below : Ids(m_shape[id]))
        forget(below);
    m_shape.erase(id);
    m_parents.erase(id);
}

void PartTreeModel::insertNew(const Shape &wanted, std::int64_t parent)
{
    const auto below = wanted.find(parent);
    if (below == wanted.end())
        return;
    for (const std::int64_t id : below->second) {
        if (!m_parents.contains(id))
            insert(id, parent);
        insertNew(wanted, id);
    }
}

void PartTreeModel::insert(std::int64_t id, std::int64_t parent)
{
    const int row = int(m_shape[parent].size());
    beginInsertRows(indexOf(Id<Component>{parent}), row, row);
    m_shape[parent].push_back(id);
    m_parents[id] = parent;
    endInsertRows();
}

bool PartTreeModel::isBelow(std::int64_t id, std::int64_t above) const
{
    while (id != 0 && id != above) {
        const auto parent = m_parents.find(id);
        id = parent == m_parents.end() ? 0 : parent->second;
    }
    return id == above && above != 0;
}

bool PartTreeModel::move(std::int64_t id, std::int64_t parent)
{
    // Two parts that change places pass through a ring on the way.
    if (isBelow(parent, id))
        return false;
    const QModelIndex index = indexOf(Id<Component>{id});
    const int row = int(m_shape[parent].size());
    if (!beginMoveRows(index.parent(), index.row(), index.row(), indexOf(Id<Component>{parent}),
                       row))
        return false;
    std::erase(m_shape[m_parents.at(id)], id);
    m_shape[parent].push_back(id);
    m_parents[id] = parent;
    endMoveRows();
    return true;
}

bool PartTreeModel::moveAll(const Shape &wanted)
{
    for (const auto &[parent, below] : wanted) {
        for (const std::int64_t id : below) {
            if (m_parents.at(id) != parent && !move(id, parent))
                return false;
        }
    }
    return true;
}

void PartTreeModel::order(const Shape &wanted)
{
    for (const auto &[parent, below] : wanted) {
        Ids &own = m_shape[parent];
        const QModelIndex above = indexOf(Id<Component>{parent});
        for (std::size_t row = 0; row < below.size(); ++row) {
            if (own[row] == below[row])
                continue;
            const auto place = std::ranges::find(own, below[row]);
            const int from = int(place - own.begin());
            beginMoveRows(above, from, from, above, int(row));
            own.erase(place);
            own.insert(own.begin() + std::ptrdiff_t(row), below[row]);
            endMoveRows();
        }
    }
}

void PartTreeModel::touch(std::int64_t id)
{
    const QModelIndex index = indexOf(Id<Component>{id});
    if (index.isValid())
        Q_EMIT dataChanged(index, index.siblingAtColumn(columns - 1));
}

void PartTreeModel::touchFigures(const FiguresByPart &before)
{
    for (const auto &[id, parent] : m_parents) {
        const auto old = before.find(id);
        const PartFigures known = old == before.end() ? PartFigures{} : old->second;
        if (known != figures(Id<Component>{id}))
            touch(id);
    }
}

void PartTreeModel::applyAnswer()
{
    const auto before = std::move(m_answer);
    m_answer = m_session.answer();
    for (const auto &[id, parent] : m_parents) {
        if (before->badge(Id<Component>{id}) != m_answer->badge(Id<Component>{id}))
            touch(id);
    }
}

} // namespace lastrivet::ui
