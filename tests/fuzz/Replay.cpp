// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/Targets.h"

#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <vector>

namespace fs = std::filesystem;

namespace {

std::size_t replay(const lastrivet::fuzz::Target &target, const fs::path &folder)
{
    std::size_t count = 0;
    for (const auto &entry : fs::directory_iterator(folder)) {
        // The last name that is seen is that of the input that ended the program.
        std::cerr << entry.path().string() << '\n';
        std::ifstream stream(entry.path(), std::ios::binary);
        const std::vector<std::uint8_t> input{std::istreambuf_iterator<char>(stream), {}};
        target.feed(input);
        ++count;
    }
    return count;
}

} // namespace

/// Feeds every kept input to its target: `fuzz_replay CORPUS [TARGET]`.
int main(int count, char **arguments)
{
    if (count < 2)
        return 2;
    const std::string_view wanted = count > 2 ? arguments[2] : "";
    std::size_t all = 0;
    for (const auto &target : lastrivet::fuzz::targets) {
        if (!wanted.empty() && wanted != target.name)
            continue;
        const std::size_t inputs = replay(target, fs::path(arguments[1]) / target.name);
        std::cout << target.name << ": " << inputs << '\n';
        if (inputs == 0)
            return 1;
        all += inputs;
    }
    return all > 0 ? 0 : 1;
}
