// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/starters/StarterLibrary.h"

#include "core/base/Error.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace lastrivet {

namespace fs = std::filesystem;

namespace {

Starter readFile(const fs::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(stream), {}};
    if (!stream)
        throw UnreadableInput(Message{"{0} could not be read.", {file.string()}});
    return readStarter(text);
}

std::vector<Starter> startersIn(const fs::path &folder)
{
    std::vector<Starter> found;
    std::error_code unreadable;
    for (const fs::directory_entry &entry : fs::directory_iterator(folder, unreadable)) {
        if (entry.path().extension() == ".json")
            found.push_back(readFile(entry.path()));
    }
    std::ranges::sort(found, {}, &Starter::title);
    return found;
}

} // namespace

std::vector<Starter> standardStarters()
{
    auto found = startersIn(fs::path(LASTRIVET_RESOURCES) / "starters");
    return found.empty() ? startersIn("/usr/share/lastrivet/starters") : found;
}

} // namespace lastrivet
