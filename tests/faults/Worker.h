// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <chrono>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::faults {

/// Another process, of which nothing is left but what it wrote and what it said.
///
/// It begins as a copy of this one; so nothing that it uses may be open here.
class Worker {
public:
    /// Says one line, whole.
    using Say = std::function<void(std::string_view)>;
    /// True when it has been asked to end.
    using IsToEnd = std::function<bool()>;
    using Task = std::function<void(const Say &, const IsToEnd &)>;

    explicit Worker(const Task &task);
    ~Worker();
    Worker(const Worker &) = delete;
    Worker &operator=(const Worker &) = delete;

    /// For a task: the kernel kills this process when it has worked that long from now on, wherever
    /// it is then. Counted is the processor's time, so that a busy machine makes no difference.
    static void killLater(std::chrono::microseconds work);

    pid_t process() const { return m_process; }
    void askToEnd() const;
    /// The lines said so far.
    const std::vector<std::string> &linesSoFar();
    /// Waits for its end; answers all lines said.
    const std::vector<std::string> &said();

private:
    /// False when there will be no more.
    bool hear(int milliseconds);

    pid_t m_process = 0;
    int m_ear = -1;
    bool m_isRunning = true;
    std::string m_begun;
    std::vector<std::string> m_lines;
};

} // namespace lastrivet::faults
