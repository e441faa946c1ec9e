// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/FileCopies.h"

#include "core/base/Sha256.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/NewFile.h"
#include "core/evidence/files/SourceFile.h"

#include <fcntl.h>

#include <set>

namespace lastrivet::backup {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t blockSize = std::size_t{1} << 20;

template <class Each> void forEachBlock(const evidence::SourceFile &file, const Each &each)
{
    std::vector<std::uint8_t> block(blockSize);
    for (std::uint64_t place = 0;;) {
        const std::size_t got = file.readAt(place, block);
        if (got == 0)
            return;
        each(std::span(block).first(got));
        place += got;
    }
}

std::string hashOf(const fs::path &file)
{
    const evidence::SourceFile source(file);
    Sha256 sum;
    forEachBlock(source, [&](std::span<const std::uint8_t> bytes) { sum.add(bytes); });
    return hex(sum.digest());
}

/// What is read next comes from the disk, not from the memory of what was written.
void forgetCached(const fs::path &file)
{
    const evidence::Descriptor opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    if (opened)
        ::posix_fadvise(opened.number(), 0, 0, POSIX_FADV_DONTNEED);
}

/// One file on its way from one project folder to another.
class FileCopy {
public:
    FileCopy(const Media &media, const fs::path &place, const fs::path &root)
        : m_media(media)
        , m_place(place)
        , m_root(root)
        , m_target(root / media.file)
    {
    }

    /// True when the file is there already, whole as far as its size tells.
    bool isThere() const
    {
        std::error_code none;
        return fs::is_regular_file(m_target, none) &&
               fs::file_size(m_target, none) == fs::file_size(m_place, none);
    }

    /// The hash of what was copied, the same as what was read back.
    std::string make()
    {
        const fs::path relative = fs::path(m_media.file).lexically_normal();
        evidence::makeFolder(m_root, relative.parent_path());
        const std::string written = write();
        evidence::settleFolder(m_target.parent_path());
        forgetCached(m_target);
        if (hashOf(m_target) != written) {
            std::error_code none;
            fs::remove(m_target, none);
            throw NotSaved(m_target.string() +
                           " does not read back as it was written; the disk may be failing.");
        }
        return written;
    }

private:
    std::string write()
    {
        const evidence::SourceFile source(m_place);
        evidence::NewFile copy(m_target.parent_path(), source.name());
        Sha256 sum;
        forEachBlock(source, [&](std::span<const std::uint8_t> bytes) {
            sum.add(bytes);
            copy.write(bytes);
        });
        copy.settle();
        copy.publishOver(m_target.filename().string());
        return hex(sum.digest());
    }

    const Media &m_media;
    const fs::path &m_place;
    const fs::path &m_root;
    fs::path m_target;
};

void copyFile(const Media &media, const fs::path &from, const fs::path &to, Report &report)
{
    const auto place = evidence::locate(from, media);
    std::error_code none;
    if (!place || !fs::is_regular_file(*place, none)) {
        report.missing.push_back(media.file);
        return;
    }
    FileCopy copy(media, *place, to);
    if (copy.isThere()) {
        ++report.files_kept;
        return;
    }
    const std::string hash = copy.make();
    if (!media.sha256.empty() && hash != media.sha256)
        report.altered.push_back(media.file);
    ++report.files_copied;
    report.bytes_copied += fs::file_size(*place, none);
}

} // namespace

void copyFiles(const Records &records, const fs::path &from, const fs::path &to, Report &report,
               const OnProgress &onProgress, std::stop_token stop)
{
    evidence::sweepLeftovers(to);
    std::set<std::string> done;
    CopyProgress progress{0, records.media.size()};
    for (const Media &media : records.media) {
        if (stop.stop_requested())
            throw NotSaved("Copying was cancelled; the files copied so far are whole.");
        if (!media.file.empty() && done.insert(media.file).second)
            copyFile(media, from, to, report);
        ++progress.files_done;
        if (onProgress)
            onProgress(progress);
    }
}

} // namespace lastrivet::backup
