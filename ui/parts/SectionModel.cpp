// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionModel.h"

#include "core/records/Description.h"
#include "ui/convert/QtText.h"
#include "ui/parts/StepMoves.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QLocale>
#include <QMimeData>

#include <algorithm>
#include <unordered_map>

namespace lastrivet::ui {

namespace {

QString mimeType()
{
    return QStringLiteral("application/x-lastrivet-step");
}

/// The head of a column; in German nouns keep their capital.
QString withinSentence(const QString &head)
{
    return QLocale().language() == QLocale::German ? head : head.toLower();
}

} // namespace

std::unordered_set<std::int64_t> partsShown(const Records &records, Id<Component> part,
                                            bool isWithBelow)
{
    std::unordered_set<std::int64_t> shown{part.value()};
    if (!part) {
        for (const Component &known : records.components) {
            if (!known.withdrawn_on)
                shown.insert(known.id.value());
        }
        return shown;
    }
    if (!isWithBelow)
        return shown;
    std::unordered_map<std::int64_t, std::vector<std::int64_t>> below;
    for (const Component &known : records.components) {
        if (!known.withdrawn_on)
            below[known.parent_id.value()].push_back(known.id.value());
    }
    std::vector<std::int64_t> open{part.value()};
    while (!open.empty()) {
        const std::int64_t id = open.back();
        open.pop_back();
        for (const std::int64_t child : below[id]) {
            if (shown.insert(child).second)
                open.push_back(child);
        }
    }
    return shown;
}

SectionModel::SectionModel(Session &session, QObject *parent)
    : RecordRowsModel(parent)
    , m_session(session)
    , m_section(&partSections().front())
{
}

void SectionModel::show(const PartSection &section, Id<Component> part, bool isWithBelow)
{
    beginResetModel();
    dropRows();
    m_section = &section;
    m_part = part;
    m_isWithBelow = isWithBelow;
    endResetModel();
    fill();
}

void SectionModel::fill()
{
    std::vector<RecordRef> rows;
    const auto records = m_session.records();
    for (const std::int64_t id :
         m_section->collect(*records, partsShown(*records, m_part, m_isWithBelow))) {
        if (!m_filter || m_filter(id))
            rows.push_back({m_section->type, id});
    }
    setRows(rows);
}

void SectionModel::setFilter(Filter filter)
{
    m_filter = std::move(filter);
    fill();
}

void SectionModel::apply(const ChangeNotice &notice)
{
    fill();
    touch(notice.touched);
}

int SectionModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_section->columns.size());
}

QVariant SectionModel::data(const QModelIndex &index, int role) const
{
    const std::int64_t id = recordAt(index.row()).id;
    const auto records = m_session.records();
    if (!records->find(m_section->type, id))
        return {};
    const SectionColumn &column = m_section->columns[std::size_t(index.column())];
    switch (role) {
    case Qt::EditRole:
        if (const QString *typed = m_unkept.find({m_section->type, id}, column.title))
            return *typed;
        [[fallthrough]];
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return column.text(m_session, id);
    case Qt::CheckStateRole:
        if (!column.isTicked)
            return {};
        return column.isTicked(*records, id) ? Qt::Checked : Qt::Unchecked;
    case Qt::DecorationRole:
        return column.tone ? markOf(column.tone(m_session, id)) : QVariant();
    case Qt::TextAlignmentRole:
        return QVariant((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant SectionModel::markOf(Tone tone) const
{
    const Theme &theme = m_session.theme();
    switch (tone) {
    case Tone::Plain:
        return {};
    case Tone::Settled:
        return theme.icon(QStringLiteral("marks/settled"), theme.colours().clear);
    case Tone::Soon:
        return theme.icon(QStringLiteral("marks/soon"), theme.colours().hold);
    case Tone::Alert:
        return theme.icon(QStringLiteral("marks/alert"), theme.colours().closedEarly);
    }
    return {};
}

bool SectionModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    const std::int64_t id = recordAt(index.row()).id;
    const SectionColumn &column = m_section->columns[std::size_t(index.column())];
    if (role == Qt::CheckStateRole && column.tick)
        return tick(column, id, value.toInt() == Qt::Checked);
    if (role == Qt::EditRole && column.write)
        return write(column, id, value.toString().trimmed());
    return false;
}

QString SectionModel::nameOf(std::int64_t id) const
{
    return shortName(*m_session.records(), {m_section->type, id});
}

bool SectionModel::tick(const SectionColumn &column, std::int64_t id, bool isTicked)
{
    const QString what = QCoreApplication::translate("Section", column.act);
    const QString label =
        isTicked ? tr("%1: %2").arg(nameOf(id), what) : tr("%1: not %2").arg(nameOf(id), what);
    return m_session.change(label, [&](Edit &edit) { column.tick(edit, id, isTicked); });
}

bool SectionModel::write(const SectionColumn &column, std::int64_t id, const QString &text)
{
    m_unkept.drop({m_section->type, id}, column.title);
    if (text == column.text(m_session, id))
        return false;
    const QString what = withinSentence(QCoreApplication::translate("Section", column.title));
    if (const QString why = column.whyNot ? column.whyNot(m_session, id, text) : QString();
        !why.isEmpty()) {
        m_session.complain(why);
        return false;
    }
    bool isUnderstood = false;
    const auto outcome =
        m_session.attempt(tr("%1: %2 changed").arg(nameOf(id), what),
                          [&](Edit &edit) { isUnderstood = column.write(edit, id, text); });
    if (outcome == Session::Outcome::NotSaved)
        m_unkept.keep({m_section->type, id}, column.title, text);
    else if (!isUnderstood)
        m_session.complain(tr("“%1” cannot stand under “%2”.")
                               .arg(text, QCoreApplication::translate("Section", column.title)));
    return outcome == Session::Outcome::Made && isUnderstood;
}

QVariant SectionModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    const SectionColumn &column = m_section->columns[std::size_t(section)];
    if (role == Qt::DisplayRole)
        return QCoreApplication::translate("Section", column.title);
    if (role == Qt::TextAlignmentRole)
        return QVariant((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    return {};
}

Qt::ItemFlags SectionModel::flags(const QModelIndex &index) const
{
    const bool isSteps = m_section->type == RecordType::Step && !m_session.isReadOnly();
    if (!index.isValid())
        return isSteps ? Qt::ItemIsDropEnabled : Qt::NoItemFlags;
    const SectionColumn &column = m_section->columns[std::size_t(index.column())];
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (column.tick && !m_session.isReadOnly())
        flags |= Qt::ItemIsUserCheckable;
    if (column.write && !m_session.isReadOnly())
        flags |= Qt::ItemIsEditable;
    if (isSteps)
        flags |= Qt::ItemIsDragEnabled;
    return flags;
}

QStringList SectionModel::mimeTypes() const
{
    return {mimeType()};
}

QMimeData *SectionModel::mimeData(const QModelIndexList &indexes) const
{
    QByteArrayList ids;
    for (const QModelIndex &index : indexes) {
        if (index.column() == 0)
            ids.append(QByteArray::number(qlonglong(recordAt(index.row()).id)));
    }
    auto *data = new QMimeData;
    data->setData(mimeType(), ids.join(' '));
    return data;
}

/// The move is a change of the records; the view hears of it as everybody does.
bool SectionModel::dropMimeData(const QMimeData *data, Qt::DropAction action, int row, int,
                                const QModelIndex &)
{
    if (action != Qt::MoveAction || m_section->type != RecordType::Step)
        return false;
    std::vector<Id<Step>> moved;
    for (const QByteArray &id : data->data(mimeType()).split(' '))
        moved.push_back(Id<Step>{id.toLongLong()});
    if (std::ranges::any_of(moved, [&](Id<Step> step) {
            return rowOf({RecordType::Step, step.value()}) < 0;
        }))
        return false;
    const auto records = m_session.records();
    // Behind the last step of a part: the row below it belongs to the next part, or is none.
    Id<Step> before = row >= 0 && row < rowCount() ? Id<Step>{recordAt(row).id} : Id<Step>{};
    if (before && row > 0 &&
        records->find(before)->component_id != records->find(moved.front())->component_id) {
        const Step &above = *records->find(Id<Step>{recordAt(row - 1).id});
        if (above.component_id == records->find(moved.front())->component_id)
            before = {};
    }
    moveStepsByPerson(m_session, moved, before);
    return false;
}

} // namespace lastrivet::ui
