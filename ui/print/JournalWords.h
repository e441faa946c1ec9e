// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/Account.h"
#include "core/project/JournalMarks.h"
#include "ui/print/Wording.h"

#include <QString>
#include <QStringList>

// What the journal says, in a language: the same on paper and on the screen.
namespace lastrivet::print {

/// "Found by"; of no field, the rule profile.
QString titleIn(const Wording &words, const Field *field);
/// The same for a field that is named by type and name, of a list `events.closed_on`.
QString titleIn(const Wording &words, RecordType type, std::string_view name);
/// Empty for nothing.
QString valueIn(const Wording &words, const journal::Value &value);
/// What became of the field: "open → fixed", "added: Kim".
QString changeIn(const Wording &words, const journal::FieldAccount &account, RowChange kind);
/// What became of the record besides its fields: "new", "taken back", or nothing.
QString becameIn(const Wording &words, RowChange kind);
/// "undone", "from another copy"; empty for a plain change.
QString kindIn(const Wording &words, ChangeKind kind);
/// The same of a row; a project that a person began is not the program's doing.
QString kindIn(const Wording &words, const JournalEntry &row);
/// What is to be known of a row beside its kind: late dates, a clock that was set back.
QStringList marksIn(const Wording &words, bool isPushedAhead, const std::vector<LateDate> &late);

} // namespace lastrivet::print
