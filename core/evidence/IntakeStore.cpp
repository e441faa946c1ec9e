// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/IntakeStore.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/UnnamedFiles.h"
#include "core/project/Project.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::evidence {

namespace {

using Outcome = PreparedFile::Outcome;
using RowsByHash = std::map<std::string, Id<Media>, std::less<>>;

/// The live rows that have the hash of one of these files.
RowsByHash rowsBefore(const Records &records, const Batch &batch)
{
    std::set<std::string_view> wanted;
    for (const PreparedFile &file : batch)
        wanted.insert(file.media.sha256);
    wanted.erase("");
    RowsByHash rows;
    for (const Media &media : records.media) {
        if (!media.withdrawn_on && wanted.contains(media.sha256))
            rows.emplace(media.sha256, media.id);
    }
    return rows;
}

/// What `other` links to and shows, added; the same as before when there is nothing new.
Media joined(Media media, const Media &other)
{
    for (const Media::Link &link : other.links) {
        if (std::find(media.links.begin(), media.links.end(), link) == media.links.end())
            media.links.push_back(link);
    }
    for (std::size_t i = 0; i < Words<Shows>::list.size(); ++i) {
        if (other.shows.contains(Shows(i)))
            media.shows.insert(Shows(i));
    }
    return media;
}

std::string labelFor(const Batch &batch, const RowsByHash &rows, const IntakeLabel &label)
{
    std::size_t count = 0;
    bool onlyPhotos = true;
    for (const PreparedFile &file : batch) {
        if (file.outcome != Outcome::Copied || rows.contains(file.media.sha256))
            continue;
        ++count;
        onlyPhotos = onlyPhotos && file.media.kind == MediaKind::Photo;
    }
    return label(count, onlyPhotos);
}

/// The body of the change: puts one file's row, or joins it to the row with its hash.
void storeOne(Edit &edit, const PreparedFile &file, RowsByHash &rows, IntakeReport &report)
{
    const auto row = rows.find(file.media.sha256);
    if (row != rows.end()) {
        const Media &before = *edit.records().find(row->second);
        const Media after = joined(before, file.media);
        if (after != before)
            edit.put(after);
        report.already_there.push_back(row->second);
        if (file.put_back)
            report.put_back.push_back(*file.put_back);
    } else if (file.outcome == Outcome::Copied) {
        const Id<Media> id = edit.put(file.media);
        rows.emplace(file.media.sha256, id);
        report.taken.push_back(id);
    } else {
        report.failures.push_back(
            {file.source,
             {"{0} was not taken in, because the same file before it was not.",
              {shownName(file.source)}}});
    }
}

IntakeReport refused(const Batch &batch, const Refusal &refusal)
{
    IntakeReport report;
    for (const PreparedFile &file : batch)
        report.failures.push_back(
            {file.source,
             {"{0} was not taken in. {1}", {shownName(file.source), nested(messageOf(refusal))}},
             refusal.violations.empty()});
    return report;
}

/// Takes the failed ones out of the batch, into the report.
void setFailedAside(Batch &batch, IntakeReport &report)
{
    std::erase_if(batch, [&](const PreparedFile &file) {
        if (file.outcome == Outcome::Failed)
            report.failures.push_back({file.source, file.failure, file.is_of_disk});
        return file.outcome == Outcome::Failed;
    });
}

/// Of twins in one batch, whichever worker was quicker, the first one offered stands for the copy.
void giveCopiesToFirst(Batch &batch)
{
    std::map<std::string_view, PreparedFile *> firsts;
    for (PreparedFile &file : batch) {
        PreparedFile &first = *firsts.try_emplace(file.media.sha256, &file).first->second;
        if (&first == &file || file.outcome != Outcome::Copied)
            continue;
        std::swap(first.outcome, file.outcome);
        std::swap(first.made_file, file.made_file);
        std::swap(first.media.file, file.media.file);
    }
}

} // namespace

void IntakeReport::append(IntakeReport other)
{
    taken.insert(taken.end(), other.taken.begin(), other.taken.end());
    already_there.insert(already_there.end(), other.already_there.begin(),
                         other.already_there.end());
    failures.insert(failures.end(), std::make_move_iterator(other.failures.begin()),
                    std::make_move_iterator(other.failures.end()));
    put_back.insert(put_back.end(), std::make_move_iterator(other.put_back.begin()),
                    std::make_move_iterator(other.put_back.end()));
}

std::string plainIntakeLabel(std::size_t files, bool onlyPhotos)
{
    if (files == 0)
        return "Photos linked that were there already";
    const std::string_view what = onlyPhotos ? "photo" : "file";
    return fmt::format("{} {}{} taken in", files, what, files == 1 ? "" : "s");
}

IntakeReport store(Project &project, Batch batch, ChangeKind kind, const IntakeLabel &label)
{
    IntakeReport report;
    setFailedAside(batch, report);
    if (batch.empty())
        return report;
    giveCopiesToFirst(batch);
    const RowsByHash before = rowsBefore(*project.records(), batch);
    IntakeReport stored;
    const auto result = project.change(
        labelFor(batch, before, label),
        [&](Edit &edit) {
            RowsByHash rows = before;
            for (const PreparedFile &file : batch)
                storeOne(edit, file, rows, stored);
        },
        kind);
    if (!result) {
        discard(project.folder(), batch);
        report.append(refused(batch, result.reason()));
        return report;
    }
    // Another intake was quicker with the same file; that may be the very copy that its row names.
    std::erase_if(batch, [&](const PreparedFile &file) {
        const auto row = before.find(file.media.sha256);
        return row == before.end() || project.records()->find(row->second)->file == file.media.file;
    });
    discard(project.folder(), batch);
    report.append(std::move(stored));
    return report;
}

void discard(const std::filesystem::path &projectFolder, const Batch &batch)
{
    std::vector<std::string> made;
    for (const PreparedFile &file : batch) {
        if (file.outcome == Outcome::Copied && file.made_file)
            made.push_back(file.media.file);
    }
    removeUnnamed(projectFolder, made);
}

CopiedFiles::CopiedFiles(const Project &project, const std::vector<IncomingFile> &files)
    : m_folder(project.folder())
{
    if (project.isReadOnly())
        throw NotWritable(project.readOnlyMessage());
    Intake intake(m_folder, *project.records(), project.now());
    const IntakeListener listener{{}, [this](Batch batch) {
                                      m_batch.insert(m_batch.end(),
                                                     std::make_move_iterator(batch.begin()),
                                                     std::make_move_iterator(batch.end()));
                                  }};
    prepareAll(intake, files, 1, listener);
    IntakeReport report;
    setFailedAside(m_batch, report);
    m_failures = std::move(report.failures);
    giveCopiesToFirst(m_batch);
}

std::vector<Id<Media>> CopiedFiles::put(Edit &edit) const
{
    RowsByHash rows = rowsBefore(edit.records(), m_batch);
    IntakeReport report;
    for (const PreparedFile &file : m_batch)
        storeOne(edit, file, rows, report);
    std::vector<Id<Media>> media;
    for (const auto &ids : {report.taken, report.already_there}) {
        for (const Id<Media> id : ids) {
            if (std::find(media.begin(), media.end(), id) == media.end())
                media.push_back(id);
        }
    }
    return media;
}

void CopiedFiles::discard() const
{
    evidence::discard(m_folder, m_batch);
}

IntakeReport takeIn(Project &project, const std::vector<IncomingFile> &files, unsigned workers,
                    const std::function<void(const IntakeProgress &)> &progress,
                    std::stop_token stop, ChangeKind kind, const IntakeLabel &label)
{
    if (project.isReadOnly())
        throw NotWritable(project.readOnlyMessage());
    Intake intake(project.folder(), *project.records(), project.now());
    IntakeReport report;
    const IntakeListener listener{progress, [&](Batch batch) {
                                      report.append(store(project, std::move(batch), kind, label));
                                  }};
    prepareAll(intake, files, workers, listener, stop);
    return report;
}

} // namespace lastrivet::evidence
