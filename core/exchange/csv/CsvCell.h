// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/DocumentBuilder.h"
#include "core/exchange/csv/NameLookup.h"
#include "core/records/Description.h"

#include <string_view>

namespace lastrivet::exchange {

/// What a number in a column of parts is first: a code or name, as people write lists, or an id,
/// as this program does below the field's own name.
enum class PartsFirst { ByName, ById };

/// Hands what a cell says of a field to the builder, as the value of the key before; false when
/// that wants no more.
bool feedCell(DocumentBuilder &builder, const Field &field, std::string_view cell,
              const NameLookup &names, PartsFirst partsFirst);

} // namespace lastrivet::exchange
