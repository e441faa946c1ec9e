// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv/CsvColumns.h"

#include <QString>
#include <QStringList>
#include <QTableWidget>

#include <string>
#include <vector>

namespace lastrivet::ui {

/// Which field each column of a list fills.
class ColumnChoice final : public QTableWidget {
    Q_OBJECT

public:
    explicit ColumnChoice(QWidget *parent = nullptr);

    /// A line per column, with its first value and the field that its heading names; what was
    /// chosen stays while the columns are the same.
    void show(const exchange::CsvTable &table, RecordType type);
    /// No line, until there are columns again.
    void showNothing();
    /// Another list comes: what was chosen is no longer meant.
    void forget();
    exchange::CsvColumns chosen() const;
    void choose(int column, const QString &field);
    /// Says which columns with anything in them do not come in, whatever becomes of the rows:
    /// a blank and sentences, or nothing.
    QString whatIsLeftOut() const;

Q_SIGNALS:
    void chosenChanged();

private:
    void keep();
    QString fieldOf(int row) const;
    QString headingOf(int row) const;

    std::vector<std::string> m_header;
    RecordType m_type = RecordType::Component;
    /// What was chosen for each column of the header.
    QStringList m_kept;
    /// Which columns have anything in them.
    std::vector<bool> m_isAny;
};

} // namespace lastrivet::ui
