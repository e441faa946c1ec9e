// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/JsonWriter.h"
#include "core/records/Description.h"
#include "core/records/Records.h"

#include <filesystem>
#include <iosfwd>

namespace lastrivet::exchange {

/// Writes the whole project as one interchange document. The same records give the same bytes:
/// fields in their order without nulls and empty lists, records by id, one-space indent, a final
/// newline.
void writeDocument(const Records &records, std::ostream &out);

/// Writes the document to a file: under another name first, so that a document that was there stays
/// whole until the new one is. Throws `NotSaved`.
void writeDocumentFile(const Records &records, const std::filesystem::path &file);

/// Writes one record, or one row of a list, as a JSON object.
void writeFields(JsonWriter &json, std::span<const Field> fields, const void *owner);
/// Writes the items or rows of a collection field as a JSON array.
void writeCollection(JsonWriter &json, const Field &field, const void *owner);
/// Writes one value; moments as their text.
void writeScalar(JsonWriter &json, const Scalar &value);

} // namespace lastrivet::exchange
