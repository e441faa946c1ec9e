// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include "tests/support/TemporaryFolder.h"

#include <QApplication>
#include <QFont>
#include <QLocale>

namespace {

/// One screen, one font, one locale, and no settings of whoever runs the tests.
void settleSurroundings(const std::string &home)
{
    qputenv("HOME", home.c_str());
    for (const char *name :
         {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR"})
        qputenv(name, home.c_str());
    qputenv("TZ", "UTC");
    qputenv("LC_ALL", "C.UTF-8");
    qputenv("LANG", "C.UTF-8");
    qunsetenv("LANGUAGE");
    qputenv("QT_ACCESSIBILITY", "1");
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
}

} // namespace

int main(int argc, char *argv[])
{
    const lastrivet::test::TemporaryFolder home;
    settleSurroundings(home.path().string());
    QApplication application(argc, argv);
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::Canada));
    return Catch::Session().run(argc, argv);
}
