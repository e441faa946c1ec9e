// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartTreeModel.h"

#include "core/records/PartPlace.h"
#include "ui/convert/QtText.h"
#include "ui/parts/PartMoves.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QLocale>
#include <QMimeData>

#include <algorithm>
#include <array>

namespace lastrivet::ui {

namespace {

struct ColumnDescription {
    const char *title;
    bool isNumber;
};
constexpr std::array<ColumnDescription, PartTreeModel::columns> descriptions{{
    {QT_TRANSLATE_NOOP("PartTree", "Part"), false},
    {QT_TRANSLATE_NOOP("PartTree", "State"), false},
    {QT_TRANSLATE_NOOP("PartTree", "Hours"), true},
    {QT_TRANSLATE_NOOP("PartTree", "Squawks"), true},
    {QT_TRANSLATE_NOOP("PartTree", "Photos"), true},
}};

QString mimeType()
{
    return QStringLiteral("application/x-lastrivet-part");
}

QString countText(int count)
{
    return count > 0 ? QLocale().toString(count) : QString();
}

} // namespace

PartTreeModel::PartTreeModel(Session &session, QObject *parent)
    : QAbstractItemModel(parent)
    , m_session(session)
    , m_answer(session.answer())
{
    reset();
}

Id<Component> PartTreeModel::idOf(const QModelIndex &index)
{
    return index.isValid() ? Id<Component>{std::int64_t(index.internalId())} : Id<Component>{};
}

PartTreeModel::Shape PartTreeModel::shapeOf(const Records &records)
{
    Shape shape;
    std::vector<const Component *> parts;
    for (const Component &part : records.components) {
        if (!part.withdrawn_on)
            parts.push_back(&part);
    }
    std::ranges::sort(parts, {}, [](const Component *part) { return partPlace(*part); });
    for (const Component *part : parts)
        shape[part->parent_id.value()].push_back(part->id.value());
    return shape;
}

void PartTreeModel::reset()
{
    beginResetModel();
    m_shape = shapeOf(*m_session.records());
    indexParents();
    m_figures = figuresByPart(*m_session.records(), m_session.today());
    endResetModel();
}

void PartTreeModel::indexParents()
{
    m_parents.clear();
    for (const auto &[parent, below] : m_shape) {
        for (const std::int64_t id : below)
            m_parents[id] = parent;
    }
}

QModelIndex PartTreeModel::indexOf(Id<Component> part, int column) const
{
    const auto above = m_parents.find(part.value());
    if (above == m_parents.end())
        return {};
    const Ids &siblings = m_shape.at(above->second);
    const auto place = std::ranges::find(siblings, part.value());
    return createIndex(int(place - siblings.begin()), column, quintptr(part.value()));
}

PartFigures PartTreeModel::figures(Id<Component> part) const
{
    const auto found = m_figures.find(part.value());
    return found == m_figures.end() ? PartFigures{} : found->second;
}

QModelIndex PartTreeModel::index(int row, int column, const QModelIndex &parent) const
{
    const auto below = m_shape.find(idOf(parent).value());
    if (below == m_shape.end() || row < 0 || row >= int(below->second.size()) || column < 0 ||
        column >= columns || (parent.isValid() && parent.column() != PartColumn))
        return {};
    return createIndex(row, column, quintptr(below->second[std::size_t(row)]));
}

QModelIndex PartTreeModel::parent(const QModelIndex &index) const
{
    const auto above = m_parents.find(idOf(index).value());
    if (above == m_parents.end() || above->second == 0)
        return {};
    return indexOf(Id<Component>{above->second});
}

int PartTreeModel::rowCount(const QModelIndex &parent) const
{
    if (parent.isValid() && parent.column() != PartColumn)
        return 0;
    const auto below = m_shape.find(idOf(parent).value());
    return below == m_shape.end() ? 0 : int(below->second.size());
}

int PartTreeModel::columnCount(const QModelIndex &) const
{
    return columns;
}

QString PartTreeModel::text(const Component &part, int column) const
{
    const PartFigures own = figures(part.id);
    switch (column) {
    case PartColumn:
        return toQt(entry::spokenName(part));
    case StateColumn: {
        const auto state = m_answer->badge(part.id);
        return state ? shortStateWords(*state) : QString();
    }
    case HoursColumn:
        return own.minutes.count() > 0 ? hoursText(own.minutes) : QString();
    case SquawksColumn:
        return countText(own.open_squawks);
    case PhotosColumn:
        return countText(own.photos);
    default:
        return {};
    }
}

QString PartTreeModel::inFull(const Component &part, int column) const
{
    if (column != StateColumn)
        return text(part, column);
    const auto state = m_answer->badge(part.id);
    return state ? stateWords(*state) : QString();
}

QVariant PartTreeModel::stateIconOf(const Component &part) const
{
    const auto state = m_answer->badge(part.id);
    const Theme &theme = m_session.theme();
    return state ? theme.icon(stateIcon(*state), theme.colours().state(*state)) : QVariant();
}

QVariant PartTreeModel::data(const QModelIndex &index, int role) const
{
    const Component *part = m_session.records()->find(idOf(index));
    if (!part)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return text(*part, index.column());
    case Qt::EditRole:
        return toQt(part->name);
    case Qt::DecorationRole:
        return index.column() == StateColumn ? stateIconOf(*part) : QVariant();
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return inFull(*part, index.column());
    case Qt::TextAlignmentRole:
        return QVariant(
            (descriptions[std::size_t(index.column())].isNumber ? Qt::AlignRight : Qt::AlignLeft) |
            Qt::AlignVCenter);
    case IdRole:
        return qlonglong(part->id.value());
    default:
        return {};
    }
}

QVariant PartTreeModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columns)
        return {};
    const ColumnDescription &column = descriptions[std::size_t(section)];
    if (role == Qt::DisplayRole)
        return QCoreApplication::translate("PartTree", column.title);
    // A language with a long word for it has a shorter one over the column.
    if (section == SquawksColumn && (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole))
        return QCoreApplication::translate("Section", "Squawks");
    if (role == Qt::TextAlignmentRole)
        return QVariant((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    return {};
}

Qt::ItemFlags PartTreeModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::ItemIsDropEnabled;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled | Qt::ItemIsDropEnabled;
}

QStringList PartTreeModel::mimeTypes() const
{
    return {mimeType()};
}

QMimeData *PartTreeModel::mimeData(const QModelIndexList &indexes) const
{
    QByteArrayList ids;
    for (const QModelIndex &index : indexes) {
        if (index.column() == PartColumn)
            ids.append(QByteArray::number(qlonglong(idOf(index).value())));
    }
    auto *data = new QMimeData;
    data->setData(mimeType(), ids.join(' '));
    return data;
}

/// The move is made as a change of the records; the view follows by the change's signal.
bool PartTreeModel::dropMimeData(const QMimeData *data, Qt::DropAction action, int row, int,
                                 const QModelIndex &parent)
{
    if (action != Qt::MoveAction)
        return false;
    std::vector<Id<Component>> parts;
    for (const QByteArray &id : data->data(mimeType()).split(' ')) {
        const Id<Component> part{id.toLongLong()};
        if (!m_session.records()->findLive(part))
            return false;
        parts.push_back(part);
    }
    const QModelIndex above = parent.siblingAtColumn(PartColumn);
    const QModelIndex before = row < 0 ? QModelIndex() : index(row, PartColumn, above);
    moveSeveral(m_session, parts, idOf(parent), idOf(before));
    return false;
}

} // namespace lastrivet::ui
