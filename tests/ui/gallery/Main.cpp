// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Clock.h"
#include "core/base/Moment.h"
#include "tests/ui/gallery/Gallery.h"
#include "ui/shell/Executor.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/NewProjectForm.h"
#include "ui/shell/NoticeBars.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/Speech.h"
#include "ui/shell/StartPage.h"
#include "ui/shell/Theme.h"

#include <QApplication>
#include <QComboBox>
#include <QSettings>
#include <QTemporaryDir>

#include <cstdio>
#include <optional>

// Takes a picture of every page of a project, for people to look at:
// ui_gallery PROJECT FOLDER WIDTH HEIGHT light|dark [YYYY-MM-DD] [en|de|fr]
namespace {

using namespace lastrivet;

/// The evening of a given day, or the computer's clock.
class EveningClock final : public Clock {
public:
    explicit EveningClock(std::optional<Moment> day)
        : m_day(day)
    {
    }
    std::chrono::sys_time<std::chrono::milliseconds> now() const override
    {
        return m_day ? std::chrono::sys_time<std::chrono::milliseconds>{m_day->day()} +
                           std::chrono::hours{19}
                     : SystemClock().now();
    }

private:
    std::optional<Moment> m_day;
};

} // namespace

int main(int argc, char *argv[])
{
    if (argc < 6) {
        std::fputs("ui_gallery PROJECT FOLDER WIDTH HEIGHT light|dark [YYYY-MM-DD] [en|de|fr]\n",
                   stderr);
        return 2;
    }
    QApplication application(argc, argv);
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    const EveningClock clock(argc > 6 ? Moment::parse(argv[6]) : std::nullopt);
    const QTemporaryDir home;
    QSettings settings(home.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    ui::Speech speech;
    speech.speak(argc > 7 ? QString::fromLocal8Bit(argv[7]) : QStringLiteral("en"));
    ui::Theme theme(application);
    ui::InlineExecutor executor;
    ui::MainWindow window({settings, executor, theme, clock});
    theme.choose(QLatin1String(argv[5]) == QLatin1String("dark") ? ui::Theme::Choice::Dark
                                                                 : ui::Theme::Choice::Light);
    window.resize(QString::fromLocal8Bit(argv[3]).toInt(), QString::fromLocal8Bit(argv[4]).toInt());
    window.show();
    test::Gallery gallery(window, QString::fromLocal8Bit(argv[2]));
    gallery.take(QStringLiteral("start"));
    // The starters are the last choice of the form.
    window.startPage().form().findChildren<QComboBox *>().last()->setCurrentIndex(1);
    gallery.take(QStringLiteral("start-parts"));
    if (!window.openFolder(QString::fromLocal8Bit(argv[1])))
        return 3;
    // That the day of the pictures is before the journal's is no matter here.
    window.view()->notices().dismissAll();
    gallery.takePages();
    gallery.takeParts();
    gallery.takeBench();
    gallery.takeShell(settings, theme);
    gallery.takeLog();
    gallery.takeHours();
    gallery.takeClosings();
    gallery.takeInspection();
    gallery.takeCertificate();
    gallery.takePhotos();
    gallery.takeCapture();
    gallery.takePrints();
    gallery.makePapers();
    gallery.takeStores();
    gallery.takeBackups();
    gallery.takeJournal();
    gallery.takeWorkshop();
    gallery.takeWeighing();
    return 0;
}
