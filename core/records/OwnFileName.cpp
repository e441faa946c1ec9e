// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/OwnFileName.h"

#include <filesystem>
#include <fmt/format.h>

namespace lastrivet {

std::string ownFileName(const std::string &file, const std::string &sum, std::int64_t id)
{
    const std::filesystem::path path(file);
    const auto digits = sum.empty() ? fmt::to_string(id) : sum.substr(0, 12);
    auto stem = path.stem().string();
    if (const auto line = stem.rfind('_'); line != std::string::npos) {
        const auto end = stem.substr(line + 1);
        if (sum.empty() ? end == digits : sum.starts_with(end))
            stem.erase(line);
    }
    const auto name = fmt::format("{}_{}{}", stem, digits, path.extension().string());
    return (path.parent_path() / name).generic_string();
}

std::string ownFileName(const Media &media)
{
    return ownFileName(media.file, media.sha256, media.id.value());
}

} // namespace lastrivet
