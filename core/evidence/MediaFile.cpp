// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/MediaFile.h"

#include "core/base/CaseFold.h"
#include "core/base/Utf8.h"
#include "core/evidence/FileKind.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/SourceFile.h"

#include <algorithm>
#include <array>
#include <system_error>

namespace lastrivet::evidence {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t longestShownName = 80;

bool staysInside(const fs::path &relative)
{
    return relative.is_relative() && relative.has_filename() &&
           std::none_of(relative.begin(), relative.end(),
                        [](const fs::path &part) { return part == ".."; });
}

/// Control characters and the backslash are more than letters to lists of sums, to terminals, and
/// to programs of other systems that unpack an archive; so is a colon behind a drive's letter.
bool hasPlainLetters(std::string_view name)
{
    return name.substr(1, 1) != ":" && std::none_of(name.begin(), name.end(), [](char c) {
               return static_cast<unsigned char>(c) < 0x20 || c == 0x7f || c == '\\';
           });
}

/// What the program itself keeps in a project folder, or puts into an archive beside the files.
bool isReserved(const fs::path &file)
{
    static constexpr std::array<std::string_view, 4> kept{"backups", "cache", "read-me-first.txt",
                                                          "sha256sums"};
    const std::string first = asciiLower(file.begin()->string());
    return first.starts_with("records.") || first.starts_with('.') ||
           std::find(kept.begin(), kept.end(), first) != kept.end();
}

} // namespace

bool mayNameFile(std::string_view name)
{
    return !name.empty() && hasPlainLetters(name) && staysInside(name) && !isReserved(name);
}

std::optional<fs::path> locate(const fs::path &projectFolder, const Media &media)
{
    return locate(projectFolder, media.file);
}

std::optional<fs::path> locate(const fs::path &projectFolder, std::string_view file)
{
    if (!mayNameFile(file))
        return std::nullopt;
    const fs::path relative(file);
    std::error_code error;
    const fs::path root = fs::weakly_canonical(projectFolder, error);
    // Without its root the name would be looked for in the folder that one is in.
    const fs::path target = error ? fs::path() : fs::weakly_canonical(root / relative, error);
    const auto [rootEnd, targetPart] =
        std::mismatch(root.begin(), root.end(), target.begin(), target.end());
    if (error || rootEnd != root.end() || targetPart == target.end())
        return std::nullopt;
    return target;
}

std::optional<fs::path> locateToOpen(const fs::path &projectFolder, const Media &media)
{
    auto place = locate(projectFolder, media);
    if (!place)
        return std::nullopt;
    try {
        std::array<std::uint8_t, sniffedBytes> beginning{};
        const std::size_t count = SourceFile(*place).readAt(0, beginning);
        const auto kind = sniff(std::span(beginning).first(count));
        return kind && fitsKind(*kind, place->extension().string()) ? place : std::nullopt;
    } catch (const FileFault &) {
        return std::nullopt;
    }
}

std::string_view whyNotLocated(std::string_view file)
{
    if (file.empty() || !staysInside(file))
        return "The file {0} would lie outside the project's folder.";
    if (!hasPlainLetters(file))
        return "The file {0} has letters in its name that mean something else on other systems, as "
               "a backslash does; it is not looked for.";
    if (isReserved(file))
        return "The file {0} would lie among what the program itself keeps in the project's "
               "folder.";
    return "The file {0} would lie behind a link that leads out of the project's folder; it is not "
           "looked for.";
}

std::string shownName(const fs::path &file)
{
    std::string name = file.filename().string();
    for (auto wrong = firstNotUtf8(name); wrong; wrong = firstNotUtf8(name))
        name[*wrong] = '?';
    std::ranges::replace_if(
        name, [](unsigned char c) { return c < 0x20 || c == 0x7f; }, '?');
    return name.size() <= longestShownName ? name
                                           : std::string(prefixOf(name, longestShownName)) + "…";
}

} // namespace lastrivet::evidence
