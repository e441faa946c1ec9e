// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/files/Bytes.h"
#include "core/evidence/files/Descriptor.h"

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>

namespace lastrivet::evidence {

/// A file that is read once, from wherever it lies; throws `FileFault`s that name it.
class SourceFile {
public:
    /// Refuses what is no ordinary file: a folder, a pipe, a device.
    explicit SourceFile(const std::filesystem::path &path);

    /// Its name, fit for a sentence.
    const std::string &name() const { return m_name; }
    std::uint64_t size() const { return m_size; }
    /// Bytes read at `offset`; fewer than asked for only at the end of the file.
    std::size_t readAt(std::uint64_t offset, std::span<std::uint8_t> bytes) const;
    Bytes readAll() const;
    /// Throws when size or time of the file have changed since it was opened: it is still being
    /// written.
    void requireUnchanged() const;

private:
    std::string m_name;
    Descriptor m_file;
    std::uint64_t m_size = 0;
    std::int64_t m_changed = 0;
};

} // namespace lastrivet::evidence
