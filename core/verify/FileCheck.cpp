// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/FileSum.h"
#include "core/evidence/files/NewFile.h"
#include "core/storage/FilesNamed.h"
#include "core/storage/StrayDatabases.h"
#include "core/verify/Checks.h"
#include "core/verify/Leftovers.h"

#include <optional>
#include <set>
#include <string>

namespace lastrivet::verify_detail {

namespace fs = std::filesystem;

namespace {

std::optional<std::string> hashOfFile(const fs::path &file)
{
    try {
        return evidence::sumOf(evidence::SourceFile(file));
    } catch (const evidence::FileFault &) {
        return std::nullopt;
    }
}

/// Tells the first file that there is nothing to compare with, and how many more there are.
void noteUncompared(const std::string &first, Verification &verification)
{
    const auto others = verification.files_without_sha256 - 1;
    if (others == 0)
        verification.notes.push_back({"The file {0} has no SHA-256 on record: whether it is as it "
                                      "came cannot be told.",
                                      {first}});
    else
        verification.notes.push_back({"The file {0}, like {1} more, has no SHA-256 on record: "
                                      "whether it is as it came cannot be told.",
                                      {first, std::to_string(others)}});
}

/// False when the file is there and nothing on record says what should be in it.
bool checkFile(const Media &media, const storage::ProjectFolder &folder, Findings &findings,
               Verification &verification)
{
    const auto tell = [&](std::string_view pattern) {
        findings.add({pattern, {media.file}}, "media", media.id.value());
    };
    const auto path = evidence::locate(folder.root(), media);
    if (!path) {
        tell(evidence::whyNotLocated(media.file));
        return true;
    }
    std::error_code none;
    if (!fs::is_regular_file(*path, none)) {
        tell("The file {0} is missing.");
        return true;
    }
    ++verification.files;
    const auto hash = hashOfFile(*path);
    if (!hash)
        tell("The file {0} cannot be read.");
    else if (!media.sha256.empty() && *hash != media.sha256)
        tell("The file {0} is not as it was taken in: its SHA-256 has changed.");
    return !hash || !media.sha256.empty();
}

void checkUnnamed(const fs::path &folder, const fs::path &root, const std::set<std::string> &named,
                  Findings &findings)
{
    std::error_code failure;
    for (auto at = fs::recursive_directory_iterator(folder, failure);
         !failure && at != fs::recursive_directory_iterator(); at.increment(failure)) {
        const auto name = at->path().filename().string();
        if (at->is_directory(failure)) {
            if (name.starts_with("."))
                at.disable_recursion_pending();
            continue;
        }
        const auto file = at->path().lexically_relative(root).generic_string();
        // Half-written files are reported as such.
        if (!named.contains(file) && !name.starts_with(evidence::leftoverPrefix))
            findings.add({"No record names the file {0}.", {file}});
    }
}

void checkStrays(const storage::ProjectFolder &folder, Findings &findings)
{
    for (const auto &stray : storage::strayDatabases(folder)) {
        findings.add({"A second database lies in the project's folder: {0}. What was written to "
                      "it is not in the records.",
                      {stray.filename().string()}});
    }
}

} // namespace

std::set<std::string> namedFiles(const Records &records, storage::Database &database)
{
    auto named = storage::filesEverNamed(database);
    for (const auto &media : records.media)
        named.insert(storage::fileName(media.file));
    return named;
}

void checkFiles(const Records &records, storage::Database &database,
                const storage::ProjectFolder &folder, std::stop_token stop,
                Verification &verification)
{
    Findings findings(verification, "file");
    std::string uncompared;
    for (const auto &media : records.media) {
        if (stop.stop_requested())
            return;
        if (!checkFile(media, folder, findings, verification) &&
            ++verification.files_without_sha256 == 1)
            uncompared = media.file;
    }
    if (verification.files_without_sha256 > 0)
        noteUncompared(uncompared, verification);
    const auto named = namedFiles(records, database);
    checkUnnamed(folder.photos(), folder.root(), named, findings);
    checkUnnamed(folder.documents(), folder.root(), named, findings);
    for (const auto &file : leftovers(folder, named)) {
        findings.add({"The file {0} is half-written: a program was interrupted, unless one is "
                      "taking files in just now.",
                      {file.lexically_relative(folder.root()).generic_string()}});
    }
    checkStrays(folder, findings);
}

} // namespace lastrivet::verify_detail
