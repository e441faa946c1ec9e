// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/MergeConflict.h"
#include "core/records/Records.h"

#include <QString>

// What a merge left to decide, as people read it.
namespace lastrivet::ui {

QString recordIn(const Records &records, const MergeConflict &conflict);
/// The field, with the place in its list: "Options, 2: cost". Empty for the whole record.
QString fieldIn(const Records &records, const MergeConflict &conflict);
/// The value that stands, and the one that lost; "nothing" where there is none.
QString keptIn(const Records &records, const MergeConflict &conflict);
QString lostIn(const Records &records, const MergeConflict &conflict);
/// "Kim, 14 Mar 2026, 16:10"; and below it what that change is called in the journal.
QString authorIn(const Records &records, const MergeConflict::Change &change);
/// One line for a list.
QString summaryIn(const Records &records, const MergeConflict &conflict);
/// A sentence of the core about a record, with fields as people call them.
QString withNames(QString sentence, RecordRef record);
/// Why a change was left out, with fields as people call them.
QString reasonIn(const MergeConflict &conflict);
/// What the decision was; empty while there is none.
QString decisionIn(const MergeConflict &conflict);

} // namespace lastrivet::ui
