// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/FileKind.h"

#include <cstdint>
#include <functional>
#include <span>

namespace lastrivet::evidence {

/// Reads at an offset and answers how many bytes there were.
using ReadAt = std::function<std::size_t(std::uint64_t offset, std::span<std::uint8_t> bytes)>;

/// False when the end of the file is missing, as after a broken transfer. Looks at the structure
/// only, not into the compressed pictures.
bool isWhole(FileKind kind, const ReadAt &readAt, std::uint64_t size);

} // namespace lastrivet::evidence
