// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Clock.h"
#include "ui/shell/Demo.h"
#include "ui/shell/Executor.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/PageList.h"
#include "ui/shell/PersonalSettings.h"
#include "ui/shell/ProjectOpening.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/Speech.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/Density.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QSettings>
#include <QStandardPaths>

#include <algorithm>
#include <array>
#include <iostream>
#include <memory>
#include <optional>
#include <string_view>

namespace {

using namespace lastrivet;

/// The demo that app/run.sh made, when the program runs from its build folder; else the one that
/// the package brought, to be made in the user's data folder.
ui::Demo demo()
{
    const QDir programs(QCoreApplication::applicationDirPath());
    const QString built =
        QDir::cleanPath(programs.filePath(QStringLiteral("../../demo/Demo.lastrivet")));
    if (QDir(built).exists())
        return {built, {}};
    const QDir own(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation));
    return {own.filePath(QStringLiteral("lastrivet/Demo.lastrivet")),
            programs.filePath(QStringLiteral("../share/lastrivet/demo/demo.json"))};
}

void declareArguments(QCommandLineParser &parser)
{
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("project"),
                                 QCoreApplication::translate("Main", "a project folder to open"),
                                 QStringLiteral("[project]"));
}

/// Answers --help and --version without a display, and ends the program then; returns when neither
/// is asked for.
void answerInTerminal(int argc, char *argv[])
{
    static constexpr std::array<std::string_view, 5> words{"-h", "--help", "--help-all", "-v",
                                                           "--version"};
    const bool isAsked = std::any_of(argv + std::min(argc, 1), argv + argc, [](const char *given) {
        return std::find(words.begin(), words.end(), given) != words.end();
    });
    if (!isAsked)
        return;
    const QCoreApplication application(argc, argv);
    QCommandLineParser parser;
    declareArguments(parser);
    parser.process(application);
}

/// Keeps one window open, and replaces it by a new one when it asks for that.
class WindowHost {
public:
    WindowHost(QSettings &settings, ui::Executor &executor, ui::Theme &theme, const Clock &clock)
        : m_settings(settings)
        , m_executor(executor)
        , m_theme(theme)
        , m_clock(clock)
    {
    }

    /// Shows the project on a page, or the start page when `opening` is null.
    void show(ui::ProjectOpening *opening, ui::PageId page = ui::PageId::Today)
    {
        const ui::PersonalSettings chosen(m_settings);
        m_speech.speak(chosen.language());
        ui::setTallRows(chosen.hasTallRows());
        m_window = std::make_unique<ui::MainWindow>(
            ui::MainWindow::Surroundings{m_settings, m_executor, m_theme, m_clock});
        m_window->setDemo(demo());
        if (opening)
            m_window->open(*opening, page);
        QObject::connect(
            m_window.get(), &ui::MainWindow::renewalWanted, m_window.get(), [this] { renew(); },
            Qt::QueuedConnection);
        m_window->show();
    }

private:
    void renew()
    {
        const QString folder = m_window->openedFolder();
        const ui::ProjectView *view = m_window->view();
        const auto page = view ? view->current() : ui::PageId::Today;
        QGuiApplication::setQuitOnLastWindowClosed(false);
        // It may refuse: something may have been begun since it asked for this.
        if (m_window->close()) {
            // The old window is still sending the signal; it is deleted by the event loop.
            m_window.release()->deleteLater();
            std::optional<ui::ProjectOpening> opening;
            if (!folder.isEmpty())
                opening.emplace(folder, m_settings, m_clock);
            show(opening ? &*opening : nullptr, page);
        }
        QGuiApplication::setQuitOnLastWindowClosed(true);
    }

    QSettings &m_settings;
    ui::Executor &m_executor;
    ui::Theme &m_theme;
    const Clock &m_clock;
    ui::Speech m_speech;
    std::unique_ptr<ui::MainWindow> m_window;
};

} // namespace

int main(int argc, char *argv[])
{
    QCoreApplication::setApplicationName(QStringLiteral("Lastrivet"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LASTRIVET_VERSION));
    answerInTerminal(argc, argv);
    QApplication application(argc, argv);
    QCommandLineParser parser;
    declareArguments(parser);
    parser.process(application);
    if (parser.positionalArguments().size() > 1) {
        std::cerr << QCoreApplication::translate("Main", "One project can be opened at a time.")
                         .toStdString()
                  << '\n';
        return 2;
    }

    const SystemClock clock;
    QSettings settings = ui::settingsOfUser();
    // Begun before anything else, so that the project is read while the window is built.
    std::optional<ui::ProjectOpening> opening;
    if (const QStringList arguments = parser.positionalArguments(); !arguments.isEmpty())
        opening.emplace(arguments.front(), settings, clock);
    ui::Theme theme(application, ui::PersonalSettings(settings).theme());
    ui::ThreadExecutor executor;
    WindowHost host(settings, executor, theme, clock);
    host.show(opening ? &*opening : nullptr);
    return QApplication::exec();
}
