// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/TallRows.h"

#include "ui/shell/Theme.h"

namespace lastrivet::ui {

QSize TallRows::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    return QStyledItemDelegate::sizeHint(option, index).expandedTo({0, Theme::rowHeight});
}

} // namespace lastrivet::ui
