// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/weighing/LinesModel.h"
#include "ui/widgets/Unfinished.h"

class QLabel;
class QPushButton;
class QTableView;

namespace lastrivet::ui {

/// Lines of a record under a heading, typed in place; Delete takes the chosen one out. What is
/// typed and not on record is told below them, and holds the window back.
class LinesEditor final : public Unfinished {
    Q_OBJECT

public:
    LinesEditor(const QString &title, std::vector<LinesColumn> columns, QWidget *parent = nullptr);

    LinesModel &model() const { return *m_model; }
    QTableView &view() const { return *m_view; }
    void setKeep(LinesModel::Keep keep) { m_model->setKeep(std::move(keep)); }
    void setLines(std::int64_t record, std::vector<QStringList> lines);
    void setHeads(const QStringList &heads) { m_model->setHeads(heads); }
    void setEditable(bool isEditable);
    /// True while there are lines of the shown record that count nowhere yet.
    bool hasBegunLines() const { return !m_model->begunLines().empty(); }

    bool isBegun() const override { return m_model->unkeptRecord() != 0; }
    QStringList contents() const override { return m_model->unkept(); }
    QString heldBackWords() const override;
    void takeKeyboard() override;

Q_SIGNALS:
    /// A line that is on record is to be taken out.
    void removeWanted(int row);
    /// What is typed about this record and not kept is to be shown.
    void recordWanted(std::int64_t record);

    /// Other lines are begun, or lack something else.
    void begunChanged();

private:
    void fit();
    void tellBegun();
    void buildView(const std::vector<LinesColumn> &columns);
    void giveWordsRoom(const std::vector<LinesColumn> &columns);
    void remove();

    LinesModel *m_model;
    QTableView *m_view;
    QPushButton *m_remove;
    QLabel *m_begun;
};

} // namespace lastrivet::ui
