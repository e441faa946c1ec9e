// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/AccountModel.h"

#include "ui/journal/ScreenWording.h"
#include "ui/print/JournalWords.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr RecordRef nothing{RecordType::Project, 0};

/// A hash or a file's name may be longer than a line; elsewhere lines break between words.
QString breakable(QString text)
{
    constexpr int longest = 24;
    constexpr QChar mayBreakHere(0x200b);
    int run = 0;
    for (qsizetype i = 0; i < text.size(); ++i) {
        run = text[i].isSpace() ? 0 : run + 1;
        if (run > longest) {
            text.insert(i, mayBreakHere);
            run = 0;
        }
    }
    return text;
}

} // namespace

AccountModel::AccountModel(QObject *parent)
    : QAbstractListModel(parent)
    , m_words(screenWording())
{
}

void AccountModel::show(const Records &records, const SomeChanges &row)
{
    beginResetModel();
    m_rows.clear();
    m_records = int(row.changes.size() + row.others);
    for (const journal::RecordAccount &account : journal::accountOf(records, row.changes))
        add(account);
    if (row.others > 0)
        m_rows.push_back(
            {false,
             nothing,
             {},
             tr("and %n records more; a printed journal names them", nullptr, int(row.others))});
    endResetModel();
}

void AccountModel::add(const journal::RecordAccount &record)
{
    const RecordRef leadsTo = record.is_there ? record.record : nothing;
    const QString became = print::becameIn(m_words, record.kind);
    const QString name = m_words.sentence(record.name);
    m_rows.push_back({true, leadsTo, {}, became.isEmpty() ? name : tr("%1: %2").arg(name, became)});
    for (const journal::FieldAccount &field : record.fields) {
        const QString change = print::changeIn(m_words, field, record.kind);
        if (!change.isEmpty())
            m_rows.push_back({false, leadsTo, print::titleIn(m_words, field.field), change});
    }
}

RecordRef AccountModel::recordAt(int row) const
{
    return row >= 0 && row < rowCount() ? m_rows[std::size_t(row)].record : nothing;
}

int AccountModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant AccountModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Row &row = m_rows[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return breakable(row.text);
    case Qt::AccessibleTextRole:
        return row.title.isEmpty() ? row.text : tr("%1: %2").arg(row.title, row.text);
    case IsRecordRole:
        return row.isRecord;
    case TitleRole:
        return row.title;
    default:
        return {};
    }
}

Qt::ItemFlags AccountModel::flags(const QModelIndex &index) const
{
    // A reader goes from field to field; only records lead somewhere.
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

} // namespace lastrivet::ui
