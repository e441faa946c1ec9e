// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/DocumentBuilder.h"

#include <string_view>

namespace lastrivet::exchange {

/// Passes the events of a JSON text to a builder; false when the builder stopped before the end.
bool feedJson(DocumentBuilder &builder, std::string_view json);

/// True when the text is well-formed JSON in UTF-8.
bool isJson(std::string_view text);

} // namespace lastrivet::exchange
