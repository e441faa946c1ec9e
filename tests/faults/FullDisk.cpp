// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/FullDisk.h"

#include "core/base/Error.h"
#include "tests/faults/Copies.h"
#include "tests/faults/Report.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <sys/mount.h>
#include <sys/resource.h>

#include <cerrno>
#include <csignal>
#include <cstring>
#include <fstream>
#include <optional>

namespace lastrivet::faults {

namespace {

namespace fs = std::filesystem;

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

} // namespace

void tryFull(const Act &act, Site &site, FullCounts &counts, const std::function<void()> &fill,
             const std::function<void()> &makeRoom)
{
    act.prepare(site.project(), site.supplies());
    const auto before = site.project().records();
    std::vector<std::string> why;
    fill();
    try {
        why = act.perform(site.project(), site.supplies());
    } catch (const Fault &fault) {
        why = {fault.what()};
    }
    makeRoom();
    ++counts.tried;
    counts.refused += !why.empty();
    CAPTURE(act.name, why);
    for (const auto &sentence : why) {
        REQUIRE(sentence.ends_with('.'));
        REQUIRE(sentence.find('\n') == std::string::npos);
    }
    if (act.effect == Effect::OnRecords)
        REQUIRE((*site.project().records() == *before) == !why.empty());
}

void requireGoesOn(const Act &act, Site &site)
{
    CAPTURE(act.name);
    REQUIRE(damageIn(site.folder()) == "");
    REQUIRE(damageInCopies(site.root()) == "");
    act.prepare(site.project(), site.supplies());
    REQUIRE(act.perform(site.project(), site.supplies()).empty());
    const auto shown = site.project().records();
    site.close();
    site.open();
    REQUIRE(*site.project().records() == *shown);
}

void reportFull(std::string_view what, const FullCounts &counts)
{
    report(fmt::format("disk full: {}", what), counts.tried,
           fmt::format("{} refused in a sentence, the others fitted", counts.refused));
    CHECK(counts.refused > 0);
}

void limitFiles(std::span<const Act> acts)
{
    FullCounts counts;
    for (const auto &each : acts) {
        Site site;
        const auto step = rlim_t(times(80, 8)) * 1024;
        for (rlim_t bytes = 0; bytes < 200 * 1024; bytes += step) {
            std::optional<FileLimit> limit;
            tryFull(
                each, site, counts, [&] { limit.emplace(bytes); }, [&] { limit.reset(); });
            requireGoesOn(each, site);
        }
    }
    reportFull("no file may grow beyond a size", counts);
}

void fillSmallDisk(std::span<const Act> acts)
{
    const SmallDisk disk;
    if (!disk.isThere()) {
        WARN("no small disk can be mounted here: " << disk.reason());
        return;
    }
    FullCounts counts;
    for (const auto &each : acts) {
        Site site(disk.path() / "site");
        const auto step = std::uintmax_t(times(160, 16)) * 1024;
        for (std::uintmax_t free = 0; free < 400 * 1024; free += step) {
            tryFull(
                each, site, counts, [&] { disk.fillUpTo(free); }, [&] { disk.freeAll(); });
            requireGoesOn(each, site);
            fs::remove_all(disk.path() / "site" / shelf);
        }
        site.close();
        fs::remove_all(disk.path() / "site");
    }
    reportFull("a small disk", counts);
}

} // namespace lastrivet::faults
