// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Unfolded.h"

#include <QStringList>
#include <QTreeView>

#include <functional>

namespace lastrivet::ui {

namespace {

/// The row's words, after those of the rows that it lies in.
QString pathOf(QModelIndex index)
{
    QStringList names;
    for (; index.isValid(); index = index.parent())
        names.prepend(index.data().toString());
    return names.join(QLatin1Char('\n'));
}

void forEachBranch(const QAbstractItemModel &model, const QModelIndex &parent,
                   const std::function<void(const QModelIndex &)> &act)
{
    for (int row = 0; row < model.rowCount(parent); ++row) {
        const QModelIndex index = model.index(row, 0, parent);
        if (model.rowCount(index) == 0)
            continue;
        act(index);
        forEachBranch(model, index, act);
    }
}

} // namespace

void Unfolded::keep(const QTreeView &tree)
{
    m_paths.clear();
    forEachBranch(*tree.model(), {}, [&](const QModelIndex &branch) {
        if (tree.isExpanded(branch))
            m_paths.insert(pathOf(branch));
    });
}

void Unfolded::restore(QTreeView &tree) const
{
    forEachBranch(*tree.model(), {}, [&](const QModelIndex &branch) {
        tree.setExpanded(branch, m_paths.contains(pathOf(branch)));
    });
}

} // namespace lastrivet::ui
