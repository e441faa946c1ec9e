// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Clock.h"
#include "tests/ui/StoresGallery.h"
#include "tests/ui/support/Looks.h"
#include "ui/backup/BackupForm.h"
#include "ui/backup/RestoreForm.h"
#include "ui/certificate/CertificatePage.h"
#include "ui/certificate/CrossCheckView.h"
#include "ui/certificate/MajorPortionView.h"
#include "ui/certificate/PapersView.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/ClosingsPage.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/VisitBoard.h"
#include "ui/closings/VisitForm.h"
#include "ui/convert/QtText.h"
#include "ui/daylog/EntryEdit.h"
#include "ui/daylog/LogbookForm.h"
#include "ui/hours/HoursPage.h"
#include "ui/journal/ConflictsView.h"
#include "ui/journal/JournalPage.h"
#include "ui/photos/PhotoBar.h"
#include "ui/photos/PhotoGrid.h"
#include "ui/photos/PhotosPage.h"
#include "ui/photos/PictureView.h"
#include "ui/prints/PrintForm.h"
#include "ui/rules/RulesDraft.h"
#include "ui/rules/RulesView.h"
#include "ui/shell/Executor.h"
#include "ui/shell/Finder.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/NewProjectForm.h"
#include "ui/shell/NoticeBars.h"
#include "ui/shell/Page.h"
#include "ui/shell/PageList.h"
#include "ui/shell/PersonalSettings.h"
#include "ui/shell/Preferences.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/Speech.h"
#include "ui/shell/StartPage.h"
#include "ui/workshop/TopicView.h"
#include "ui/workshop/WorkshopPage.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QSettings>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

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

class Gallery {
public:
    Gallery(ui::MainWindow &window, QString folder)
        : m_window(window)
        , m_folder(std::move(folder))
    {
        QDir().mkpath(m_folder);
    }

    void take(const QString &name) { take(name, m_window); }

    void take(const QString &name, QWidget &widget)
    {
        for (int i = 0; i < 5; ++i)
            QCoreApplication::processEvents();
        for (const QString &cut : test::cutTexts(widget))
            std::fprintf(stderr, "%s: cut: %s\n", qPrintable(name), qPrintable(cut));
        widget.grab().save(QDir(m_folder).filePath(name + QStringLiteral(".png")));
    }

    void takePages()
    {
        for (const auto &page : ui::pageList()) {
            m_window.view()->open(page.id);
            take(page.name().toLower());
        }
    }

    /// The page of parts in its other guises: steps drawn, deviations of the whole aircraft, the
    /// preview of a copy, a list that is brought in.
    void takeParts()
    {
        auto &view = *m_window.view();
        const auto records = view.session().records();
        for (const Step &step : records->steps) {
            if (!step.withdrawn_on && !step.after.empty()) {
                view.goTo({RecordType::Step, step.id.value()});
                break;
            }
        }
        press(QStringLiteral("Drawn"));
        take(QStringLiteral("parts-drawn"));
        press(QStringLiteral("Drawn"));
        if (!records->deviations.isEmpty())
            view.goTo({RecordType::Deviation, records->deviations.begin()->id.value()});
        take(QStringLiteral("parts-deviation"));
        for (const Fastener &fastener : records->fasteners) {
            if (fastener.withdrawn_on || !fastener.fitted_on || fastener.torqued_on ||
                !fastener.torque_max)
                continue;
            view.goTo({RecordType::Fastener, fastener.id.value()});
            take(QStringLiteral("parts-fasteners"));
            break;
        }
        for (const Measurement &measurement : records->measurements) {
            if (measurement.what != "Right sender, full")
                continue;
            view.goTo({RecordType::Measurement, measurement.id.value()});
            take(QStringLiteral("parts-measurements"));
            break;
        }
        press(QStringLiteral("The whole aircraft"));
        take(QStringLiteral("parts-whole"));
        if (records->components.isEmpty())
            return;
        view.goTo({RecordType::Component, records->components.begin()->id.value()});
        press(QStringLiteral("Copy…"));
        take(QStringLiteral("parts-copy"));
        press(QStringLiteral("Leave it"));
    }

    void takeBench()
    {
        m_window.toggleBench();
        take(QStringLiteral("bench"));
        m_window.toggleBench();
    }

    /// The log with a line half typed, with its clock, and while it is printed.
    void takeLog()
    {
        m_window.view()->open(ui::PageId::Log);
        auto &line = *m_window.view()->findChild<ui::EntryEdit *>();
        line.setText(QStringLiteral("yesterday 1h31 LF + RF with Irja 45m paid, done 99: primed"));
        take(QStringLiteral("log-typed"));
        line.clear();
        m_window.view()->session().setTimer(
            RunningTimer{m_window.view()->session().now(), {}, {}, {}});
        m_window.view()->findChild<ui::LogbookForm *>()->start();
        take(QStringLiteral("log-clock"));
        m_window.view()->open(ui::PageId::Today);
        take(QStringLiteral("today-clock"));
        m_window.view()->session().setTimer(std::nullopt);
    }

    /// One closing of each state, opened.
    void takeClosings()
    {
        const auto answer = m_window.view()->session().answer();
        for (std::size_t i = 0; i < Words<readiness::State>::list.size(); ++i) {
            for (const auto &closing : answer->closings) {
                if (closing.state != readiness::State(i) || !closing.begun)
                    continue;
                m_window.view()->goTo({RecordType::Closing, closing.id.value()});
                take(QStringLiteral("closing-") + ui::toQt(word(closing.state)));
                break;
            }
        }
    }

    /// The places of the certificate, and rules with something wrong in them.
    void takeCertificate()
    {
        auto &view = *m_window.view();
        view.open(ui::PageId::Certificate);
        auto &page = static_cast<ui::CertificatePage &>(view.page(ui::PageId::Certificate));
        for (const CertificateDocument &document : view.session().records()->certificate_documents)
            page.showRecord({RecordType::CertificateDocument, document.id.value()});
        take(QStringLiteral("certificate-document"));
        page.open(page.crossCheck());
        take(QStringLiteral("certificate-facts"));
        page.open(page.majorPortion());
        take(QStringLiteral("certificate-portion"));
        page.open(page.rules());
        take(QStringLiteral("certificate-rules"));
        Profile wrong = page.rules().draft().profile();
        wrong.documents.emplace_back();
        page.rules().draft().begin(wrong);
        press(QStringLiteral("Show it"));
        take(QStringLiteral("certificate-rules-wrong"));
        page.open(page.papers());
    }

    /// Photos by part, what is missing, and the first one with marks opened.
    void takePhotos()
    {
        m_window.view()->open(ui::PageId::Photos);
        auto *page = static_cast<ui::PhotosPage *>(&m_window.view()->page(ui::PageId::Photos));
        auto *bar = page->findChild<ui::PhotoBar *>();
        bar->choose(ui::PhotoBar::Which::Missing);
        take(QStringLiteral("photos-missing"));
        bar->choose(ui::PhotoBar::Which::All);
        bar->chooseOrder(ui::PhotoOrder::ByPart);
        take(QStringLiteral("photos-by-part"));
        for (const Media &media : m_window.view()->session().records()->media) {
            if (media.annotations.empty())
                continue;
            page->showRecord({RecordType::Media, media.id.value()});
            auto *grid = page->findChild<ui::PhotoGrid *>();
            Q_EMIT grid->activated(grid->currentIndex());
            take(QStringLiteral("photos-open"));
            page->findChild<ui::PictureView *>()->marks().choose(0);
            take(QStringLiteral("photos-mark-chosen"));
            break;
        }
    }

    /// The line for a new squawk, over a page that shows a part.
    void takeCapture()
    {
        m_window.view()->open(ui::PageId::Parts);
        m_window.view()->startSquawk();
        take(QStringLiteral("squawk-capture"));
    }

    /// The form of papers, with each paper chosen.
    void takePrints()
    {
        for (int kind = 0; kind < ui::printKindCount; ++kind) {
            m_window.printForm().open(m_window.view()->session(), ui::PrintKind(kind));
            take(QStringLiteral("print-%1").arg(kind));
        }
        m_window.printForm().hide();
    }

    /// The long papers themselves, as PDF.
    void makePapers()
    {
        for (const ui::PrintKind kind : {ui::PrintKind::MajorPortion, ui::PrintKind::FinalFile}) {
            ui::PrintWish wish;
            wish.kind = kind;
            wish.choices = ui::usualChoices();
            wish.file = QDir(m_folder).filePath(QStringLiteral("paper-%1.pdf").arg(int(kind)));
            ui::carryOut(m_window.view()->session(), wish);
        }
    }

    void takeStores()
    {
        test::takeStores(*m_window.view(), [this](const QString &name, QWidget *over) {
            take(name, over ? *over : m_window);
        });
    }

    void takeBackups()
    {
        m_window.view()->open(ui::PageId::Today);
        m_window.backupForm().open(m_window.view()->backups());
        take(QStringLiteral("backup"));
        m_window.backupForm().hide();
        m_window.restoreForm().open();
        take(QStringLiteral("restore"));
        m_window.restoreForm().hide();
    }

    /// What lies over the pages.
    void takeShell(QSettings &settings, ui::Theme &theme)
    {
        m_window.view()->open(ui::PageId::Today);
        m_window.openFinder();
        take(QStringLiteral("finder"));
        m_window.finder().line().setText(QStringLiteral("wing"));
        take(QStringLiteral("finder-wing"));
        m_window.finder().hide();
        ui::Preferences preferences(ui::PersonalSettings(settings), theme,
                                    &m_window.view()->session(), m_window.openedFolder(),
                                    &m_window);
        preferences.show();
        take(QStringLiteral("preferences"), preferences);
    }

    /// What merges left to decide, one thing after another, and the history of a part.
    void takeJournal()
    {
        auto &view = *m_window.view();
        view.open(ui::PageId::Journal);
        auto &page = static_cast<ui::JournalPage &>(view.page(ui::PageId::Journal));
        page.showDecisions();
        auto &list = page.conflicts().list();
        for (int row = 0; list.isVisible() && row < list.model()->rowCount(); ++row) {
            list.setCurrentIndex(list.model()->index(row, 0));
            take(QStringLiteral("journal-to-decide-%1").arg(row));
        }
        for (const Component &part : view.session().records()->components) {
            page.showRecord({RecordType::Component, part.id.value()});
            take(QStringLiteral("journal-of-a-part"));
            return;
        }
    }

    /// Each chart of the hours with its table.
    void takeHours()
    {
        m_window.view()->open(ui::PageId::Hours);
        auto &page = static_cast<ui::HoursPage &>(m_window.view()->page(ui::PageId::Hours));
        for (int view = 0; view < ui::hoursViewCount; ++view) {
            page.choose(ui::HoursView(view));
            take(QStringLiteral("hours-%1").arg(view));
        }
    }

    /// The places of an inspection, from plan to report.
    void takeInspection()
    {
        m_window.view()->open(ui::PageId::Closings);
        auto *page = m_window.findChild<ui::ClosingsPage *>();
        auto &session = m_window.view()->session();
        page->showVisits();
        IdSet<Closing> picked;
        for (const auto &row : session.answer()->visit_plan)
            picked.push_back(row.closing);
        picked.resize(std::min<std::size_t>(picked.size(), 2));
        std::ranges::sort(picked);
        page->visits().pick(picked);
        take(QStringLiteral("inspection-plan"));
        page->startPacket(picked);
        take(QStringLiteral("inspection-packet"));
        page->startVisit(picked);
        take(QStringLiteral("inspection-ask"));
        for (auto *choice : page->visit().findChildren<QRadioButton *>())
            choice->click();
        page->visit().findings().takeLines(QStringLiteral(
            "1. Chafed wire behind the rib\n2. Drain hole is blocked\n3. Jam nut is loose"));
        take(QStringLiteral("inspection-held"));
        for (const Inspection &visit : session.records()->inspections) {
            page->showInspection(visit.id);
            take(QStringLiteral("inspection-%1").arg(visit.id.value()));
        }
        takeOpening(*page);
    }

    /// What opening a closed box again would do.
    void takeOpening(ui::ClosingsPage &page)
    {
        for (const auto &closing : m_window.view()->session().answer()->closings) {
            if (closing.state != readiness::State::Closed)
                continue;
            page.showRecord({RecordType::Closing, closing.id.value()});
            page.view().startClosing();
            take(QStringLiteral("inspection-opening"));
            return;
        }
    }

    /// Each topic of the workshop, a search, and a limit of the project's own.
    void takeWorkshop()
    {
        auto &view = *m_window.view();
        view.open(ui::PageId::Workshop);
        auto &page = view.page(ui::PageId::Workshop);
        auto *topics = page.findChild<QListWidget *>();
        for (int row = 0; row < topics->count(); ++row) {
            topics->setCurrentRow(row);
            take(QStringLiteral("workshop-%1").arg(row));
        }
        page.findChild<QLineEdit *>()->setText(QStringLiteral("military"));
        take(QStringLiteral("workshop-found"));
        page.findChild<QLineEdit *>()->clear();
        topics->setCurrentRow(0);
        static_cast<ui::WorkshopPage &>(page).topic(0).ownLimitWanted(
            QStringLiteral("torque 8-36 tension"), QStringLiteral("in-lb"));
        take(QStringLiteral("workshop-own-limit"));
    }

    /// The places of weighing and flights, with what the project has.
    void takeWeighing()
    {
        auto &view = *m_window.view();
        for (const RecordType type : {RecordType::Weighing, RecordType::Equipment,
                                      RecordType::Envelope, RecordType::Flight}) {
            view.goTo({type, 0});
            take(QStringLiteral("certificate-") + ui::toQt(word(type)));
        }
    }

private:
    void press(const QString &words)
    {
        for (auto *button : m_window.findChildren<QPushButton *>()) {
            if (button->text() == words && button->isVisible()) {
                button->click();
                return;
            }
        }
    }

    ui::MainWindow &m_window;
    QString m_folder;
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
    Gallery gallery(window, QString::fromLocal8Bit(argv[2]));
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
