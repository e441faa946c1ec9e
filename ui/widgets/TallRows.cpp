// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/TallRows.h"

#include "ui/widgets/Density.h"

namespace lastrivet::ui {

QSize TallRows::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    return QStyledItemDelegate::sizeHint(option, index).expandedTo({0, rowHeight()});
}

} // namespace lastrivet::ui
