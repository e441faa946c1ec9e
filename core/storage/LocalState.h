// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet::storage {

/// State of this computer that is no part of the records, and is not journalled.
std::optional<std::string> localState(const Database &database, std::string_view key);
/// Removes the key when there is no value.
void setLocalState(Database &database, std::string_view key, std::optional<std::string_view> value);

} // namespace lastrivet::storage
