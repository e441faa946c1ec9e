// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/WatchedFolder.h"

#include "tests/ui/support/AwayTable.h"
#include "tests/ui/support/PhotosWindow.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTest>

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

namespace lastrivet::test {

namespace {

using namespace std::chrono_literals;
using Begin = ui::WatchedFolder::Begin;
using State = ui::WatchedFolder::State;

/// The page, and a phone's folder that is watched at a pace for tests.
struct Watching : PhotosWindow {
    Watching()
    {
        QDir(QString::fromStdString(folder.path().string())).mkdir(QStringLiteral("phone"));
        page.watch(*watched);
    }
    std::unique_ptr<ui::WatchedFolder> makeWatched(std::chrono::milliseconds settling = 40ms)
    {
        return std::make_unique<ui::WatchedFolder>(*session,
                                                   ui::WatchedFolder::Pace{settling, 60ms});
    }
    QString phone() const { return QString::fromStdString((folder / "phone").string()); }
    /// A picture that arrives on the phone's folder.
    void arrive(int number)
    {
        const QString made = file(number);
        REQUIRE(QFile::rename(made, phone() + QLatin1Char('/') + QFileInfo(made).fileName()));
    }
    bool waitForMedia(std::size_t count)
    {
        return QTest::qWaitFor([&] { return media().size() >= count; }, 5000);
    }
    /// Long enough for several looks.
    void letLook() { QTest::qWait(300); }

    std::unique_ptr<ui::WatchedFolder> watched = makeWatched();
};

} // namespace

TEST_CASE("What arrives in the watched folder is taken in on its own, as an automatic change")
{
    Watching it;
    it.arrive(1);
    it.watched->watch(it.phone(), Begin::WithWhatIsThere);
    REQUIRE(it.waitForMedia(1));
    it.arrive(2);
    REQUIRE(it.waitForMedia(2));
    it.letLook();
    CHECK(it.media().size() == 2);
    CHECK(it.session->project().journal().back().kind == ChangeKind::Automatic);
    CHECK(it.said == QStringLiteral("1 came in from the watched folder."));
    // Undo passes over it and takes back what a person did last.
    CHECK(it.session->project().undoLabel() == "Everything");
}

TEST_CASE("A folder that nobody at this computer chose is not copied from until somebody says so")
{
    Watching it;
    it.arrive(1);
    // As in a project that came from somebody else.
    it.session->project().setLocalState("watched_folder", it.phone().toStdString());
    it.watched = it.makeWatched();
    CHECK(it.watched->state() == State::Paused);
    it.letLook();
    CHECK(it.media().isEmpty());
    it.watched->goOn();
    REQUIRE(it.waitForMedia(1));
    it.watched = it.makeWatched();
    CHECK(it.watched->state() == State::Watching);
}

TEST_CASE("From now on means that what lies there already is passed over")
{
    Watching it;
    it.arrive(1);
    it.watched->watch(it.phone(), Begin::FromNowOn);
    it.letLook();
    CHECK(it.media().isEmpty());
    it.arrive(2);
    REQUIRE(it.waitForMedia(1));
    it.letLook();
    CHECK(it.media().size() == 1);
}

TEST_CASE("A file that is still being written is left until it is whole")
{
    Watching it;
    it.watched = it.makeWatched(600ms);
    it.watched->watch(it.phone(), Begin::WithWhatIsThere);
    QFile source(it.file(3));
    REQUIRE(source.open(QIODevice::ReadOnly));
    const QByteArray content = source.readAll();
    QFile slow(it.phone() + QStringLiteral("/slow.png"));
    REQUIRE(slow.open(QIODevice::WriteOnly));
    for (int part = 0; part < 12; ++part) {
        slow.write(content.mid(part * content.size() / 12,
                               (part + 1) * content.size() / 12 - part * content.size() / 12));
        slow.flush();
        QTest::qWait(15);
        CHECK(it.media().isEmpty());
    }
    slow.close();
    REQUIRE(it.waitForMedia(1));
    CHECK(it.lastMedia().bytes == content.size());
    CHECK(it.complaint.isEmpty());
}

TEST_CASE("What is known, what was withdrawn and what is no picture does not come in again")
{
    Watching it;
    it.page.takeIn({it.file(1)});
    const Id<Media> known = it.lastMedia().id;
    const QString second = it.file(2);
    it.page.takeIn({second});
    const Id<Media> withdrawn = it.lastMedia().id;
    it.change([&](Edit &edit) { edit.withdraw(withdrawn, "not ours"); });
    it.arrive(1);
    it.arrive(2);
    QFile text(it.phone() + QStringLiteral("/notes.txt"));
    REQUIRE(text.open(QIODevice::WriteOnly));
    text.write("notes");
    text.close();
    it.watched->watch(it.phone(), Begin::WithWhatIsThere);
    it.letLook();
    CHECK(it.media().size() == 2);
    CHECK(it.session->records()->findLive(known));
    CHECK_FALSE(it.session->records()->findLive(withdrawn));
    CHECK(it.complaint.isEmpty());
}

TEST_CASE("A folder that is unplugged is told once, and watched again when it is back")
{
    Watching it;
    it.watched->watch(it.phone(), Begin::WithWhatIsThere);
    it.letLook();
    REQUIRE(QDir().rename(it.phone(), it.phone() + QStringLiteral("-away")));
    REQUIRE(QTest::qWaitFor([&] { return it.watched->state() == State::NotThere; }, 3000));
    CHECK(it.said.contains(QStringLiteral("is not there")));
    it.said.clear();
    it.letLook();
    CHECK(it.said.isEmpty());
    REQUIRE(QDir().rename(it.phone() + QStringLiteral("-away"), it.phone()));
    it.arrive(4);
    REQUIRE(it.waitForMedia(1));
    CHECK(it.watched->state() == State::Watching);
}

TEST_CASE("While it cannot be read what came in before, nothing is copied a second time")
{
    Watching it;
    it.arrive(1);
    it.watched->watch(it.phone(), Begin::FromNowOn);
    it.letLook();
    it.watched->pause();
    const AwayTable away(it.workshop, "local_state");
    it.watched->goOn();
    CHECK(it.watched->state() == State::Paused);
    CHECK(it.complaint.startsWith(QStringLiteral("Watching the folder")));
    it.letLook();
    CHECK(it.media().isEmpty());
    away.putBack();
    it.watched->goOn();
    CHECK(it.watched->state() == State::Watching);
    it.letLook();
    CHECK(it.media().isEmpty());
}

TEST_CASE("What the project's disk does not take comes in when watching goes on")
{
    Watching it;
    const auto photos = it.workshop.folder() / "photos";
    std::filesystem::rename(photos, it.folder / "away");
    std::ofstream(photos) << "in the way";
    it.arrive(1);
    it.watched->watch(it.phone(), Begin::WithWhatIsThere);
    REQUIRE(QTest::qWaitFor([&] { return it.watched->state() == State::Paused; }, 5000));
    CHECK(it.complaint.contains(QStringLiteral("is paused, because")));
    CHECK(it.media().isEmpty());
    std::filesystem::remove(photos);
    std::filesystem::rename(it.folder / "away", photos);
    it.watched->goOn();
    REQUIRE(it.waitForMedia(1));
    CHECK(it.watched->state() == State::Watching);
}

TEST_CASE("The folder, and that watching pauses, are remembered by the project")
{
    Watching it;
    it.arrive(1);
    it.watched->watch(it.phone(), Begin::FromNowOn);
    it.letLook();
    it.watched = it.makeWatched();
    CHECK(it.watched->folder() == it.phone());
    it.letLook();
    CHECK(it.media().isEmpty());
    it.watched->pause();
    it.watched = it.makeWatched();
    CHECK(it.watched->state() == State::Paused);
    it.arrive(2);
    it.letLook();
    CHECK(it.media().isEmpty());
    it.watched->goOn();
    REQUIRE(it.waitForMedia(1));
    it.watched->stop();
    it.watched = it.makeWatched();
    CHECK(it.watched->state() == State::Off);
}

TEST_CASE("What came in by mistake is withdrawn in one go from the page")
{
    Watching it;
    it.arrive(1);
    it.arrive(2);
    it.watched->watch(it.phone(), Begin::WithWhatIsThere);
    REQUIRE(it.waitForMedia(2));
    it.letLook();
    picture(it.page, 1120, 660, "photos-watched");
    QPushButton *unwanted = it.button(QStringLiteral("They do not belong here"));
    REQUIRE(unwanted);
    QTest::mouseClick(unwanted, Qt::LeftButton);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("family"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    for (const Media &media : it.media())
        CHECK(media.withdrawn_why == "family");
    it.letLook();
    CHECK(it.media().size() == 2);
}

} // namespace lastrivet::test
