// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later

// One start, to be timed from outside as a whole process: start_bench shows a bare main window of
// Qt, start_bench PROJECT the program's own with the project open and its first page painted. Both
// end then, or after IDLE ms more when that is given, and say how much memory they had.
#include "core/base/Clock.h"
#include "tests/support/TemporaryFolder.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Executor.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/PersonalSettings.h"
#include "ui/shell/ProjectOpening.h"
#include "ui/shell/Theme.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QMainWindow>
#include <QSettings>

#include <fmt/format.h>

#include <charconv>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

using namespace lastrivet;

namespace {

/// Resident memory that belongs to this process alone, in MB, from proc(5).
double ownMemory()
{
    std::ifstream rollup("/proc/self/smaps_rollup");
    long kilobytes = 0;
    for (std::string line; std::getline(rollup, line);) {
        if (!line.starts_with("Private_"))
            continue;
        const auto digit = line.find_first_of("0123456789");
        long value = 0;
        std::from_chars(line.data() + digit, line.data() + line.size(), value);
        kilobytes += value;
    }
    return double(kilobytes) / 1024;
}

void stay(int milliseconds)
{
    QElapsedTimer clock;
    clock.start();
    do {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
    } while (clock.elapsed() < milliseconds);
}

void end(int idle)
{
    QCoreApplication::processEvents();
    const double painted = ownMemory();
    if (idle > 0)
        stay(idle);
    fmt::print("memory {:.0f} MB painted, {:.0f} MB idle\n", painted, ownMemory());
}

} // namespace

int main(int argc, char *argv[])
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    const int idle = arguments.size() > 2 ? arguments.at(2).toInt() : 0;
    if (arguments.size() < 2) {
        QMainWindow window;
        window.resize(1280, 720);
        window.show();
        window.repaint();
        end(0);
        return 0;
    }
    const test::TemporaryFolder place;
    const SystemClock clock;
    QSettings settings(ui::pathText(place / "settings.ini"), QSettings::IniFormat);
    ui::ProjectOpening opening(arguments.at(1), settings, clock);
    ui::Theme theme(application, ui::PersonalSettings(settings).theme());
    ui::ThreadExecutor executor;
    ui::MainWindow window({settings, executor, theme, clock});
    window.resize(1280, 720);
    if (!window.open(opening))
        return 1;
    window.show();
    window.repaint();
    end(idle);
    // Threads that are still at work are no part of the start; their end would be waited for.
    std::fflush(nullptr);
    std::filesystem::remove_all(place.path());
    std::_Exit(0);
}
