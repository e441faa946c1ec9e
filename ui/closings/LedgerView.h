// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/closings/LedgerModel.h"
#include "ui/closings/Mend.h"

#include <QPersistentModelIndex>
#include <QTreeView>

namespace lastrivet::ui {

class Theme;

/// The ledger of a closing: Enter or a click goes to the record, Space or the button mends it here.
class LedgerView final : public QTreeView {
    Q_OBJECT

public:
    LedgerView(const Theme &theme, QWidget *parent = nullptr);

    void show(LedgerModel::Source source);
    void setOnlyOpen(bool isOnlyOpen);
    const LedgerModel &ledger() const { return *m_model; }

Q_SIGNALS:
    void recordWanted(lastrivet::RecordRef record);
    void mendWanted(lastrivet::ui::Mend mend, lastrivet::RecordRef record);

protected:
    void focusInEvent(QFocusEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void open(const QModelIndex &index);
    void mend(const QModelIndex &index);
    void expandOpen();
    void hideMet();

    LedgerModel *m_model;
    bool m_isOnlyOpen = false;
    Id<Closing> m_shown;
    /// The row that the mouse went down on.
    QPersistentModelIndex m_pressed;
};

} // namespace lastrivet::ui
