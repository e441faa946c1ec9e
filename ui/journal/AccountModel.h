// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/Account.h"
#include "ui/print/Wording.h"

#include <QAbstractListModel>

#include <vector>

namespace lastrivet::ui {

/// What a journal row changed: each record, and below it its fields.
class AccountModel final : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role {
        IsRecordRole = Qt::UserRole,
        TitleRole, ///< of a field, its name
    };

    explicit AccountModel(QObject *parent = nullptr);

    /// An import may touch thousands; nobody reads them here.
    static constexpr std::size_t mostRecords = 200;

    /// Names the records that are given and counts the others.
    void show(const Records &records, const SomeChanges &row);
    /// The record of a row or of the one that it belongs to; of none when it is not there any more.
    RecordRef recordAt(int row) const;
    int recordCount() const { return m_records; }

    int rowCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    struct Row {
        bool isRecord;
        RecordRef record;
        QString title;
        QString text;
    };

    void add(const journal::RecordAccount &record);

    print::Wording m_words;
    std::vector<Row> m_rows;
    int m_records = 0;
};

} // namespace lastrivet::ui
