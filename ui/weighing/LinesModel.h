// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Session.h"

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <functional>
#include <map>
#include <utility>
#include <vector>

namespace lastrivet::ui {

/// A column of lines that are typed in place.
struct LinesColumn {
    QString head;
    bool isNumber = false;
    /// Worked out from the others; it cannot be typed in.
    bool isComputed = false;
    /// A line without it is not put on record.
    bool isNeeded = false;
};

/// Lines of one record after the other as texts, with an empty one at the end to go on in.
///
/// A new line goes on record once all that it needs is typed; until then it is one that is begun,
/// below those on record. What could not be saved is there for whoever edits the cell again. Both
/// wait with their record while another is shown.
class LinesModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    /// The cells that are typed of a line, by column.
    using Cells = std::map<int, QString>;
    /// Puts them on record, and shows the record's lines then; `row` is a new line when it is
    /// behind the last. A line that is not whole is only looked at. What is wrong with it is said.
    using Keep = std::function<Session::Outcome(int row, const Cells &cells, bool isWhole)>;

    LinesModel(std::vector<LinesColumn> columns, QObject *parent = nullptr);

    /// Types cells into a record one after the other; says what is wrong with the first that cannot
    /// be, or nothing.
    using Type = std::function<QString(int column, const QString &text)>;
    static QString typeAll(const Cells &cells, const Type &type);

    void setKeep(Keep keep) { m_keep = std::move(keep); }
    void setLines(std::int64_t record, std::vector<QStringList> lines);
    void setHeads(const QStringList &heads);
    void setEditable(bool isEditable);
    const std::vector<QStringList> &lines() const { return m_lines; }
    /// The one whose lines are shown.
    std::int64_t record() const { return m_record; }

    /// The lines of the shown record that are begun, each with the heads of what it lacks.
    struct Begun {
        QString name;
        QStringList missing;
    };
    std::vector<Begun> begunLines() const;
    /// Takes a line that is begun out; false when `row` is none of them.
    bool takeOutBegun(int row);

    /// A record with something typed that is not on record, the shown one before others; 0 is none.
    std::int64_t unkeptRecord() const;
    /// All that was typed and is not on record.
    QStringList unkept() const;
    /// The cell of the shown record that was typed and is not on record; the last of them.
    QModelIndex unkeptCell() const;
    /// Forgets what was typed about records that are gone.
    void forgetUnless(const std::function<bool(std::int64_t record)> &isThere);

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;

private:
    /// What could not be saved in a cell, what stood there then, and in how many lines.
    struct Waiting {
        QString typed;
        QString shown;
        std::size_t lines = 0;
    };
    struct Unkept {
        std::vector<QStringList> begun;
        /// By row and column.
        std::map<std::pair<int, int>, Waiting> waiting;
    };

    std::size_t begunCount(std::int64_t record) const;
    QString textAt(int row, int column) const;
    void typeOver(int row, int column, const QString &text);
    void typeOn(int row, int column, const QString &text);
    bool takeOutIfEmpty(int row);
    void look(int row);
    bool isWhole(const QStringList &line) const;
    void takeFirstBegun();
    void dropOutdated();

    std::vector<LinesColumn> m_columns;
    std::vector<QStringList> m_lines;
    Keep m_keep;
    std::int64_t m_record = 0;
    /// By record.
    std::map<std::int64_t, Unkept> m_unkept;
    /// The first line that is begun is being put on record.
    bool m_isHandingOver = false;
    bool m_isEditable = true;
};

} // namespace lastrivet::ui
