// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/FileSum.h"

#include "core/base/Sha256.h"

#include <fmt/format.h>

#include <vector>

namespace lastrivet::evidence {

std::string sumOf(const SourceFile &file,
                  const std::function<void(std::span<const std::uint8_t>)> &each)
{
    Sha256 sum;
    std::vector<std::uint8_t> block(256 * 1024);
    std::uint64_t offset = 0;
    while (const std::size_t count = file.readAt(offset, block)) {
        const auto bytes = std::span<const std::uint8_t>(block).first(count);
        sum.add(bytes);
        if (each)
            each(bytes);
        offset += count;
    }
    return hex(sum.digest());
}

std::string sumLine(const std::string &sum, const std::string &name)
{
    std::string escaped;
    for (const char c : name)
        escaped += c == '\\' ? "\\\\" : c == '\n' ? "\\n" : std::string(1, c);
    // A backslash before the sum says that the name is escaped.
    return fmt::format("{}{}  {}\n", escaped == name ? "" : "\\", sum, escaped);
}

} // namespace lastrivet::evidence
