// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

class Theme;

/// Draws the rows of the journal: time, what was done and to what, by whom, and what is marked.
class JournalDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit JournalDelegate(const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    void paintDay(QPainter &painter, const QStyleOptionViewItem &option,
                  const QModelIndex &index) const;
    void paintEntry(QPainter &painter, const QStyleOptionViewItem &option,
                    const QModelIndex &index) const;

    const Theme &m_theme;
};

} // namespace lastrivet::ui
