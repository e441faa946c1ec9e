// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/PartFinder.h"
#include "core/records/Records.h"

#include <QString>

#include <vector>

namespace lastrivet::ui {

/// A record as lists and fields show it: "LW-R3 Rib 3", "12 Overdriven rivet", a person's name.
QString shortName(const Records &records, RecordRef record);
/// The name of a part; empty for none.
QString partName(const Records &records, Id<Component> part);
/// The names of people joined by commas.
QString personName(const Records &records, Id<Person> person);
/// The first few of several records, and how many more they are: "step “Rivet”; and 3 more".
QString namesOf(const Records &records, const std::vector<RecordRef> &several);
/// In a line of its own behind a question, which records it is about; empty for a single one, which
/// the question names itself.
QString whichOf(const Records &records, const std::vector<RecordRef> &several);

/// Live records of a type whose names hold all typed words, best first; all of them for no words.
std::vector<std::int64_t> candidates(const Records &records, const entry::PartFinder &parts,
                                     RecordType type, const QString &typed, std::size_t limit);

} // namespace lastrivet::ui
