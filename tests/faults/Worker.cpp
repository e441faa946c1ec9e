// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Worker.h"

#include "core/base/Error.h"
#include "tests/faults/Acts.h"

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <limits>
#include <system_error>
#include <thread>

namespace lastrivet::faults {

namespace {

volatile std::sig_atomic_t isToEnd = 0;

/// One call, so that a line is said whole or not at all.
void say(std::string_view words)
{
    const std::string line = std::string(words) + '\n';
    if (::write(STDOUT_FILENO, line.data(), line.size()) != ssize_t(line.size()))
        std::_Exit(3);
}

/// Does an act again and again, unless another program writes to the project, which it says.
void workOn(const Act &act, const std::string &folder, Supplies &supplies, int most)
{
    const auto project = Project::open(folder, {nullptr, "Worker", false});
    say(project->isReadOnly() ? project->readOnlyReason() : std::string(Worker::ready));
    for (int i = 0; !project->isReadOnly() && !isToEnd && i < most; ++i) {
        const auto why = act.perform(*project, supplies);
        say(why.empty() ? project->journalHash() : why.front());
    }
}

void workByTurns(const Act &act, const std::string &folder, Supplies &supplies)
{
    constexpr int actsInTurn = 20;
    constexpr std::chrono::milliseconds pause{5};
    while (!isToEnd) {
        workOn(act, folder, supplies, actsInTurn);
        std::this_thread::sleep_for(pause);
    }
}

} // namespace

Worker::Worker(std::string_view act, const std::filesystem::path &project,
               const std::filesystem::path &supplies, std::int64_t series, Stay stay)
{
    std::array<int, 2> pipe{};
    if (::pipe(pipe.data()) != 0)
        throw std::system_error(errno, std::generic_category());
    const std::array<std::string, 7> words{
        "fault_tests",         "work",           std::string(act),
        project.string(),      supplies.string(), std::to_string(series),
        stay == Stay::ByTurns ? "turns" : "always"};
    std::array<char *, 8> arguments{};
    for (std::size_t i = 0; i < words.size(); ++i)
        arguments[i] = const_cast<char *>(words[i].c_str());
    m_number = ::fork();
    if (m_number == 0) {
        ::dup2(pipe[1], STDOUT_FILENO);
        ::close(pipe[0]);
        ::close(pipe[1]);
        ::setenv("TMPDIR", supplies.c_str(), 1);
        ::execv("/proc/self/exe", arguments.data());
        std::_Exit(127);
    }
    ::close(pipe[1]);
    m_words = pipe[0];
}

Worker::~Worker()
{
    if (m_isRunning) {
        kill();
        ::waitpid(m_number, nullptr, 0);
    }
    ::close(m_words);
}

bool Worker::readMore()
{
    std::array<char, 4096> block{};
    ssize_t got = 0;
    do
        got = ::read(m_words, block.data(), block.size());
    while (got < 0 && errno == EINTR);
    m_text.append(block.data(), std::size_t(std::max<ssize_t>(got, 0)));
    return got > 0;
}

const std::string &Worker::hello()
{
    while (m_text.find('\n') == std::string::npos && readMore()) {
    }
    m_hello = m_text.substr(0, m_text.find('\n'));
    return m_hello;
}

void Worker::kill()
{
    ::kill(m_number, SIGKILL);
}

void Worker::askToEnd()
{
    ::kill(m_number, SIGTERM);
}

std::vector<std::string> Worker::said()
{
    while (readMore()) {
    }
    ::waitpid(m_number, nullptr, 0);
    m_isRunning = false;
    std::vector<std::string> lines;
    for (std::size_t at = 0; m_text.find('\n', at) != std::string::npos;) {
        const auto end = m_text.find('\n', at);
        lines.push_back(m_text.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

int work(const std::vector<std::string> &arguments)
{
    std::signal(SIGTERM, [](int) { isToEnd = 1; });
    std::int64_t series = 0;
    std::from_chars(arguments.at(3).data(), arguments.at(3).data() + arguments.at(3).size(),
                    series);
    try {
        Supplies supplies(arguments.at(2), series);
        const Act &todo = act(arguments.at(0));
        if (arguments.at(4) == "turns")
            workByTurns(todo, arguments.at(1), supplies);
        else
            workOn(todo, arguments.at(1), supplies, std::numeric_limits<int>::max());
        return 0;
    } catch (const std::exception &fault) {
        say(fault.what());
        return 4;
    }
}

} // namespace lastrivet::faults
