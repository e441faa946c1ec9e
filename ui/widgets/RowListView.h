// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/RowListModel.h"

#include <QListView>
#include <QPersistentModelIndex>

namespace lastrivet::ui {

class RowDelegate;
class Theme;

/// A short list that is as high as its rows; a click or Enter opens the row's record, its button or
/// Space acts on it.
class RowListView final : public QListView {
    Q_OBJECT

public:
    RowListView(const Theme &theme, const QString &name, QWidget *parent = nullptr);

    void setRows(std::vector<ListRow> rows);
    const RowListModel &rows() const { return *m_model; }
    void setTitleLines(int lines);
    void setDetailLines(int lines);
    void setTouch();
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void chosen(lastrivet::RecordRef record);
    void acted(lastrivet::RecordRef record);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    RowListModel *m_model;
    RowDelegate *m_delegate;
    /// The row that the mouse went down on.
    QPersistentModelIndex m_pressed;
    /// The row that was chosen when the keyboard went elsewhere.
    QPersistentModelIndex m_left;
};

} // namespace lastrivet::ui
