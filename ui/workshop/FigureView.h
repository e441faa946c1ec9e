// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/workshop/FigureModel.h"

#include <QTableView>

namespace lastrivet::ui {

/// A table of figures as high as its rows, its texts wrapped; what stands in it is to read.
class FigureView final : public QTableView {
    Q_OBJECT

public:
    explicit FigureView(QWidget *parent = nullptr);

    void setTable(FigureTable table);
    const FigureTable &table() const { return m_model->table(); }
    /// The chosen row's; empty when none is chosen, or it can have none.
    QString chosenSubject() const;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void chosenChanged();

protected:
    void resizeEvent(QResizeEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;

private:
    void fit();

    FigureModel *m_model;
    bool m_isFitting = false;
};

} // namespace lastrivet::ui
