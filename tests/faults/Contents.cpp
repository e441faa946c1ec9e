// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Contents.h"

#include "core/evidence/files/NewFile.h"
#include "tests/support/TestPictures.h"

namespace lastrivet::faults {

namespace fs = std::filesystem;

Contents contentsOf(const fs::path &folder, std::string_view except)
{
    Contents contents;
    for (auto at = fs::recursive_directory_iterator(folder);
         at != fs::recursive_directory_iterator(); ++at) {
        if (at->path().filename() == except)
            at.disable_recursion_pending();
        else if (at->is_regular_file())
            contents[at->path().lexically_relative(folder)] = test::readText(at->path());
    }
    return contents;
}

bool isUnfinished(const fs::path &file)
{
    return file.filename().string().starts_with(evidence::leftoverPrefix);
}

std::vector<std::string> unfinishedIn(const fs::path &folder)
{
    std::vector<std::string> names;
    for (const auto &entry : fs::recursive_directory_iterator(folder)) {
        if (isUnfinished(entry.path()))
            names.push_back(entry.path().filename());
    }
    return names;
}

} // namespace lastrivet::faults
