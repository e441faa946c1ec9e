// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"
#include "ui/widgets/RowListModel.h"

#include <QString>

#include <vector>

namespace lastrivet::ui {

// What the first page found, as rows of its lists. Lists are as long as a person reads; their whole
// length is said beside them.

/// The most rows that a list of the first page has.
inline constexpr std::size_t rowsListed = 40;

QString headlineWords(const today::Tally &tally);
/// What a builder at the beginning has to know; empty when the lists speak for themselves.
QString teachingWords(const today::Today &page, const Records &records);
std::vector<ListRow> staysOpenRows(const today::Today &page, const Records &records,
                                   const readiness::Answer &answer);
/// `running` is the step of the running timer, if one runs.
std::vector<ListRow> workableRows(const today::Today &page, const Records &records,
                                  Id<Step> running);
struct RowsAndTotal {
    std::vector<ListRow> rows;
    std::size_t total = 0;
};
RowsAndTotal lastChanceRows(const today::Today &page, const Records &records,
                            const readiness::Answer &answer);
std::vector<ListRow> attentionRows(const today::Today &page);

} // namespace lastrivet::ui
