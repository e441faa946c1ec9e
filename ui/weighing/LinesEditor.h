// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/weighing/LinesModel.h"

#include <QWidget>

class QPushButton;
class QTableView;

namespace lastrivet::ui {

/// Lines of a record under a heading, typed in place; Delete takes the chosen one out.
class LinesEditor final : public QWidget {
    Q_OBJECT

public:
    LinesEditor(const QString &title, std::vector<LinesColumn> columns, QWidget *parent = nullptr);

    LinesModel &model() const { return *m_model; }
    QTableView &view() const { return *m_view; }
    void setLines(std::vector<QStringList> lines);
    void setHeads(const QStringList &heads) { m_model->setHeads(heads); }
    void setEditable(bool isEditable);

Q_SIGNALS:
    void typed(int row, int column, const QString &text);
    void removeWanted(int row);

private:
    void fit();
    void giveWordsRoom(const std::vector<LinesColumn> &columns);
    void remove();

    LinesModel *m_model;
    QTableView *m_view;
    QPushButton *m_remove;
};

} // namespace lastrivet::ui
