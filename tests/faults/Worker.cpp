// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Worker.h"

#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <ctime>
#include <exception>
#include <string>
#include <system_error>

namespace lastrivet::faults {

namespace {

constexpr int forEver = -1;
volatile std::sig_atomic_t isToEnd = 0;

[[noreturn]] void work(const Worker::Task &task, int mouth)
{
    const Worker::Say say = [mouth](std::string_view words) {
        const std::string line = std::string(words) + '\n';
        if (::write(mouth, line.data(), line.size()) != ssize_t(line.size()))
            std::_Exit(3);
    };
    std::signal(SIGTERM, [](int) { isToEnd = 1; });
    try {
        task(say, [] { return isToEnd != 0; });
    } catch (const std::exception &fault) {
        say(fault.what());
    }
    std::_Exit(0);
}

} // namespace

Worker::Worker(const Task &task)
{
    std::array<int, 2> pipe{};
    if (::pipe(pipe.data()) != 0)
        throw std::system_error(errno, std::generic_category());
    m_process = ::fork();
    if (m_process == 0) {
        ::close(pipe[0]);
        work(task, pipe[1]);
    }
    ::close(pipe[1]);
    m_ear = pipe[0];
    if (m_process < 0)
        throw std::system_error(errno, std::generic_category());
}

Worker::~Worker()
{
    if (m_isRunning) {
        ::kill(m_process, SIGKILL);
        ::waitpid(m_process, nullptr, 0);
    }
    ::close(m_ear);
}

bool Worker::hear(int milliseconds)
{
    pollfd waiting{m_ear, POLLIN, 0};
    if (::poll(&waiting, 1, milliseconds) == 0)
        return false;
    std::array<char, 4096> block{};
    const ssize_t got = ::read(m_ear, block.data(), block.size());
    if (got <= 0)
        return got < 0 && errno == EINTR;
    m_begun.append(block.data(), std::size_t(got));
    for (auto end = m_begun.find('\n'); end != std::string::npos; end = m_begun.find('\n')) {
        m_lines.push_back(m_begun.substr(0, end));
        m_begun.erase(0, end + 1);
    }
    return true;
}

void Worker::killLater(std::chrono::microseconds work)
{
    using namespace std::chrono;
    sigevent event{};
    event.sigev_notify = SIGEV_SIGNAL;
    event.sigev_signo = SIGKILL;
    timer_t timer{};
    itimerspec when{};
    when.it_value.tv_sec = duration_cast<seconds>(work).count();
    when.it_value.tv_nsec = nanoseconds(work % seconds{1}).count();
    if (::timer_create(CLOCK_PROCESS_CPUTIME_ID, &event, &timer) != 0 ||
        ::timer_settime(timer, 0, &when, nullptr) != 0)
        throw std::system_error(errno, std::generic_category());
}

void Worker::askToEnd() const
{
    ::kill(m_process, SIGTERM);
}

const std::vector<std::string> &Worker::linesSoFar()
{
    while (hear(0)) {
    }
    return m_lines;
}

const std::vector<std::string> &Worker::said()
{
    while (hear(forEver)) {
    }
    int status = 0;
    ::waitpid(m_process, &status, 0);
    m_isRunning = false;
    if (WIFSIGNALED(status) && WTERMSIG(status) != SIGKILL)
        m_lines.push_back("ended by signal " + std::to_string(WTERMSIG(status)));
    return m_lines;
}

} // namespace lastrivet::faults
