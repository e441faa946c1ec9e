// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"
#include "core/workshop/OwnLimits.h"
#include "ui/workshop/FigureModel.h"

#include <QString>

#include <string_view>
#include <vector>

namespace lastrivet::ui {

/// The name of a workshop table as people read it.
QString tableTitle(std::string_view name);

/// What a limit of the project's own is about, as people read it.
QString subjectWords(const QString &subject);

/// A workshop table as it is shown: in the person's units, its rules in words, the project's own
/// limits in the place of what they replace.
FigureTable shownTable(std::string_view name, UnitSystem units,
                       const std::vector<workshop::OwnLimit> &own);

/// The rows in which every word of `search` stands somewhere; all when the title has them.
FigureTable foundIn(FigureTable table, const QString &search);

} // namespace lastrivet::ui
