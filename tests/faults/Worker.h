// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::faults {

/// Another process at a project: it does one act over and over, and says after each that it is
/// done by the hash of the newest journal row.
class Worker {
public:
    /// How long it keeps the project open: always, or for some acts at a time, and while another
    /// program writes it says so and tries again.
    enum class Stay { Always, ByTurns };

    Worker(std::string_view act, const std::filesystem::path &project,
           const std::filesystem::path &supplies, std::int64_t series, Stay stay = Stay::Always);
    ~Worker();
    Worker(const Worker &) = delete;
    Worker &operator=(const Worker &) = delete;

    pid_t process() const { return m_number; }
    /// Reads its first line, and keeps it: it has opened the project, or says why it cannot.
    const std::string &hello();
    void kill();
    /// Asks it to end after what it is doing.
    void askToEnd();
    /// The lines it has said until its end.
    std::vector<std::string> said();

    static constexpr std::string_view ready = "ready";

private:
    bool readMore();

    pid_t m_number = 0;
    bool m_isRunning = true;
    int m_words = -1;
    std::string m_text;
    std::string m_hello;
};

/// What the other process does, when this program's first argument is `work`.
int work(const std::vector<std::string> &arguments);

} // namespace lastrivet::faults
