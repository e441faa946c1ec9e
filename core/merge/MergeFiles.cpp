// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/MergeFiles.h"

#include "core/evidence/MediaFile.h"
#include "core/evidence/UnnamedFiles.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/FileSum.h"
#include "core/evidence/files/NewFile.h"

#include <spdlog/spdlog.h>

#include <optional>
#include <unordered_map>

namespace lastrivet::merge {

namespace {

namespace fs = std::filesystem;

/// One call of the system: to resolve the place of every file of a large project takes seconds.
bool isThere(const fs::path &folder, const Media &media)
{
    std::error_code none;
    return fs::exists(folder / media.file, none);
}

/// The same of a file that the merge needs. One of a new record may have been copied ahead, by
/// somebody who gives up at this moment: it is there to stay, or is not there.
bool isThereToStay(const CopyOfProject &mine, const Media &media)
{
    if (!isThere(mine.folder, media))
        return false;
    if (mine.records->find(media.id))
        return true;
    evidence::keepForRecord(mine.folder, media.file);
    return isThere(mine.folder, media);
}

/// Finds the file of a photograph by its sum, whatever it is called.
class FilesBySum {
public:
    explicit FilesBySum(const CopyOfProject &copy)
        : m_folder(copy.folder)
        , m_records(*copy.records)
    {
        for (const auto &media : m_records.media) {
            if (!media.sha256.empty())
                m_bySum.emplace(media.sha256, &media);
        }
    }

    std::optional<fs::path> find(const Media &wanted) const
    {
        const auto bySum = m_bySum.find(wanted.sha256);
        const auto *media = bySum != m_bySum.end() ? bySum->second : m_records.find(wanted.id);
        if (!media || !isThere(m_folder, *media))
            return std::nullopt;
        const auto file = evidence::locate(m_folder, *media);
        std::error_code none;
        return file && fs::is_regular_file(*file, none) ? file : std::nullopt;
    }

private:
    fs::path m_folder;
    const Records &m_records;
    std::unordered_map<std::string_view, const Media *> m_bySum;
};

std::optional<evidence::SourceFile> opened(const fs::path &file)
{
    try {
        return evidence::SourceFile(file);
    } catch (const evidence::FileFault &fault) {
        spdlog::warn("a file of the other copy: {}", fault.what());
        return std::nullopt;
    }
}

/// False when the file is not the one that the record means, or its name was taken meanwhile: what
/// has it is another's, and not to be taken back with the merge.
bool bring(const fs::path &from, const fs::path &folder, const Media &media)
{
    const auto source = opened(from);
    if (!source)
        return false;
    const auto relative = fs::path(media.file).parent_path();
    evidence::makeFolder(folder, relative);
    evidence::NewFile file(folder / relative, source->name());
    const auto sum = evidence::sumOf(*source, [&](auto block) { file.write(block); });
    if (!media.sha256.empty() && sum != media.sha256)
        return false;
    file.settle();
    if (!file.publish(fs::path(media.file).filename().string()))
        return false;
    evidence::settleFolder(folder / relative);
    return true;
}

void bringOne(const Media &media, const FilesBySum &there, const FilesBySum &here,
              const CopyOfProject &mine, BroughtFiles &brought)
{
    if (!evidence::mayNameFile(media.file))
        return;
    auto source = there.find(media);
    if (!source)
        source = here.find(media);
    const auto target = source ? evidence::locate(mine.folder, media) : std::optional<fs::path>();
    if (target && bring(*source, mine.folder, media))
        brought.copied.push_back(media.file);
    else if (const auto *known = mine.records->find(media.id); !known || known->file != media.file)
        brought.missing.push_back(media.file);
}

} // namespace

bool bringFiles(const Records &merged, const CopyOfProject &mine, const CopyOfProject &other,
                BroughtFiles &brought,
                const std::function<bool(std::size_t done, std::size_t total)> &onFile)
{
    const FilesBySum there(other);
    const FilesBySum here(mine);
    std::size_t done = 0;
    for (const auto &media : merged.media) {
        if (!isThereToStay(mine, media))
            bringOne(media, there, here, mine, brought);
        if (onFile && !onFile(++done, merged.media.size()))
            return false;
    }
    return true;
}

void takeBack(const fs::path &folder, const BroughtFiles &brought)
{
    evidence::removeUnnamed(folder, brought.copied);
}

} // namespace lastrivet::merge
