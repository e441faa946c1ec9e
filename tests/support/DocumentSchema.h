// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace lastrivet::test {

/// The JSON Schema (2020-12) of the interchange document, made from the descriptions of the
/// records.
std::string documentSchema();

} // namespace lastrivet::test
