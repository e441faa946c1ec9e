// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"
#include "core/records/Records.h"

#include <QString>

namespace lastrivet::ui {

/// A word of a vocabulary or the name of a field, as people read it: "lifting surface".
QString plainWord(std::string_view word);
/// The name of a field within a sentence: in German some begin with a capital, others do not.
QString fieldWords(const Field &field);
/// What heads the column of a field.
QString fieldTitle(const Field &field);
/// A record type, many of them: "packing list lines".
QString recordsTitle(RecordType type);
/// True when the field's values stand right in a column.
bool isNumber(const Field &field);
/// The value of a scalar field in words; names instead of ids, empty when null.
QString fieldText(const Records &records, const Field &field, const void *record);

} // namespace lastrivet::ui
