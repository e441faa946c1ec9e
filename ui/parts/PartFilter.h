// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <QSortFilterProxyModel>
#include <QString>

#include <string>
#include <unordered_set>
#include <vector>

namespace lastrivet::ui {

/// Shows of the tree what a person types for: parts whose code and name hold all words, and what
/// they lie in.
class PartFilter final : public QSortFilterProxyModel {
    Q_OBJECT

public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

    void setWords(const QString &typed, const Records &records);
    bool isFiltering() const { return !m_words.empty(); }
    /// How many parts fit; those that only hold one that fits do not count.
    int fitting() const { return m_fitting; }
    /// Before the tree hears of a change: looks again for what fits.
    void look(const Records &records);
    /// After the tree has heard of it.
    void refresh();

protected:
    bool filterAcceptsRow(int row, const QModelIndex &parent) const override;

private:
    std::vector<std::string> m_words;
    std::unordered_set<std::int64_t> m_shown;
    int m_fitting = 0;
};

} // namespace lastrivet::ui
