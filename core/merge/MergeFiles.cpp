// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/MergeFiles.h"

#include "core/evidence/MediaFile.h"
#include "core/evidence/UnnamedFiles.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/FileSum.h"
#include "core/evidence/files/NewFile.h"
#include "core/merge/Decision.h"
#include "core/merge/MergeHistories.h"
#include "core/records/OwnFileName.h"

#include <spdlog/spdlog.h>

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace lastrivet::merge {

namespace {

namespace fs = std::filesystem;

using Places = std::vector<fs::path>;

/// One call of the system: to resolve the place of every file of a large project takes seconds.
bool isThere(const fs::path &folder, const Media &media)
{
    std::error_code none;
    return fs::exists(folder / media.file, none);
}

/// The same of a file that the merge needs. One of a new record may have been copied ahead, by
/// somebody who gives up at this moment: it is there to stay, or is not there.
bool isThereToStay(const CopyOfProject &mine, const Media &media, BroughtFiles &brought)
{
    if (!isThere(mine.folder, media))
        return false;
    if (mine.records->find(media.id))
        return true;
    evidence::keepForRecord(mine.folder, media.file);
    brought.found.push_back(media.file);
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
        return media && isThere(m_folder, *media) ? named(media->file) : std::nullopt;
    }

    /// The file of this name, whatever is in it.
    std::optional<fs::path> named(const std::string &name) const
    {
        const auto file = evidence::locate(m_folder, name);
        std::error_code none;
        return file && fs::is_regular_file(*file, none) ? file : std::nullopt;
    }

    /// Where the photograph's file may be, if not where a record says: nothing but a sum tells
    /// whether it is that.
    Places placesOf(const Media &media, const std::set<std::string> &names) const
    {
        Places places;
        if (auto known = find(media))
            places.push_back(std::move(*known));
        for (const std::string &name : names) {
            if (auto place = media.sha256.empty() ? std::nullopt : named(name))
                places.push_back(std::move(*place));
        }
        return places;
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
bool bring(const fs::path &from, const fs::path &folder, const Media &media, BroughtFiles &brought)
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
    // Before the disk may refuse the folder: the file lies there from now on.
    brought.copied.push_back(media.file);
    evidence::settleFolder(folder / relative);
    return true;
}

/// Copies the file from the first of these places that has it, or notes that none has.
void bringFrom(const Places &places, const CopyOfProject &mine, const Media &media,
               BroughtFiles &brought)
{
    const bool isBrought = evidence::locate(mine.folder, media) &&
                           std::any_of(places.begin(), places.end(), [&](const fs::path &place) {
                               return bring(place, mine.folder, media, brought);
                           });
    const auto *known = mine.records->find(media.id);
    if (!isBrought && (!known || known->file != media.file))
        brought.missing.push_back(media.file);
}

void bringOne(const Media &media, const FilesBySum &there, const FilesBySum &here,
              const CopyOfProject &mine, BroughtFiles &brought)
{
    if (!evidence::mayNameFile(media.file))
        return;
    auto source = there.find(media);
    if (!source)
        source = here.find(media);
    bringFrom(source ? Places{*source} : Places(), mine, media, brought);
}

/// Whether what lies under its name has the photograph's sum.
bool isItsFile(const fs::path &folder, const Media &media)
{
    try {
        const auto place = evidence::locate(folder, media);
        return place && evidence::sumOf(evidence::SourceFile(*place)) == media.sha256;
    } catch (const evidence::FileFault &) {
        return false;
    }
}

/// What only a change that was left out put on record may find another file under its name here,
/// and may be on record in neither copy: it then has a name of its own from the first.
void bringLeftOut(const Media &media, const FilesBySum &there, const FilesBySum &here,
                  const CopyOfProject &mine, BroughtFiles &brought)
{
    if (!evidence::mayNameFile(media.file))
        return;
    const bool isSummed = !media.sha256.empty();
    Media copy = media;
    if (isSummed && isThereToStay(mine, copy, brought) && isItsFile(mine.folder, copy))
        return;
    const auto ownName = ownFileName(media);
    if (!isSummed || isThere(mine.folder, media))
        copy.file = ownName;
    if (isThereToStay(mine, copy, brought))
        return;
    auto places = there.placesOf(media, {media.file, ownName});
    if (auto place = isSummed ? std::nullopt : there.named(ownName))
        places.push_back(std::move(*place));
    for (auto &place : here.placesOf(media, {media.file}))
        places.push_back(std::move(place));
    bringFrom(places, mine, copy, brought);
}

} // namespace

bool bringFiles(const MergedHistories &merged, const CopyOfProject &mine,
                const CopyOfProject &other, BroughtFiles &brought,
                const std::function<bool(std::size_t done, std::size_t total)> &onFile)
{
    const FilesBySum there(other);
    const FilesBySum here(mine);
    const auto &all = merged.with_left_out.media;
    std::size_t done = 0;
    for (const auto &media : all) {
        if (!merged.state.records.find(media.id))
            bringLeftOut(media, there, here, mine, brought);
        else if (!isThereToStay(mine, media, brought))
            bringOne(media, there, here, mine, brought);
        if (onFile && !onFile(++done, all.size()))
            return false;
    }
    return true;
}

void bringDecided(const Decided &decided, const CopyOfProject &mine, BroughtFiles &brought)
{
    const FilesBySum here(mine);
    for (const RecordRef ref : decided.touched) {
        const auto *media =
            ref.type == RecordType::Media ? decided.state.records.find(Id<Media>{ref.id}) : nullptr;
        const auto *was = media ? mine.records->find(media->id) : nullptr;
        if (!media || (was && was->file == media->file) || isThereToStay(mine, *media, brought))
            continue;
        bringFrom(here.placesOf(*media, decided.files), mine, *media, brought);
    }
}

void takeBack(const fs::path &folder, const BroughtFiles &brought)
{
    for (const std::string &file : brought.found)
        evidence::letGo(folder, file);
    evidence::removeUnnamed(folder, brought.copied);
}

} // namespace lastrivet::merge
