// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Worker.h"

#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <spdlog/spdlog.h>

int main(int argc, char **argv)
{
    // Here faults are no news.
    spdlog::set_level(spdlog::level::off);
    if (argc > 1 && std::string_view(argv[1]) == "work")
        return lastrivet::faults::work({argv + 2, argv + argc});
    return Catch::Session().run(argc, argv);
}
