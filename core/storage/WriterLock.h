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

/// Thrown when the file system has no locks, so that a second program could not be kept out.
class LocksUnknown : public NotWritable {
public:
    using NotWritable::NotWritable;
};

/// The right to write to a project: a lock on a file, which one program has at a time and which the
/// operating system releases when that program ends, however it ends. That the file exists means
/// nothing.
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
    /// Who has it, as that program wrote into the file; empty when that cannot be told. Waits for
    /// up to a fifth of a second while the file names nobody, or a program of this computer that is
    /// gone.
    static std::optional<Holder> holder(const std::filesystem::path &file);
    /// Whether the file names nobody, or a program of this computer that is gone. Does not touch
    /// the lock itself, so that it keeps nobody from taking it.
    static bool isSignedByNobody(const std::filesystem::path &file);

    /// Whether the program that had it before was killed, or lost power, while it had it; it may
    /// have left half-written files.
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
