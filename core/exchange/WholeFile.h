// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>
#include <iosfwd>

namespace lastrivet::exchange {

/// Makes a file that a person asked for: `make` writes it under the name that it is given, beside
/// `file`, which it replaces when all of it is on the disk itself; never half, not even after a
/// power cut. A link stays one, and the file that it leads to is replaced. Throws `NotSaved`, for a
/// device and a pipe too; what was there before is then as it was.
void makeWholeFile(const std::filesystem::path &file,
                   const std::function<void(const std::filesystem::path &)> &make);

/// The same with a stream.
void writeWholeFile(const std::filesystem::path &file,
                    const std::function<void(std::ostream &)> &write);

} // namespace lastrivet::exchange
