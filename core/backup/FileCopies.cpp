// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/FileCopies.h"

#include "core/base/Error.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/FileSum.h"
#include "core/evidence/files/NewFile.h"

#include <fcntl.h>
#include <fmt/format.h>

#include <cstdint>
#include <memory>
#include <numeric>
#include <optional>
#include <span>
#include <system_error>

namespace lastrivet::backup {

namespace fs = std::filesystem;
using evidence::SourceFile;

namespace {

struct Cancelled {};

/// A fault of the target ends the copying; a fault of a source concerns only that file.
template <class Body> auto atTarget(const Body &body)
{
    try {
        return body();
    } catch (const evidence::FileFault &fault) {
        throw NotSaved(fault.message());
    }
}

/// Drops the file from the page cache, so that what is read next comes from the disk.
void forgetCached(const fs::path &file)
{
    const evidence::Descriptor opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    if (opened)
        ::posix_fadvise(opened.number(), 0, 0, POSIX_FADV_DONTNEED);
}

/// Copies one file after the other, and keeps count.
class Copying {
public:
    Copying(const fs::path &from, const fs::path &to, Differing differing, Report &report,
            const OnProgress &onProgress, std::uint64_t bytes)
        : m_from(from)
        , m_to(to)
        , m_differing(differing)
        , m_report(report)
        , m_onProgress(onProgress)
        , m_progress{0, bytes}
    {
    }

    void copy(const ProjectFile &file, Reading reading)
    {
        const auto source = evidence::locate(m_from, file.name);
        const auto target = evidence::locate(m_to, file.name);
        const std::uint64_t before = m_progress.bytes_done;
        if (!target)
            m_report.unreadable.push_back(file.name);
        else if (isKept(file, source, *target, reading))
            keep(file, source, *target, reading);
        else
            take(file, source, *target);
        m_progress.bytes_done = before;
        advance(file.bytes);
    }

private:
    void advance(std::uint64_t bytes)
    {
        m_progress.bytes_done += bytes;
        if (m_onProgress && !m_onProgress(m_progress))
            throw Cancelled();
    }

    std::string sumAt(const fs::path &file)
    {
        return atTarget([&] {
            forgetCached(file);
            return evidence::sumOf(SourceFile(file),
                                   [&](std::span<const std::uint8_t>) { advance(0); });
        });
    }

    /// Whether the target has it from an earlier time.
    bool isKept(const ProjectFile &file, const std::optional<fs::path> &source,
                const fs::path &target, Reading reading)
    {
        std::error_code none;
        if (!fs::is_regular_file(target, none) || fs::file_size(target, none) != file.bytes)
            return false;
        // What no record knows may change and keep its size.
        if (file.sha256.empty())
            return source && isSame(*source, target);
        if (reading != Reading::EveryFile || sumAt(target) == file.sha256)
            return true;
        m_report.damaged.push_back(file.name);
        return false;
    }

    /// Notes where the project itself no longer has what the target has.
    void keep(const ProjectFile &file, const std::optional<fs::path> &source,
              const fs::path &target, Reading reading)
    {
        ++m_report.files_kept;
        std::error_code none;
        if (file.sha256.empty() || !source || !fs::is_regular_file(*source, none) ||
            (reading == Reading::NewFiles && !isWrittenSince(*source, file, target)))
            return;
        try {
            const SourceFile original(*source);
            const bool isAltered = original.size() != file.bytes ||
                                   evidence::sumOf(original, [&](std::span<const std::uint8_t>) {
                                       advance(0);
                                   }) != file.sha256;
            if (isAltered)
                m_report.altered.push_back(file.name);
        } catch (const evidence::FileFault &) {
            m_report.unreadable.push_back(file.name);
        }
    }

    /// By its size, or by times, of which that of a copy is the time of copying.
    static bool isWrittenSince(const fs::path &source, const ProjectFile &file,
                               const fs::path &target)
    {
        std::error_code none;
        const auto written = fs::last_write_time(source, none);
        const bool isTimed = !none;
        const auto copied = fs::last_write_time(target, none);
        return !isTimed || none || written >= copied || fs::file_size(source, none) != file.bytes;
    }

    bool isSame(const fs::path &source, const fs::path &target)
    {
        try {
            return evidence::sumOf(SourceFile(source)) == sumAt(target);
        } catch (const evidence::FileFault &) {
            return true;
        }
    }

    void take(const ProjectFile &file, const std::optional<fs::path> &source,
              const fs::path &target)
    {
        std::error_code none;
        if (!source || !fs::is_regular_file(*source, none)) {
            // Of a length that is not on record `isKept` could not tell.
            if (isThere(file, target))
                ++m_report.files_kept;
            else
                m_report.missing.push_back(file.name);
            return;
        }
        try {
            write(file, SourceFile(*source), target);
        } catch (const evidence::FileFault &) {
            m_report.unreadable.push_back(file.name);
        }
    }

    void write(const ProjectFile &file, const SourceFile &source, const fs::path &target)
    {
        atTarget([&] { evidence::makeFolder(m_to, fs::path(file.name).parent_path()); });
        auto copy = atTarget([&] {
            return std::make_unique<evidence::NewFile>(target.parent_path(), source.name());
        });
        const std::string sum = evidence::sumOf(source, [&](std::span<const std::uint8_t> bytes) {
            atTarget([&] { copy->write(bytes); });
            advance(bytes.size());
        });
        if (!file.sha256.empty() && sum != file.sha256) {
            m_report.altered.push_back(file.name);
            if (isWhole(file, target)) {
                ++m_report.files_kept;
                return;
            }
        }
        atTarget([&] { copy->settle(); });
        if (sumAt(copy->path()) != sum)
            throw NotSaved(
                Message{"{0} does not read back as it was written; the disk may be failing.",
                        {target.string()}});
        atTarget([&] {
            if (m_differing == Differing::SetAside)
                setAside(file, target);
            copy->publishOver(target.filename().string());
            evidence::settleFolder(target.parent_path());
        });
        ++m_report.files_copied;
        m_report.bytes_copied += source.size();
    }

    /// Gives what lies there a name that nothing has.
    void setAside(const ProjectFile &file, const fs::path &target)
    {
        if (!fs::exists(fs::symlink_status(target)))
            return;
        fs::path kept;
        for (int number = 1; kept.empty() || fs::exists(fs::symlink_status(kept)); ++number)
            kept = target.parent_path() / fmt::format("{}-set-aside-{}{}", target.stem().string(),
                                                      number, target.extension().string());
        fs::rename(target, kept);
        m_report.set_aside.push_back(
            (fs::path(file.name).parent_path() / kept.filename()).generic_string());
    }

    /// Whether an earlier backup has what the project has lost.
    bool isThere(const ProjectFile &file, const fs::path &target)
    {
        std::error_code none;
        return file.sha256.empty() ? fs::is_regular_file(target, none) : isWhole(file, target);
    }

    /// A copy as it was taken in is worth more than a later state of the file.
    bool isWhole(const ProjectFile &file, const fs::path &target)
    {
        std::error_code none;
        return fs::is_regular_file(target, none) && sumAt(target) == file.sha256;
    }

    const fs::path &m_from;
    const fs::path &m_to;
    Differing m_differing;
    Report &m_report;
    const OnProgress &m_onProgress;
    CopyProgress m_progress;
};

} // namespace

bool copyFiles(const std::vector<ProjectFile> &files, const fs::path &from, const fs::path &to,
               Reading reading, Differing differing, Report &report, const OnProgress &onProgress)
{
    const auto bytes = std::accumulate(
        files.begin(), files.end(), std::uint64_t{0},
        [](std::uint64_t sum, const ProjectFile &file) { return sum + file.bytes; });
    evidence::sweepLeftovers(to);
    Copying copying(from, to, differing, report, onProgress, bytes);
    try {
        for (const ProjectFile &file : files)
            copying.copy(file, reading);
    } catch (const Cancelled &) {
        return false;
    }
    return true;
}

} // namespace lastrivet::backup
