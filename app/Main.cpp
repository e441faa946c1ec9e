// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Clock.h"
#include "ui/shell/Executor.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Theme.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QSettings>

namespace {

/// The demo that app/run.sh made, when the program runs from where it was built.
QString demoFolder()
{
    const QDir beside(QCoreApplication::applicationDirPath());
    const QString demo = beside.filePath(QStringLiteral("../../demo/Demo.lastrivet"));
    return QDir(demo).exists() ? QDir::cleanPath(demo) : QString();
}

} // namespace

int main(int argc, char *argv[])
{
    using namespace lastrivet;
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("Lastrivet"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LASTRIVET_VERSION));
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("project"),
                                 QCoreApplication::translate("Main", "a project folder to open"));
    parser.process(application);

    const SystemClock clock;
    ui::Theme theme(application);
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("Lastrivet"),
                       QStringLiteral("lastrivet"));
    ui::ThreadExecutor executor;
    ui::MainWindow window({settings, executor, theme, clock});
    window.setDemo(demoFolder());
    const QStringList arguments = parser.positionalArguments();
    if (!arguments.isEmpty())
        window.openFolder(arguments.front());
    window.show();
    return QApplication::exec();
}
