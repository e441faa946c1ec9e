// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollBar>
#include <QTreeView>

#include <functional>
#include <utility>

namespace lastrivet::ui {

/// Who has scrolled sideways stays there from one row to the next; where there is more or less to
/// scroll than before, `showName` says what is looked at.
class SteadyTree final : public QTreeView {
public:
    SteadyTree(std::function<void()> showName, QWidget *parent)
        : QTreeView(parent)
        , m_showName(std::move(showName))
    {
    }

    void scrollTo(const QModelIndex &index, ScrollHint hint = EnsureVisible) override
    {
        QScrollBar &bar = *horizontalScrollBar();
        const int sideways = bar.value();
        const int most = bar.maximum();
        QTreeView::scrollTo(index, hint);
        if (bar.maximum() == most)
            bar.setValue(sideways);
        else
            m_showName();
    }

private:
    std::function<void()> m_showName;
};

} // namespace lastrivet::ui
