// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/WriterLock.h"

#include "core/base/TemporaryFolder.h"
#include "core/storage/ProjectFolder.h"

#include <fcntl.h>
#include <linux/magic.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <csignal>
#include <fstream>

using namespace lastrivet;
using storage::WriterLock;
namespace fs = std::filesystem;

namespace {

constexpr std::chrono::sys_time<std::chrono::milliseconds> since{std::chrono::milliseconds{7'000}};

/// Another program's lock, whatever it says of itself.
class ForeignLock {
public:
    ForeignLock(const fs::path &file, std::string_view words)
    {
        std::ofstream(file) << words;
        m_file = ::open(file.c_str(), O_RDWR | O_CLOEXEC);
        REQUIRE(::flock(m_file, LOCK_EX | LOCK_NB) == 0);
    }
    ~ForeignLock() { ::close(m_file); }

private:
    int m_file = -1;
};

std::string hostName()
{
    std::array<char, 256> name{};
    ::gethostname(name.data(), name.size() - 1);
    return name.data();
}

/// Ends at once, as a process of its own.
::pid_t endedProcess()
{
    const auto child = ::fork();
    if (child == 0)
        ::_exit(0);
    ::waitpid(child, nullptr, 0);
    return child;
}

/// A child process that takes the lock when told so, says whether it got it or who has it, and ends
/// when told so.
class Rival {
public:
    Rival(const fs::path &file, int start, int end)
    {
        REQUIRE(::pipe(m_said.data()) == 0);
        m_process = ::fork();
        if (m_process == 0)
            run(file, start, end);
    }
    std::string answer()
    {
        std::array<char, 100> text{};
        const auto count = ::read(m_said[0], text.data(), text.size());
        return {text.data(), std::size_t(std::max<ssize_t>(count, 0))};
    }
    ::pid_t process() const { return m_process; }
    ~Rival()
    {
        ::waitpid(m_process, nullptr, 0);
        ::close(m_said[0]);
        ::close(m_said[1]);
    }

private:
    [[noreturn]] void run(const fs::path &file, int start, int end) const
    {
        char go = 0;
        (void)!::read(start, &go, 1);
        const auto lock = WriterLock::take(file, since);
        const auto holder = lock ? std::nullopt : WriterLock::holder(file);
        const auto text = lock ? "mine" : std::to_string(holder ? holder->process : 0);
        (void)!::write(m_said[1], text.data(), text.size());
        (void)!::read(end, &go, 1);
        ::_exit(0);
    }

    std::array<int, 2> m_said{};
    ::pid_t m_process = 0;
};

} // namespace

TEST_CASE("Of programs that start in the same moment one may write, and all others can name it")
{
    const TemporaryFolder folder;
    std::array<int, 2> start{};
    std::array<int, 2> end{};
    REQUIRE(::pipe(start.data()) == 0);
    REQUIRE(::pipe(end.data()) == 0);
    // What a program that was killed left there.
    std::ofstream(folder / "records.lock")
        << endedProcess() << " 5 " << hostName() << " somebody\n";
    std::vector<std::unique_ptr<Rival>> rivals;
    for (int i = 0; i < 8; ++i)
        rivals.push_back(std::make_unique<Rival>(folder / "records.lock", start[0], end[0]));
    REQUIRE(::write(start[1], "12345678", 8) == 8);
    std::vector<std::string> said;
    ::pid_t winner = 0;
    for (const auto &rival : rivals) {
        said.push_back(rival->answer());
        if (said.back() == "mine")
            winner = rival->process();
    }
    REQUIRE(::write(end[1], "12345678", 8) == 8);
    CHECK(std::ranges::count(said, "mine") == 1);
    CHECK(std::ranges::count(said, std::to_string(winner)) == 7);
}

TEST_CASE("A lock file that a killed program left behind locks nobody out")
{
    const TemporaryFolder folder;
    const auto file = folder / "records.lock";
    const auto words = GENERATE("", "4711 5 elsewhere robin\n", "rubbish", "999999999999999999999");
    std::ofstream(file) << words;
    const auto lock = WriterLock::take(file, since);
    REQUIRE(lock);
    const auto holder = WriterLock::holder(file);
    REQUIRE(holder);
    CHECK(holder->process == ::getpid());
    CHECK(holder->since == since);
    CHECK(WriterLock::take(file, since) == nullptr);
}

TEST_CASE("The holder is told by account and computer, also one on another computer")
{
    const TemporaryFolder folder;
    const auto file = folder / "records.lock";
    const ForeignLock foreign(file, "4711 7000 shed robin\n");
    CHECK(WriterLock::take(file, since) == nullptr);
    const auto holder = WriterLock::holder(file);
    REQUIRE(holder);
    CHECK(holder->process == 4711);
    CHECK(holder->host == "shed");
    CHECK(holder->user == "robin");
    CHECK(holder->since == since);
}

TEST_CASE("A holder that has not signed, or signed with what a dead program wrote, is not named")
{
    const TemporaryFolder folder;
    const auto file = folder / "records.lock";
    const auto dead = std::to_string(endedProcess()) + " 5 " + hostName() + " robin\n";
    const ForeignLock foreign(file, GENERATE_COPY(std::string(), dead));
    CHECK(WriterLock::take(file, since) == nullptr);
    CHECK_FALSE(WriterLock::holder(file));
}

TEST_CASE("A lock that was given back names nobody any more")
{
    const TemporaryFolder folder;
    const auto file = folder / "records.lock";
    REQUIRE(WriterLock::take(file, since));
    CHECK(fs::file_size(file) == 0);
    CHECK(WriterLock::isSignedByNobody(file));
    const auto lock = WriterLock::take(file, since);
    REQUIRE(lock);
    CHECK_FALSE(WriterLock::isSignedByNobody(file));
}

TEST_CASE("A program that is killed while it writes gives the lock back")
{
    const TemporaryFolder folder;
    const auto file = folder / "records.lock";
    const auto child = ::fork();
    if (child == 0) {
        const auto lock = WriterLock::take(file, since);
        ::raise(SIGKILL);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
    REQUIRE(fs::file_size(file) > 0);
    CHECK(WriterLock::take(file, since));
}

TEST_CASE("Network file systems are told from disks")
{
    for (const auto kind : {NFS_SUPER_MAGIC, SMB_SUPER_MAGIC, FUSE_SUPER_MAGIC, V9FS_MAGIC})
        CHECK(storage::isNetwork(std::uint32_t(kind)));
    CHECK(storage::isNetwork(CIFS_SUPER_MAGIC));
    CHECK(storage::isNetwork(SMB2_SUPER_MAGIC));
    for (const auto kind : {EXT4_SUPER_MAGIC, XFS_SUPER_MAGIC, TMPFS_MAGIC, MSDOS_SUPER_MAGIC})
        CHECK_FALSE(storage::isNetwork(std::uint32_t(kind)));
    CHECK_FALSE(storage::isNetwork(std::uint32_t(BTRFS_SUPER_MAGIC)));
}
