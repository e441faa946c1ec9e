// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Session.h"

#include "core/exchange/DocumentWriter.h"
#include "tests/ui/support/AwayTable.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WaitingExecutor.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/daylog/TimerBar.h"
#include "ui/shell/FileTasks.h"
#include "ui/shell/FindingsDialog.h"
#include "ui/shell/Progress.h"
#include "ui/today/TodayActs.h"

#include <QDir>
#include <QPushButton>
#include <QSignalSpy>
#include <QWidget>

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>
#include <stop_token>
#include <string>

namespace lastrivet::ui {

TEST_CASE("A disk that fails under the running clock is told once, and the clock goes on")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->setTimer(RunningTimer{session->now(), workshop.rudder, {}, {}}));
    TimerBar bar(*session);
    const test::AwayTable away(workshop, "local_state");
    QSignalSpy complaints(session.get(), &Session::complained);
    CHECK_FALSE(session->keepLocalState("anything", "kept"));
    CHECK_FALSE(session->setTimerProgress(freshProgress(session->now())));
    workshop.clock.advance(std::chrono::minutes{20});
    for (auto *button : bar.findChildren<QPushButton *>()) {
        if (button->text() == QStringLiteral("Pause"))
            button->click();
    }
    CHECK(complaints.count() == 1);
    REQUIRE(session->timer());
    CHECK(session->timer()->component_id == workshop.rudder);
    SECTION("a button that is pressed is answered each time")
    {
        CHECK_FALSE(session->setTimer(std::nullopt));
        CHECK(complaints.count() == 2);
        CHECK(session->timer());
    }
}

TEST_CASE("A change that changes nothing says so, and does not offer to take back the one before")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QSignalSpy said(session.get(), &Session::said);
    const auto nameIt = [&] {
        return session->change(QStringLiteral("Named"), [&](Edit &edit) {
            Component part = *edit.records().find(workshop.rudder);
            part.name = "Rudder, second";
            edit.put(part);
        });
    };
    CHECK(nameIt());
    CHECK(nameIt());
    REQUIRE(said.count() == 2);
    CHECK(said.front().at(0).toString() == QStringLiteral("Named"));
    CHECK(said.front().at(1).toBool());
    CHECK(said.back().at(0).toString() == QStringLiteral("Nothing had to be changed."));
    CHECK_FALSE(said.back().at(1).toBool());
}

TEST_CASE("Work does not start on a project that somebody else has open")
{
    test::Workshop workshop;
    const auto holder = workshop.session();
    const auto reader = workshop.session();
    REQUIRE(reader->isReadOnly());
    QWidget window;
    TodayActs acts(*reader, &window);
    QSignalSpy complaints(reader.get(), &Session::complained);
    acts.startWork({RecordType::Step, workshop.wires.value()});
    CHECK(complaints.count() == 1);
    CHECK_FALSE(reader->timer());
}

TEST_CASE("Parts are found by their words in the snapshot that is shown")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    CHECK(session->partFinder().best("rudder") == workshop.rudder);
    session->change(QStringLiteral("Renamed"), [&](Edit &edit) {
        Component part = *edit.records().find(workshop.rudder);
        part.name = "Fin";
        part.code = "F";
        edit.put(part);
    });
    CHECK_FALSE(session->partFinder().best("rudder"));
    CHECK(session->partFinder().best("fin") == workshop.rudder);
}

TEST_CASE("Long work ends at the foot of the window, also when nobody waits for it any more")
{
    test::Workshop workshop;
    test::WaitingExecutor executor;
    Session session(Project::open(workshop.folder(), {&workshop.clock, "Robin"}), executor,
                    test::theme());
    QSignalSpy ended(&session, &Session::workEnded);
    auto dialog = std::make_unique<QWidget>();
    bool isDone = false;
    session.runLong(
        QStringLiteral("Looking"), [](Progress &) {}, dialog.get(), [&] { isDone = true; });
    executor.work();
    SECTION("somebody waits")
    {
        executor.finish();
        CHECK(isDone);
    }
    SECTION("the dialog was closed")
    {
        dialog.reset();
        executor.finish();
        CHECK_FALSE(isDone);
    }
    CHECK(ended.count() == 1);
}

TEST_CASE("What was there before somebody cancelled is not said to be gone")
{
    test::Workshop workshop;
    test::WaitingExecutor executor;
    Session session(Project::open(workshop.folder(), {&workshop.clock, "Robin"}), executor,
                    test::theme());
    QSignalSpy said(&session, &Session::said);
    std::shared_ptr<Progress> shown;
    QObject::connect(&session, &Session::workStarted, &session,
                     [&](const std::shared_ptr<Progress> &progress) { shown = progress; });
    const bool isKept = GENERATE(false, true);
    bool isDone = false;
    bool isNotDone = false;
    session.runLong(
        QStringLiteral("Writing"),
        [isKept](Progress &progress) {
            if (isKept)
                progress.noteKept();
        },
        &session, [&] { isDone = true; }, [&] { isNotDone = true; });
    executor.work();
    REQUIRE(shown);
    shown->cancel();
    executor.finish();
    CHECK(isDone == isKept);
    CHECK(isNotDone != isKept);
    CHECK(said.count() == (isKept ? 0 : 1));
}

TEST_CASE("Who cancels stops a worker that reports, and one that looks at its token")
{
    Progress progress(QStringLiteral("Work"));
    const std::stop_token token = progress.stopToken();
    CHECK(progress.report(1, 2));
    CHECK_FALSE(token.stop_requested());
    progress.cancel();
    CHECK_FALSE(progress.report(2, 2));
    CHECK(token.stop_requested());
    CHECK(progress.isCancelled());
}

TEST_CASE("Files that nothing on record can be compared with are not said to be as they should be")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QString said;
    QObject::connect(session.get(), &Session::said, session.get(),
                     [&said](const QString &sentence) { said = sentence; });
    QWidget window;
    tasks::verify(*session, &window);
    CHECK(said.startsWith(QStringLiteral("Verified: ")));
    CHECK_FALSE(said.contains(QStringLiteral("SHA-256")));
    const QString rest = said.section(QStringLiteral("journal rows"), 1);
    std::ofstream(workshop.folder() / "photos" / "rib.jpg") << "a picture of a rib";
    REQUIRE(session->change(QStringLiteral("Photo"), [](Edit &edit) {
        Media media;
        media.file = "photos/rib.jpg";
        edit.put(media);
    }));
    tasks::verify(*session, &window);
    CHECK(said.contains(rest));
    CHECK(said.contains(QStringLiteral("no SHA-256 on record")));
}

TEST_CASE("An export is proposed by the project's name and the day, for the ending of any kind")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    session->change(QStringLiteral("Named"), [](Edit &edit) {
        ProjectFacts facts = edit.records().project;
        facts.name = "Marshlark No. 4/7";
        edit.put(facts);
    });
    const QString name = QStringLiteral("Marshlark No 4-7 ") + toQt(session->today().text());
    CHECK(tasks::exportName(*session) == QDir(documentsFolder()).filePath(name));
}

TEST_CASE("Where a document to import is wrong is said as people count the records in it")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QSignalSpy complaints(session.get(), &Session::complained);
    const test::TemporaryFolder folder;
    const auto file = folder / "records.json";
    exchange::writeDocumentFile(*session->records(), file);
    std::string text = [&] {
        std::ifstream stream(file);
        return std::string(std::istreambuf_iterator<char>(stream), {});
    }();
    const std::string title = "Overdriven rivet at rib 3";
    REQUIRE(text.find('"' + title + '"') != std::string::npos);
    text.replace(text.find('"' + title + '"'), title.size() + 2, "7");
    std::ofstream(file) << text;
    tasks::importInto(*session, pathText(file));
    REQUIRE(complaints.count() == 1);
    const QString said = complaints.front().front().toString();
    INFO(said.toStdString());
    CHECK(said.contains(QStringLiteral("quawks, number 1 in the file, title: ")));
    CHECK_FALSE(said.contains(QStringLiteral("/squawks")));
}

TEST_CASE("A repair can be stopped where it was begun, and says that it was")
{
    test::Workshop workshop;
    test::WaitingExecutor executor;
    Session session(Project::open(workshop.folder(), {&workshop.clock, "Robin"}), executor,
                    test::theme());
    FindingsDialog dialog(session, {}, nullptr);
    dialog.setAttribute(Qt::WA_DeleteOnClose, false);
    dialog.show();
    const QString cancel = QStringLiteral("Cancel");
    const QString mend = QStringLiteral("Make anew what can be");
    CHECK_FALSE(test::button(dialog, cancel));
    // With the whole look this would be found.
    std::ofstream(workshop.folder() / "photos" / "nobody-knows-this.jpg") << "a picture";
    REQUIRE(session.change(QStringLiteral("Photo"), [](Edit &edit) {
        Media media;
        media.file = "photos/gone.jpg";
        edit.put(media);
    }));
    test::press(dialog, mend);
    CHECK_FALSE(test::button(dialog, mend));
    test::press(dialog, cancel);
    CHECK_FALSE(test::button(dialog, cancel));
    while (!session.running().empty()) {
        executor.work();
        executor.finish();
    }
    CHECK(test::says(dialog, QStringLiteral("Stopped before the end")));
    CHECK(dialog.lines().filter(QStringLiteral("nobody-knows-this")).isEmpty());
    CHECK_FALSE(dialog.lines().filter(QStringLiteral("Done: ")).isEmpty());
    CHECK_FALSE(test::button(dialog, cancel));
    test::press(dialog, mend);
    while (!session.running().empty()) {
        executor.work();
        executor.finish();
    }
    CHECK_FALSE(dialog.lines().filter(QStringLiteral("nobody-knows-this")).isEmpty());
    CHECK_FALSE(test::says(dialog, QStringLiteral("Stopped before the end")));
}

TEST_CASE("A repair that fails can be tried again")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QSignalSpy complaints(session.get(), &Session::complained);
    FindingsDialog dialog(*session, {}, nullptr);
    dialog.setAttribute(Qt::WA_DeleteOnClose, false);
    dialog.show();
    const QString words = QStringLiteral("Make anew what can be");
    const auto there = workshop.folder().parent_path() / "Moved.lastrivet";
    std::filesystem::rename(workshop.folder(), there);
    REQUIRE(test::button(dialog, words));
    test::press(dialog, words);
    CHECK(complaints.count() == 1);
    CHECK(test::button(dialog, words));
    std::filesystem::rename(there, workshop.folder());
    test::press(dialog, words);
    CHECK(complaints.count() == 1);
    CHECK_FALSE(test::button(dialog, words));
}

} // namespace lastrivet::ui
