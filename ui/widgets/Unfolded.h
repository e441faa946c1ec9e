// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSet>
#include <QString>

class QTreeView;

namespace lastrivet::ui {

/// Which rows of a tree are unfolded, by their words, while its model is filled anew.
class Unfolded final {
public:
    void keep(const QTreeView &tree);
    /// Unfolds the rows with the same words, and folds all others.
    void restore(QTreeView &tree) const;

private:
    QSet<QString> m_paths;
};

} // namespace lastrivet::ui
