// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Clock.h"
#include "core/project/Project.h"
#include "tests/support/FakeClock.h"
#include "tests/support/ReferenceProject.h"
#include "tests/support/TemporaryFolder.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Executor.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QSettings>
#include <QThread>

#include <cstdio>
#include <ctime>
#include <fmt/format.h>
#include <functional>

// How long the window of ten builders' lifetimes blocks: opening each page, and usual actions.
// pages_bench [PAGE]; goals are 200 ms to open a page, 100 ms for the longest block of an action.
// Beside what the clock says stands what the processor did in the window's thread, which alone is
// judged: the rest went to other programs, or to the disk.
namespace {

using namespace lastrivet;

constexpr double pageGoal = 200;
constexpr double actionGoal = 100;

struct Took {
    double clock = 0;
    double processor = 0;
};

/// In milliseconds, of this thread alone.
double processorNow()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return double(now.tv_sec) * 1e3 + double(now.tv_nsec) / 1e6;
}

Took timeOf(const std::function<void()> &body)
{
    QElapsedTimer clock;
    clock.start();
    const double before = processorNow();
    body();
    return {double(clock.nsecsElapsed()) / 1e6, processorNow() - before};
}

Took longer(const Took &one, const Took &other)
{
    return {std::max(one.clock, other.clock), std::max(one.processor, other.processor)};
}

/// Runs the event loop until nothing is left to do, and says how long its longest turn took.
Took settle()
{
    Took longest;
    QElapsedTimer quiet;
    quiet.start();
    while (quiet.elapsed() < 300) {
        const Took turn = timeOf([] { QCoreApplication::processEvents(QEventLoop::AllEvents); });
        longest = longer(longest, turn);
        if (turn.processor > 2)
            quiet.restart();
        else
            QThread::msleep(1);
    }
    return longest;
}

void report(const std::string &what, const Took &took, double goal)
{
    fmt::print("{:<52} {:9.1f} ms {:9.1f} ms{}\n", what, took.clock, took.processor,
               took.processor > goal ? fmt::format("   over {:.0f}", goal) : std::string());
    std::fflush(stdout);
}

void openPages(ui::MainWindow &window, const QString &only)
{
    for (const auto &page : ui::pageList()) {
        if (!only.isEmpty() && page.name() != only)
            continue;
        const auto open = [&] {
            window.view()->open(page.id);
            window.repaint();
        };
        const std::string name = page.name().toStdString();
        report(name + ", opened first", timeOf(open), pageGoal);
        report(name + ", longest turn after", settle(), actionGoal);
        report(name + ", opened again", timeOf(open), pageGoal);
        settle();
    }
}

/// A log entry, on each page in turn: what is shown follows the change.
void changeOnPages(ui::MainWindow &window, const QString &only)
{
    auto &session = window.view()->session();
    for (const auto &page : ui::pageList()) {
        if (!only.isEmpty() && page.name() != only)
            continue;
        window.view()->open(page.id);
        settle();
        const Took change = timeOf([&] {
            session.change(QStringLiteral("Log"), [](Edit &edit) {
                WorkSession entry;
                entry.began = edit.now();
                entry.minutes = Minutes{45};
                entry.component_id = edit.records().components.begin()->id;
                edit.put(entry);
            });
        });
        report(page.name().toStdString() + ", a log entry", longer(change, settle()), actionGoal);
    }
}

void visitRecords(ui::MainWindow &window)
{
    const auto records = window.view()->session().records();
    const auto go = [&](const char *what, RecordRef record) {
        const Took took = timeOf([&] { window.view()->goTo(record); });
        report(std::string("go to ") + what, longer(took, settle()), actionGoal);
    };
    go("a part", {RecordType::Component, records->components.begin()->id.value()});
    go("a squawk", {RecordType::Squawk, records->squawks.begin()->id.value()});
    go("a closing", {RecordType::Closing, records->closings.begin()->id.value()});
    go("a log entry", {RecordType::WorkSession, records->work_sessions.begin()->id.value()});
    go("a photo", {RecordType::Media, records->media.begin()->id.value()});
    const Took undone = timeOf([&] { window.view()->session().undo(); });
    report("undo", longer(undone, settle()), actionGoal);
}

} // namespace

int main(int argc, char *argv[])
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const test::TemporaryFolder place;
    const test::FakeClock clock;
    const auto folder = place / "Load.lastrivet";
    test::makeReferenceProject(folder, clock);
    QSettings settings(ui::pathText(place / "settings.ini"), QSettings::IniFormat);
    ui::Theme theme(application);
    ui::ThreadExecutor executor;
    ui::MainWindow window({settings, executor, theme, clock});
    window.resize(1280, 720);
    window.show();
    fmt::print("{:<52} {:>12} {:>12}\n", "", "clock", "processor");
    report("project opened, first page painted", timeOf([&] {
               window.openFolder(ui::pathText(folder));
               window.repaint();
           }),
           pageGoal);
    const QString only = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
    openPages(window, only);
    changeOnPages(window, only);
    if (only.isEmpty())
        visitRecords(window);
    return 0;
}
