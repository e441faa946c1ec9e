// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"
#include "ui/widgets/RowListModel.h"

#include <QString>

#include <vector>

namespace lastrivet::ui {

// What the first page found, as rows of its lists.

QString headlineWords(const today::Tally &tally);
std::vector<ListRow> staysOpenRows(const today::Today &page, const Records &records,
                                   const readiness::Answer &answer);
/// `running` is the step of the running timer, if one runs.
std::vector<ListRow> workableRows(const today::Today &page, const Records &records,
                                  Id<Step> running);
std::vector<ListRow> lastChanceRows(const today::Today &page, const Records &records,
                                    const readiness::Answer &answer);
std::vector<ListRow> attentionRows(const today::Today &page, const Records &records);

} // namespace lastrivet::ui
