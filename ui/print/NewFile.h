// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace lastrivet::print {

/// A file that appears under its name whole and durable, or not at all.
///
/// Written beside its place under a temporary name, which goes when it is not finished; the place
/// of a link is that of the file behind it. Throws `NotSaved` with one sentence when the disk is
/// full, the folder cannot be written, or the place is a folder, a device or a pipe.
class NewFile {
public:
    explicit NewFile(const std::filesystem::path &place);
    ~NewFile();
    NewFile(const NewFile &) = delete;
    NewFile &operator=(const NewFile &) = delete;

    void write(const unsigned char *bytes, std::size_t count);
    /// Puts `text` in place of as many bytes that were written from `offset` on.
    void overwrite(std::uint64_t offset, std::string_view text);
    /// Makes it durable and gives it its name, in place of an older file there.
    void finish();

private:
    [[noreturn]] void fail(int error) const;

    std::filesystem::path m_place;
    std::string m_temporary;
    int m_descriptor = -1;
};

// What cannot be written is not to stand in the journal as printed.

/// Throws `NotSaved`, as a new file there would, where none can be made.
void requireRoomFor(const std::filesystem::path &place);
/// The same for a folder with sums, which takes the place of nothing.
void requireRoomForFolder(const std::filesystem::path &place);

} // namespace lastrivet::print
