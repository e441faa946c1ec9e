// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/files/Descriptor.h"

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>

namespace lastrivet::evidence {

/// How the names of files begin that are still being written.
inline constexpr std::string_view leftoverPrefix = ".tmp-";

/// A name for such a file, different for each.
std::string temporaryName();

/// A new file in a folder: it has a temporary name until it is published, and is removed by the
/// destructor when it never is. Throws `FileFault`s.
class NewFile {
public:
    /// `forName`: the file that sentences speak of.
    NewFile(std::filesystem::path folder, std::string forName);
    ~NewFile();
    NewFile(const NewFile &) = delete;
    NewFile &operator=(const NewFile &) = delete;

    /// Where it lies until it is published.
    const std::filesystem::path &path() const { return m_temporary; }
    void write(std::span<const std::uint8_t> bytes);
    /// Flushes what was written to the disk.
    void settle();
    /// Gives it its name in the folder; false when that name is taken.
    bool publish(const std::string &name);
    /// The same, in place of a file that has this name.
    void publishOver(const std::string &name);

private:
    [[noreturn]] void throwNotSaved() const;

    std::filesystem::path m_folder;
    std::filesystem::path m_temporary;
    std::string m_forName;
    Descriptor m_file;
};

/// Flushes a file that was written by other means to the disk; throws `FileFault`.
void settleFile(const std::filesystem::path &file);

/// Flushes the entries of a folder to the disk; throws `FileFault`.
void settleFolder(const std::filesystem::path &folder);

/// Makes the folder with its parents inside `root`, durably; throws `FileFault`.
void makeFolder(const std::filesystem::path &root, const std::filesystem::path &relative);

/// Removes what an interrupted program left in a folder and its folders, but nothing of this
/// program's own running work.
void sweepLeftovers(const std::filesystem::path &folder);

} // namespace lastrivet::evidence
