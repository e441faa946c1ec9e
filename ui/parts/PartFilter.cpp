// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartFilter.h"

#include "core/base/CaseFold.h"
#include "core/entry/PartFinder.h"
#include "ui/convert/QtText.h"
#include "ui/parts/PartTreeModel.h"

#include <algorithm>

namespace lastrivet::ui {

void PartFilter::setWords(const QString &typed, const Records &records)
{
    m_words = foldedWords(toStd(typed));
    look(records);
    invalidateFilter();
}

void PartFilter::look(const Records &records)
{
    m_shown.clear();
    m_fitting = 0;
    if (m_words.empty())
        return;
    for (const Component &part : records.components) {
        const std::string name = folded(entry::spokenName(part));
        const bool fits =
            !part.withdrawn_on && std::ranges::all_of(m_words, [&](const std::string &word) {
                return name.find(word) != std::string::npos;
            });
        if (!fits)
            continue;
        ++m_fitting;
        const Component *above = &part;
        while (above && m_shown.insert(above->id.value()).second)
            above = records.find(above->parent_id);
    }
}

void PartFilter::refresh()
{
    if (isFiltering())
        invalidateFilter();
}

bool PartFilter::filterAcceptsRow(int row, const QModelIndex &parent) const
{
    if (m_words.empty())
        return true;
    const auto id = sourceModel()->index(row, 0, parent).data(PartTreeModel::IdRole).toLongLong();
    return m_shown.contains(id);
}

} // namespace lastrivet::ui
