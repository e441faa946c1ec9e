// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

class Theme;

/// Draws the rows of an `AccountModel`: a record in bold, its fields below, as high as their words.
class AccountDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit AccountDelegate(const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    const Theme &m_theme;
};

} // namespace lastrivet::ui
