// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/TemporaryFolder.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/ReadableName.h"
#include "core/evidence/files/FileSum.h"
#include "tests/fuzz/Targets.h"

namespace lastrivet::fuzz {

namespace {

namespace fs = std::filesystem;

/// A project folder with links that lead out of it.
struct Trap {
    Trap()
    {
        fs::create_directories(project / "photos");
        fs::create_directories(folder / "out");
        fs::create_directory_symlink(folder / "out", project / "l");
        fs::create_directory_symlink("../..", project / "photos" / "u");
    }

    TemporaryFolder folder;
    fs::path project = folder / "P";
};

} // namespace

/// The file of a record lies in the project's folder, or nowhere.
void file_name(Input input)
{
    static const Trap trap;
    Media media;
    media.file = textOf(input);
    if (const auto place = evidence::locate(trap.project, media)) {
        const auto inside = place->lexically_relative(fs::canonical(trap.project));
        promised(!inside.empty() && inside.is_relative() && *inside.begin() != "..");
        promised(place->string().find('\0') == std::string::npos);
    }
    const std::string slug = evidence::slug(media.file);
    promised(slug.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == slug.npos);
    const std::string shown = evidence::shownName(media.file);
    promised(shown.find_first_of("\n\r\x1b\x7f") == shown.npos);
    const std::string line = evidence::sumLine("0", media.file);
    promised(line.find('\n') == line.size() - 1);
}

} // namespace lastrivet::fuzz
