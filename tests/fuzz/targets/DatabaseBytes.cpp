// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/HostileProject.h"
#include "tests/fuzz/Targets.h"

namespace lastrivet::fuzz {

/// Each four bytes of the input put their last one where their first three say. The whole file as
/// input would spend the time on what the first check refuses.
void database_bytes(Input input)
{
    auto bytes = HostileProject::soundDatabase();
    for (; input.size() >= 4; input = input.subspan(4)) {
        const std::size_t place = std::size_t{input[0]} << 16 | input[1] << 8 | input[2];
        bytes[place % bytes.size()] = input[3];
    }
    const HostileProject project;
    project.writeDatabase(bytes);
    project.use();
}

} // namespace lastrivet::fuzz
