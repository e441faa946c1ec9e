// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <clocale>
#include <cstdlib>
#include <iostream>
#include <string_view>

namespace {

/// As in a window, where Qt takes over the computer's locale.
bool takeOverLocale()
{
    return std::setlocale(LC_ALL, "") && std::string_view(std::localeconv()->decimal_point) == ",";
}

} // namespace

int main(int argc, char *argv[])
{
    // Rule profiles of whoever runs the tests are none of theirs.
    ::setenv("XDG_DATA_HOME", "/nowhere", 1);
    if (std::getenv("LASTRIVET_COMMA") && !takeOverLocale()) {
        std::cerr << "The computer's locale has no decimal comma.\n";
        return 1;
    }
    return Catch::Session().run(argc, argv);
}
