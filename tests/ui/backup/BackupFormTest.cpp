// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/BackupForm.h"

#include "core/backup/LastBackup.h"
#include "core/evidence/IntakeStore.h"
#include "core/verify/Verification.h"
#include "tests/ui/support/AwayTable.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Looks.h"
#include "tests/ui/support/WaitingExecutor.h"
#include "tests/ui/support/Workshop.h"
#include "ui/backup/BackupKeeper.h"
#include "ui/backup/BackupNotice.h"
#include "ui/backup/RestoreForm.h"
#include "ui/convert/QtText.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/StartPage.h"
#include "ui/widgets/MessageLine.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QImage>
#include <QLineEdit>
#include <QSettings>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace lastrivet::ui {

namespace {

namespace fs = std::filesystem;

/// The window with the workshop's project, and a disk for its backups.
struct Bench {
    Bench()
    {
        fs::create_directory(shelf);
        REQUIRE(window.openFolder(pathText(workshop.folder())));
        window.resize(1280, 720);
        window.show();
        REQUIRE(QTest::qWaitForWindowActive(&window));
    }

    ProjectView &view() const { return *window.view(); }
    BackupKeeper &keeper() const { return view().backups(); }
    QString said() const { return view().findChild<MessageLine *>()->text(); }
    void note(const char *words)
    {
        view().session().change(QStringLiteral("Log"), [&](Edit &edit) {
            WorkSession session;
            session.component_id = workshop.wing;
            session.began = view().session().now();
            session.minutes = Minutes(5);
            session.note = words;
            session.workers = {{workshop.builder, Minutes(5), false}};
            edit.put(session);
        });
    }
    void passDays(int days) { workshop.clock.advance(std::chrono::hours(24 * days)); }
    bool isNoticed()
    {
        keeper().changed();
        return view().findChild<BackupNotice *>()->isVisible();
    }

    test::Workshop workshop;
    test::TemporaryFolder folder;
    fs::path shelf = folder / "disk";
    fs::path place = shelf / "Test.lastrivet";
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    MainWindow window{{settings, workshop.executor, test::theme(), workshop.clock}};
};

std::size_t databaseCopies(const fs::path &project)
{
    return backup::keptStates(project).size() - 1;
}

} // namespace

TEST_CASE("A project without a backup says so on its first page, until there is one")
{
    Bench bench;
    REQUIRE(bench.isNoticed());
    test::picture(bench.window, 1280, 720, "backup-never");
    test::press(bench.view(), QStringLiteral("Back up…"));
    BackupForm &form = bench.window.backupForm();
    REQUIRE(form.isVisible());
    test::type(form, QStringLiteral("Folder on another disk"), pathText(bench.shelf));
    test::picture(bench.window, 1280, 720, "backup-form");
    CHECK(test::nameless(form).isEmpty());
    QTest::keyClick(bench.window.focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    CHECK_FALSE(form.isVisible());
    CHECK(verify(bench.place).isFaultless());
    CHECK(bench.said().contains(QStringLiteral("Backed up and read back")));
    CHECK_FALSE(bench.isNoticed());
    CHECK(bench.keeper().lastWords().contains(QStringLiteral("today")));
}

TEST_CASE("An old backup is told only when something was changed since")
{
    Bench bench;
    bench.keeper().choose({bench.shelf, false, 3});
    QTest::keyClick(&bench.window, Qt::Key_B, Qt::ControlModifier);
    bench.passDays(4);
    CHECK_FALSE(bench.isNoticed());
    bench.note("Deburred");
    CHECK(bench.isNoticed());
    CHECK(bench.keeper().reminder().contains(QStringLiteral("4 days")));
    bench.keeper().choose({bench.shelf, false, 4});
    CHECK_FALSE(bench.isNoticed());
}

TEST_CASE("The first backup on a disk is asked for: an empty mount point looks like one, too")
{
    Bench bench;
    bench.keeper().choose({bench.shelf, true, 7});
    bench.keeper().look();
    CHECK_FALSE(fs::exists(bench.place));
}

TEST_CASE("The project is backed up by itself when its disk is there again, once a day")
{
    Bench bench;
    bench.keeper().choose({bench.shelf, true, 7});
    QTest::keyClick(&bench.window, Qt::Key_B, Qt::ControlModifier);
    const auto backedUp = [&] {
        return Project::open(bench.place, {&bench.workshop.clock, {}, true})->journalHash() ==
               bench.view().session().project().journalHash();
    };
    REQUIRE(backedUp());
    const auto plugIn = [&](bool isThere) {
        fs::rename(isThere ? bench.folder / "drawer" : bench.shelf,
                   isThere ? bench.shelf : bench.folder / "drawer");
        bench.keeper().look();
    };
    bench.note("Deburred");
    SECTION("plugged in")
    {
        plugIn(false);
        plugIn(true);
        CHECK(backedUp());
    }
    SECTION("always there")
    {
        bench.keeper().look();
        CHECK(backedUp());
        bench.note("Primed");
        bench.keeper().look();
        CHECK_FALSE(backedUp());
        bench.passDays(1);
        bench.keeper().look();
        CHECK(backedUp());
    }
    SECTION("only when asked")
    {
        bench.keeper().choose({bench.shelf, false, 7});
        bench.keeper().look();
        CHECK_FALSE(backedUp());
    }
}

TEST_CASE("A backup that another program made meanwhile is known to the window")
{
    Bench bench;
    bench.note("Deburred");
    REQUIRE(bench.isNoticed());
    const Project &project = bench.view().session().project();
    backup::leaveNote(project.folder(),
                      {bench.workshop.clock.now(), "/media/disk/Wing", project.journalHash()});
    bench.keeper().look();
    CHECK_FALSE(bench.view().findChild<BackupNotice *>()->isVisible());
    CHECK(bench.keeper().lastWords().contains(QStringLiteral("/media/disk/Wing")));
}

TEST_CASE("A backup that cannot be made is told in a sentence")
{
    Bench bench;
    bench.keeper().backUp(pathText(bench.folder / "gone"), backup::Reading::NewFiles);
    CHECK(bench.said().contains(QStringLiteral("plug its disk in")));
    CHECK_FALSE(bench.keeper().isRunning());
    CHECK(bench.isNoticed());
}

TEST_CASE("A folder that is not there is said in the form for backups, which stays to be put right")
{
    Bench bench;
    BackupForm &form = bench.window.backupForm();
    form.open(bench.keeper());
    const auto line = QStringLiteral("Folder on another disk");
    test::type(form, line, pathText(bench.folder / "gone"));
    test::press(form, QStringLiteral("Back up now"));
    CHECK(test::says(form, QStringLiteral("plug its disk in")));
    REQUIRE(form.isVisible());
    test::type(form, line, pathText(bench.shelf));
    test::press(form, QStringLiteral("Back up now"));
    CHECK_FALSE(form.isVisible());
}

TEST_CASE("What is chosen for backups is kept without making one")
{
    Bench bench;
    bench.window.backupForm().open(bench.keeper());
    test::type(bench.window.backupForm(), QStringLiteral("Folder on another disk"),
               pathText(bench.shelf));
    bench.window.backupForm().findChild<QSpinBox *>()->setValue(30);
    QTest::keyClick(bench.window.focusWidget(), Qt::Key_Escape);
    CHECK(bench.keeper().choice() == backup::BackupChoice{bench.shelf, true, 30});
    CHECK_FALSE(fs::exists(bench.place));
}

TEST_CASE("Of a project that is only read it is said that what is chosen for backups is not kept")
{
    test::Workshop workshop;
    const test::TemporaryFolder folder;
    const auto writer = workshop.session();
    const auto reader = workshop.session();
    REQUIRE(reader->isReadOnly());
    QSignalSpy complaints(reader.get(), &Session::complained);
    BackupKeeper keeper(*reader);
    const auto before = keeper.choice();
    REQUIRE(before);
    keeper.choose(*before);
    CHECK(complaints.isEmpty());
    keeper.choose({folder.path(), true, 30});
    REQUIRE(complaints.count() == 1);
    CHECK(complaints.front().front().toString().contains(QStringLiteral("not kept")));
    CHECK(keeper.choice() == before);
}

TEST_CASE("A folder for backups that is typed without its whole path is in the person's own folder")
{
    Bench bench;
    BackupForm &form = bench.window.backupForm();
    const auto chosenFor = [&](const QString &typed) {
        form.open(bench.keeper());
        test::type(form, QStringLiteral("Folder on another disk"), typed);
        QTest::keyClick(bench.window.focusWidget(), Qt::Key_Escape);
        return bench.keeper().choice().value().shelf;
    };
    const fs::path home = toPath(QDir::homePath());
    CHECK(chosenFor(QStringLiteral("Copies/big disk")) == home / "Copies" / "big disk");
    CHECK(chosenFor(QStringLiteral("~/Copies")) == home / "Copies");
    CHECK(chosenFor(QStringLiteral("~")) == home);
    CHECK(chosenFor(QStringLiteral("~old")) == home / "~old");
    CHECK(chosenFor(pathText(bench.shelf)) == bench.shelf);
}

TEST_CASE("What was chosen for backups is not written over while it cannot be read")
{
    Bench bench;
    const backup::BackupChoice chosen{bench.shelf, false, 3};
    bench.keeper().choose(chosen);
    const test::AwayTable away(bench.workshop, "local_state");
    CHECK_FALSE(bench.isNoticed());
    CHECK(bench.keeper().lastWords().contains(QStringLiteral("could not be read")));
    bench.window.backupForm().open(bench.keeper());
    CHECK_FALSE(bench.window.backupForm().isVisible());
    QTest::keyClick(&bench.window, Qt::Key_B, Qt::ControlModifier);
    CHECK_FALSE(fs::exists(bench.place));
    bench.keeper().look();
    away.putBack();
    CHECK(bench.keeper().choice() == chosen);
    CHECK(bench.isNoticed());
}

TEST_CASE("A backup that the project cannot be told of is told to the person")
{
    test::Workshop workshop;
    const test::TemporaryFolder folder;
    test::WaitingExecutor executor;
    Session session(Project::open(workshop.folder(), {&workshop.clock, "Robin"}), executor,
                    test::theme());
    QSignalSpy complaints(&session, &Session::complained);
    BackupKeeper keeper(session);
    keeper.backUp(pathText(folder.path()), backup::Reading::NewFiles);
    executor.work();
    const test::AwayTable away(workshop, "local_state");
    executor.finish();
    REQUIRE(complaints.count() == 1);
    CHECK(complaints.front().front().toString().startsWith(QStringLiteral("Backed up")));
    CHECK(complaints.front().front().toString().contains(QStringLiteral("could not be told")));
    CHECK(verify(folder / "Test.lastrivet").isFaultless());
}

TEST_CASE("A copy that was damaged on the disk of the backups is told, and made anew")
{
    test::Workshop workshop;
    const test::TemporaryFolder folder;
    const auto session = workshop.session();
    QImage picture(32, 32, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    REQUIRE(picture.save(pathText(folder / "rib.png")));
    evidence::IncomingFile incoming;
    incoming.path = folder / "rib.png";
    const auto taken = evidence::takeIn(session->project(), {incoming}).taken;
    REQUIRE(taken.size() == 1);
    const fs::path copy = folder / "Test.lastrivet" / session->records()->find(taken.front())->file;
    BackupKeeper keeper(*session);
    keeper.backUp(pathText(folder.path()), backup::Reading::EveryFile);
    QSignalSpy complaints(session.get(), &Session::complained);
    {
        std::fstream damaged(copy, std::ios::binary | std::ios::in | std::ios::out);
        REQUIRE(damaged.good());
        damaged.seekp(20);
        damaged.put('\x7f');
        damaged.put('\x7e');
    }
    keeper.backUp(pathText(folder.path()), backup::Reading::EveryFile);
    REQUIRE(complaints.count() == 1);
    CHECK(complaints.front().front().toString().contains(QStringLiteral("of the earlier backup")));
    CHECK(verify(folder / "Test.lastrivet").isFaultless());
}

TEST_CASE("A backup is restored from the start page, and opened")
{
    Bench bench;
    bench.keeper().backUp(pathText(bench.shelf), backup::Reading::NewFiles);
    bench.note("After the first backup");
    bench.passDays(1);
    bench.keeper().backUp(pathText(bench.shelf), backup::Reading::NewFiles);
    const Snapshot now = bench.view().session().records();
    bench.window.closeProject();
    test::press(bench.window.startPage(), QStringLiteral("Restore a backup…"));
    RestoreForm &form = bench.window.restoreForm();
    auto &state = *form.findChild<QComboBox *>();
    CHECK(state.placeholderText() == QStringLiteral("choose its folder first"));
    test::type(form, QStringLiteral("Put it into"), pathText(bench.folder.path()));
    test::type(form, QStringLiteral("Folder of the backup"), pathText(bench.folder.path()));
    CHECK(state.currentIndex() == -1);
    CHECK(state.placeholderText() == QStringLiteral("no backup is in this folder"));
    test::type(form, QStringLiteral("Folder of the backup"), pathText(bench.place));
    test::picture(bench.window, 1280, 720, "backup-restore");
    CHECK(test::nameless(form).isEmpty());
    REQUIRE(state.count() == 2);
    CHECK(state.currentIndex() == 0);
    const bool isEarlier = GENERATE(false, true);
    state.setCurrentIndex(isEarlier ? 1 : 0);
    CHECK(test::field(form, QStringLiteral("Name of the new folder")).text() ==
          QStringLiteral("Test.lastrivet"));
    test::press(form, QStringLiteral("Restore"));
    REQUIRE(bench.window.view());
    CHECK(bench.window.openedFolder() == pathText(bench.folder / "Test.lastrivet"));
    CHECK((*bench.view().session().records() == *now) == !isEarlier);
    CHECK(verify(bench.folder / "Test.lastrivet").isFaultless());
}

TEST_CASE("Restoring never goes over a folder that is there")
{
    Bench bench;
    bench.keeper().backUp(pathText(bench.shelf), backup::Reading::NewFiles);
    RestoreForm &form = bench.window.restoreForm();
    form.open();
    test::type(form, QStringLiteral("Put it into"), pathText(bench.shelf));
    test::type(form, QStringLiteral("Folder of the backup"), pathText(bench.place));
    CHECK(test::field(form, QStringLiteral("Name of the new folder")).text() ==
          QStringLiteral("Test-2.lastrivet"));
    fs::copy(bench.place, bench.shelf / "Plain", fs::copy_options::recursive);
    test::type(form, QStringLiteral("Folder of the backup"), pathText(bench.shelf / "Plain"));
    CHECK(test::field(form, QStringLiteral("Name of the new folder")).text() ==
          QStringLiteral("Plain-2"));
    test::type(form, QStringLiteral("Folder of the backup"), pathText(bench.place));
    test::type(form, QStringLiteral("Name of the new folder"), QStringLiteral("Test.lastrivet"));
    test::press(form, QStringLiteral("Restore"));
    CHECK(form.isVisible());
    CHECK(test::says(form, QStringLiteral("exists already")));
}

TEST_CASE("An open project leaves a copy of its database each day, and one when it was changed")
{
    Bench bench;
    const fs::path project = bench.workshop.folder();
    // Not before the window had time to come up.
    CHECK(databaseCopies(project) == 0);
    REQUIRE(QTest::qWaitFor([&] { return databaseCopies(project) == 1; }, 10'000));
    bench.window.closeProject();
    CHECK(databaseCopies(project) == 1);
    REQUIRE(bench.window.openFolder(pathText(project)));
    bench.note("Deburred");
    const auto hash = bench.view().session().project().journalHash();
    bench.window.closeProject();
    // Of one day the newest stays.
    REQUIRE(databaseCopies(project) == 1);
    CHECK(backup::keptStates(project).back().what.string().find(hash.substr(0, 8)) !=
          std::string::npos);
}

} // namespace lastrivet::ui
