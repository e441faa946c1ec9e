// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/TaskEvidence.h"
#include "core/records/Records.h"

#include <QAbstractTableModel>

#include <vector>

namespace lastrivet::ui {

class Session;

/// The rows of the major-portion account, section by section, with who did how much and what shows
/// it.
class CreditModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Section, Task, Maker, Paid, Assembled, Made, BuilderTick, MakerTick, Evidence };

    explicit CreditModel(Session &session, QObject *parent = nullptr);

    /// Reads the records again.
    void refresh();
    Id<CreditTask> taskAt(int row) const;
    int rowOf(Id<CreditTask> task) const;
    const credit::TaskEvidence &evidenceAt(int row) const;
    /// The next row of a claimed task without a picture: behind `row` where that is one, else the
    /// first; none is -1.
    int nextGap(int row) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        CreditTask task;
        credit::TaskEvidence evidence;
        bool isFirstOfSection = false;

        bool isClaimed() const { return task.assembly_tenths + task.fabrication_tenths > 0; }
        bool isGap() const
        {
            return isClaimed() && !task.not_applicable && evidence.pictures.empty();
        }
    };

    QString text(const Row &row, int column) const;
    std::vector<Row> readRows() const;

    Session &m_session;
    std::vector<Row> m_rows;
};

/// "1", "½", or nothing.
QString tickWords(std::int64_t halfTicks);

} // namespace lastrivet::ui
