// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QGuiApplication>

#include <spdlog/spdlog.h>

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("LC_ALL", "C.UTF-8");
    const QGuiApplication application(argc, argv);
    // Here faults are no news.
    spdlog::set_level(spdlog::level::off);
    return Catch::Session().run(argc, argv);
}
