// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

class LedgerModel;
class Theme;

/// Draws the ledger: a rule with its outcome, and what does not meet it with what would clear it.
class LedgerDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    LedgerDelegate(const LedgerModel &model, const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    /// Where the words of a blocker stand in its row.
    QRect wordsOf(const QRect &row, const QFontMetrics &metrics, const QModelIndex &index) const;
    void paintRule(QPainter &painter, const QRect &place, const QModelIndex &index) const;
    void paintBlocker(QPainter &painter, const QRect &place, const QModelIndex &index) const;

    const LedgerModel &m_model;
    const Theme &m_theme;
};

} // namespace lastrivet::ui
