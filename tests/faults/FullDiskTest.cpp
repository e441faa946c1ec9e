// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "tests/faults/Acts.h"
#include "tests/faults/Copies.h"
#include "tests/faults/Report.h"
#include "tests/faults/Site.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <sqlite3.h>

#include <sys/mount.h>
#include <sys/resource.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <fstream>
#include <memory>

using namespace lastrivet;
using namespace lastrivet::faults;

namespace {

namespace fs = std::filesystem;

/// While it lives, databases can be kept from growing.
class PageLimit {
public:
    PageLimit() { sqlite3_auto_extension(reinterpret_cast<void (*)()>(begin)); }
    ~PageLimit()
    {
        sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(begin));
        limit = unlimited;
    }
    void set(int pages)
    {
        limit = pages;
        apply(newest);
    }
    /// A limit below the present size counts as the present size.
    static constexpr int present = 1;
    static constexpr int unlimited = 1 << 30;

private:
    static int begin(sqlite3 *database, char **, const void *)
    {
        newest = database;
        return apply(database);
    }
    static int apply(sqlite3 *database)
    {
        const auto pragma = fmt::format("PRAGMA max_page_count={}", limit);
        return sqlite3_exec(database, pragma.c_str(), nullptr, nullptr, nullptr);
    }

    static inline sqlite3 *newest = nullptr;
    static inline int limit = unlimited;
};

/// While it lives, no file may grow beyond so many bytes.
class FileLimit {
public:
    explicit FileLimit(rlim_t bytes)
    {
        std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{bytes, m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FileLimit() { ::setrlimit(RLIMIT_FSIZE, &m_before); }
    FileLimit(const FileLimit &) = delete;
    FileLimit &operator=(const FileLimit &) = delete;

private:
    rlimit m_before{};
};

/// A disk of a few megabytes, where this program may mount one.
class SmallDisk {
public:
    SmallDisk()
        : m_isThere(::mount("tmpfs", m_folder.path().c_str(), "tmpfs", 0, "size=6m") == 0)
        , m_reason(std::strerror(errno))
    {
    }
    ~SmallDisk()
    {
        if (m_isThere)
            ::umount2(m_folder.path().c_str(), MNT_DETACH);
    }
    SmallDisk(const SmallDisk &) = delete;
    SmallDisk &operator=(const SmallDisk &) = delete;

    bool isThere() const { return m_isThere; }
    const std::string &reason() const { return m_reason; }
    const fs::path &path() const { return m_folder.path(); }

    /// Leaves no more than so many bytes free.
    void fillUpTo(std::uintmax_t free) const
    {
        std::ofstream filling(m_folder / "filling", std::ios::binary | std::ios::app);
        const std::string page(4096, 'x');
        while (fs::space(m_folder.path()).available >= free + page.size() && filling.flush())
            filling << page;
    }
    void freeAll() const { fs::remove(m_folder / "filling"); }

private:
    TemporaryFolder m_folder;
    bool m_isThere;
    std::string m_reason;
};

struct FullCounts {
    int tried = 0;
    int refused = 0;
};

/// One act while the disk is full: done, or refused in a sentence with everything as it was.
void tryFull(const Act &act, Site &site, FullCounts &counts)
{
    const auto before = site.project().records();
    std::vector<std::string> why;
    try {
        why = act.perform(site.project(), site.supplies());
    } catch (const Fault &fault) {
        why = {fault.what()};
    }
    ++counts.tried;
    counts.refused += !why.empty();
    CAPTURE(act.name, why);
    for (const auto &sentence : why) {
        REQUIRE(sentence.ends_with('.'));
        REQUIRE(sentence.find('\n') == std::string::npos);
    }
    for (const auto &each : changingActs()) {
        if (each.name == act.name)
            REQUIRE((*site.project().records() == *before) == !why.empty());
    }
}

/// With room again everything works, and all is as the project shows it.
void requireGoesOn(const Act &act, Site &site)
{
    CAPTURE(act.name);
    REQUIRE(damageIn(site.folder()) == "");
    REQUIRE(damageInCopies(site.root()) == "");
    REQUIRE(act.perform(site.project(), site.supplies()).empty());
    const auto shown = site.project().records();
    site.close();
    site.open();
    REQUIRE(*site.project().records() == *shown);
}

std::vector<Act> allActs()
{
    std::vector<Act> acts;
    for (const auto some : {changingActs(), writingActs(), copyingActs()})
        acts.insert(acts.end(), some.begin(), some.end());
    return acts;
}

void tell(std::string_view what, const FullCounts &counts)
{
    report(fmt::format("disk full: {}", what), counts.tried,
           fmt::format("{} refused in a sentence, the others fitted", counts.refused));
    CHECK(counts.refused > 0);
}

} // namespace

TEST_CASE("A database that may not grow refuses a change whole, and takes it when it may",
          "[full]")
{
    PageLimit limit;
    FullCounts counts;
    for (const auto &each : changingActs()) {
        Site site;
        REQUIRE(each.perform(site.project(), site.supplies()).empty());
        // Free pages inside are used up first.
        for (int i = 0; i < times(5, 60); ++i) {
            limit.set(PageLimit::present);
            tryFull(each, site, counts);
            limit.set(PageLimit::unlimited);
        }
        requireGoesOn(each, site);
    }
    tell("no page more in the database", counts);
}

TEST_CASE("A file that may not grow refuses a change whole, and takes it when it may", "[full]")
{
    FullCounts counts;
    for (const auto &each : allActs()) {
        Site site;
        const auto step = rlim_t(times(40, 2)) * 1024;
        for (rlim_t bytes = 0; bytes < 200 * 1024; bytes += step) {
            {
                const FileLimit limit(bytes);
                tryFull(each, site, counts);
            }
            requireGoesOn(each, site);
        }
    }
    tell("no file may grow beyond a size", counts);
}

TEST_CASE("A full disk refuses a change whole, and takes it when there is room", "[full]")
{
    const SmallDisk disk;
    if (!disk.isThere()) {
        WARN("no small disk can be mounted here: " << disk.reason());
        return;
    }
    FullCounts counts;
    for (const auto &each : allActs()) {
        Site site(disk.path() / "site");
        const auto step = std::uintmax_t(times(80, 8)) * 1024;
        for (std::uintmax_t free = 0; free < 400 * 1024; free += step) {
            disk.fillUpTo(free);
            tryFull(each, site, counts);
            disk.freeAll();
            requireGoesOn(each, site);
            fs::remove_all(disk.path() / "site" / shelf);
        }
        site.close();
        fs::remove_all(disk.path() / "site");
    }
    tell("a small disk", counts);
}
