// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/LastBackup.h"

#include "core/base/Sha256.h"
#include "core/project/Project.h"

#include <fmt/format.h>

#include <charconv>

namespace lastrivet::backup {

namespace {

constexpr std::string_view key = "last_backup";
constexpr std::size_t hashLength = 64;

} // namespace

void noteBackup(Project &project, const LastBackup &last)
{
    project.setLocalState(key, fmt::format("{} {} {}", last.at.time_since_epoch().count(),
                                           last.journal_hash, last.place));
}

std::optional<LastBackup> lastBackup(const Project &project)
{
    const auto kept = project.localState(key);
    if (!kept)
        return std::nullopt;
    std::int64_t stamp = 0;
    const auto [end, error] = std::from_chars(kept->data(), kept->data() + kept->size(), stamp);
    const auto rest = std::string_view(*kept).substr(std::size_t(end - kept->data()));
    if (error != std::errc{} || rest.size() < hashLength + 2 ||
        !isSha256(rest.substr(1, hashLength)))
        return std::nullopt;
    return LastBackup{Time(std::chrono::milliseconds(stamp)),
                      std::string(rest.substr(hashLength + 2)),
                      std::string(rest.substr(1, hashLength))};
}

} // namespace lastrivet::backup
