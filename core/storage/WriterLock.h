// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace lastrivet::storage {

/// The right to write to a project; one program has it at a time, and the operating system takes it
/// back when that program ends, however it ends.
class WriterLock {
public:
    struct Holder {
        std::int64_t process = 0;
        std::string host;
        std::chrono::sys_time<std::chrono::milliseconds> since;
    };

    /// Null when another program has it.
    static std::unique_ptr<WriterLock> take(const std::filesystem::path &file,
                                            std::chrono::sys_time<std::chrono::milliseconds> now);
    /// Who has it, as that program wrote it down.
    static std::optional<Holder> holder(const std::filesystem::path &file);

    ~WriterLock();
    WriterLock(const WriterLock &) = delete;
    WriterLock &operator=(const WriterLock &) = delete;

private:
    explicit WriterLock(int file)
        : m_file(file)
    {
    }

    int m_file;
};

} // namespace lastrivet::storage
