// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <spdlog/spdlog.h>

int main(int argc, char **argv)
{
    // Here faults are no news.
    spdlog::set_level(spdlog::level::off);
    return Catch::Session().run(argc, argv);
}
