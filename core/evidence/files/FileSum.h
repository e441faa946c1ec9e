// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/files/SourceFile.h"

#include <functional>

namespace lastrivet::evidence {

/// The SHA-256 of a file's bytes as 64 hex digits, read once in blocks; `each` gets every block.
/// Throws `FileFault`.
std::string sumOf(const SourceFile &file,
                  const std::function<void(std::span<const std::uint8_t>)> &each = {});

/// A line of a list of sums, as `sha256sum -c` of GNU coreutils reads it.
std::string sumLine(const std::string &sum, const std::string &name);

} // namespace lastrivet::evidence
