// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace lastrivet::storage {

/// The file system keeps no locks, so a second program could not be kept out.
class LocksUnknown : public NotWritable {
public:
    using NotWritable::NotWritable;
};

/// The right to write to a project; one program has it at a time, and the operating system takes it
/// back when that program ends, however it ends. The file that it stands on says nothing by being
/// there.
class WriterLock {
public:
    struct Holder {
        std::int64_t process = 0;
        std::string host;
        /// The account that the program runs under; empty when it has no name.
        std::string user;
        std::chrono::sys_time<std::chrono::milliseconds> since;
    };

    /// Null when another program has it. Throws `LocksUnknown`, or `NotWritable`.
    static std::unique_ptr<WriterLock> take(const std::filesystem::path &file,
                                            std::chrono::sys_time<std::chrono::milliseconds> now);
    /// Who has it, as that program wrote it down; empty when that cannot be told. Waits for a fifth
    /// of a second while the file speaks of nobody, or of a program of this computer that is gone.
    static std::optional<Holder> holder(const std::filesystem::path &file);
    /// Whether the words in the file name nobody, or a program of this computer that is gone. Takes
    /// nothing and waits for nothing: whoever wants the lock just now is not kept out.
    static bool isSignedByNobody(const std::filesystem::path &file);

    /// Whether the program that had it before ended without giving it back: killed, or without
    /// power. It may have left half-written files.
    bool isAfterCrash() const { return m_isAfterCrash; }

    ~WriterLock();
    WriterLock(const WriterLock &) = delete;
    WriterLock &operator=(const WriterLock &) = delete;

private:
    explicit WriterLock(int file)
        : m_file(file)
    {
    }
    void signAs(const std::string &text) const;

    int m_file;
    bool m_isAfterCrash = false;
};

} // namespace lastrivet::storage
