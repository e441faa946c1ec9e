// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <vector>

namespace lastrivet::exchange {

/// Makes a file atomically: `make` writes under the path that it is given, beside `file`; the
/// result replaces `file` once it is on the disk, so that there is never half a file, not even
/// after a power cut. Of a link, the file that it leads to is replaced. Throws `NotSaved`, for
/// devices and pipes too; what was there before is then unchanged.
void makeWholeFile(const std::filesystem::path &file,
                   const std::function<void(const std::filesystem::path &)> &make);

using WriteTo = std::function<void(std::ostream &)>;

/// The same with a stream.
void writeWholeFile(const std::filesystem::path &file, const WriteTo &write);

/// The same for files that belong together: all of them are on the disk before the first takes its
/// place, so that a disk without room for the last leaves them all as they were.
struct FileToWrite {
    std::filesystem::path file;
    WriteTo write;
};
void writeWholeFiles(const std::vector<FileToWrite> &files);

} // namespace lastrivet::exchange
