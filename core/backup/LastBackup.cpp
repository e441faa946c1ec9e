// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/LastBackup.h"

#include "core/base/Sha256.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/NewFile.h"
#include "core/evidence/files/SourceFile.h"
#include "core/project/Project.h"
#include "core/storage/ProjectFolder.h"

#include <fmt/format.h>

#include <charconv>
#include <cstdint>
#include <string_view>
#include <system_error>

namespace lastrivet::backup {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view key = "last_backup";
constexpr std::size_t hashLength = 64;

constexpr std::uint64_t longestNote = 64 * 1024;

fs::path noteIn(const fs::path &project)
{
    return storage::ProjectFolder(project).backups() / "backup-elsewhere.txt";
}

std::string written(const LastBackup &last)
{
    return fmt::format("{} {} {}", last.at.time_since_epoch().count(), last.journal_hash,
                       last.place);
}

/// Empty for what `written` does not write.
std::optional<LastBackup> parsed(std::string_view kept)
{
    std::int64_t stamp = 0;
    const auto [end, error] = std::from_chars(kept.data(), kept.data() + kept.size(), stamp);
    const auto rest = kept.substr(std::size_t(end - kept.data()));
    if (error != std::errc{} || rest.size() < hashLength + 2 ||
        !isSha256(rest.substr(1, hashLength)))
        return std::nullopt;
    return LastBackup{Time(std::chrono::milliseconds(stamp)),
                      std::string(rest.substr(hashLength + 2)),
                      std::string(rest.substr(1, hashLength))};
}

std::optional<LastBackup> readNote(const fs::path &file)
{
    try {
        const evidence::SourceFile source(file);
        if (source.size() > longestNote)
            return std::nullopt;
        const auto whole = source.readAll();
        const std::span<const std::uint8_t> bytes = whole;
        return parsed(std::string(bytes.begin(), bytes.end()));
    } catch (const evidence::FileFault &) {
        return std::nullopt;
    }
}

} // namespace

void noteBackup(Project &project, const LastBackup &last)
{
    project.setLocalState(key, written(last));
}

std::optional<LastBackup> lastBackup(const Project &project)
{
    const auto kept = project.localState(key);
    return kept ? parsed(*kept) : std::nullopt;
}

void leaveNote(const fs::path &project, const LastBackup &last)
{
    const fs::path file = noteIn(project);
    const std::string note = written(last);
    evidence::makeFolder(project, "backups");
    evidence::NewFile made(file.parent_path(), file.filename().string());
    made.write({reinterpret_cast<const std::uint8_t *>(note.data()), note.size()});
    made.settle();
    made.publishOver(file.filename().string());
}

bool takeNote(Project &project)
{
    const fs::path file = noteIn(project.folder());
    std::error_code none;
    if (project.isReadOnly() || !fs::exists(fs::symlink_status(file, none)))
        return false;
    const auto left = readNote(file);
    const auto before = lastBackup(project);
    const bool isNew = left && (!before || before->at < left->at);
    if (isNew)
        noteBackup(project, *left);
    fs::remove(file, none);
    return isNew;
}

} // namespace lastrivet::backup
