// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace lastrivet::stores {

/// True for the three letters of a currency in force, in capitals: ISO 4217, as Debian's iso-codes
/// 4.15 lists them, without those for tests and for none.
bool isCurrency(std::string_view code);

} // namespace lastrivet::stores
