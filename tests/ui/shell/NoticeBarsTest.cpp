// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/NoticeBars.h"

#include "core/storage/Database.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/convert/QtText.h"
#include "ui/shell/FindingsDialog.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/ProjectView.h"
#include "ui/widgets/MessageLine.h"

#include <QPushButton>
#include <QScreen>
#include <QSettings>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::ui {

namespace fs = std::filesystem;

namespace {

struct Opened : test::WholeWindow {
    Opened() { open(); }

    NoticeBars &bars() { return window.view()->notices(); }
    Session &session() { return window.view()->session(); }
    bool addPart()
    {
        return session().change(QStringLiteral("Part"), [](Edit &edit) {
            Component part;
            part.name = "Fin";
            edit.put(part);
        });
    }
    QPushButton *button(const char *words)
    {
        for (auto *button : bars().findChildren<QPushButton *>()) {
            if (button->text() == QString::fromUtf8(words))
                return button;
        }
        return nullptr;
    }
};

} // namespace

TEST_CASE("At first the window is no higher than a small screen, so that its messages can be read")
{
    test::WholeWindow begun;
    CHECK(begun.window.height() < begun.window.screen()->availableGeometry().height());
}

TEST_CASE("A folder that is moved away is told over the page until it is back")
{
    Opened opened;
    CHECK(opened.bars().texts().isEmpty());
    const auto here = opened.workshop.folder();
    const auto there = here.parent_path() / "Moved.lastrivet";
    fs::rename(here, there);
    REQUIRE(QTest::qWaitFor([&] { return !opened.bars().texts().isEmpty(); }, 6000));
    CHECK(opened.bars().texts().front().contains(pathText(here)));
    REQUIRE(opened.button("Open it where it is…"));
    CHECK_FALSE(opened.addPart());
    CHECK(opened.window.view()->findChild<MessageLine *>()->text().contains(
        QStringLiteral("no longer at")));
    opened.session().setTimer(RunningTimer{opened.session().now(), {}, {}, {}});
    test::picture(opened.window, 1280, 720, "window-moved");
    fs::rename(there, here);
    opened.bars().lookAtPlace();
    CHECK(opened.bars().texts().isEmpty());
    CHECK(opened.addPart());
}

TEST_CASE("A second database beside the records is told, and can be dismissed")
{
    test::Workshop workshop;
    fs::copy(workshop.folder() / "records.db", workshop.folder() / "records (copy of shed).db");
    NoticeBars *bars = nullptr;
    auto session = workshop.session();
    bars = new NoticeBars(*session);
    const std::unique_ptr<NoticeBars> owner(bars);
    REQUIRE(bars->texts().size() == 1);
    CHECK(bars->texts().front().contains(QStringLiteral("records (copy of shed).db")));
    const auto buttons = bars->findChildren<QPushButton *>();
    REQUIRE(buttons.size() == 2);
    buttons.back()->click();
    CHECK(QTest::qWaitFor([&] { return bars->texts().isEmpty(); }, 1000));
}

TEST_CASE("A second database beside the records is merged from its notice, and kept as a backup")
{
    test::Workshop workshop;
    const auto here = workshop.folder();
    fs::copy(here, here.parent_path() / "Other.lastrivet", fs::copy_options::recursive);
    {
        const auto other =
            Project::open(here.parent_path() / "Other.lastrivet", {&workshop.clock, "Kim"});
        REQUIRE(other->change("Part", [](Edit &edit) {
            Component part;
            part.name = "Winglet";
            edit.put(part);
        }));
    }
    fs::copy(here.parent_path() / "Other.lastrivet" / "records.db", here / "records 2.db");
    test::TemporaryFolder folder;
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    MainWindow window{{settings, workshop.executor, test::theme(), workshop.clock}};
    REQUIRE(window.openFolder(pathText(here)));
    auto &bars = window.view()->notices();
    REQUIRE(bars.texts().size() == 1);
    test::picture(window, 1280, 720, "window-second-database");
    bars.findChildren<QPushButton *>().front()->click();
    const auto records = window.view()->session().records();
    CHECK(std::ranges::any_of(records->components,
                              [](const Component &part) { return part.name == "Winglet"; }));
    CHECK(QTest::qWaitFor([&] { return bars.texts().isEmpty(); }, 1000));
    CHECK_FALSE(fs::exists(here / "records 2.db"));
    CHECK(fs::exists(here / "backups" / "merged-records 2.db"));
}

TEST_CASE("A clock that is behind the journal is told over the page until it was set")
{
    using namespace std::chrono_literals;
    Opened opened;
    REQUIRE(opened.bars().texts().isEmpty());
    opened.workshop.clock.advance(-48h);
    opened.bars().lookAtClock();
    opened.bars().lookAtClock();
    REQUIRE(opened.bars().texts().size() == 1);
    CHECK(opened.bars().texts().front().contains(
        QStringLiteral("before the newest row of the journal")));
    opened.workshop.clock.advance(48h);
    opened.bars().lookAtClock();
    CHECK(opened.bars().texts().isEmpty());
}

TEST_CASE("A clock notice that was dismissed stays away")
{
    using namespace std::chrono_literals;
    Opened opened;
    opened.workshop.clock.advance(-48h);
    opened.bars().lookAtClock();
    REQUIRE(opened.button("Dismiss"));
    opened.button("Dismiss")->click();
    CHECK(QTest::qWaitFor([&] { return opened.bars().texts().isEmpty(); }, 1000));
    opened.bars().lookAtClock();
    CHECK(opened.bars().texts().isEmpty());
}

TEST_CASE("A window that only reads says when its records are out of date, and is opened anew")
{
    Opened opened;
    opened.window.closeProject();
    auto writer = Project::open(opened.workshop.folder(), {&opened.workshop.clock, "Kim"});
    opened.open();
    REQUIRE(opened.session().isReadOnly());
    opened.bars().lookAtRecords();
    REQUIRE(opened.bars().texts().size() == 1);
    const QString before = opened.bars().texts().front();
    CHECK(before.contains(QStringLiteral("as the records were when this was opened")));
    REQUIRE(writer->change("Squawk renamed", [&](Edit &edit) {
        edit.update(opened.workshop.squawk, [](Squawk &squawk) { squawk.title = "Dent"; });
    }));
    opened.bars().lookAtRecords();
    CHECK(opened.bars().texts().front().contains(QStringLiteral("have been changed since")));
    opened.bars().lookAtWriter();
    CHECK(opened.bars().texts().front().contains(QStringLiteral("have been changed since")));
    writer.reset();
    opened.bars().lookAtWriter();
    opened.bars().lookAtRecords();
    CHECK(opened.bars().texts().front().contains(QStringLiteral("for writing has closed it")));
    // Somebody else is quicker.
    writer = Project::open(opened.workshop.folder(), {&opened.workshop.clock, "Lee"});
    REQUIRE_FALSE(writer->isReadOnly());
    opened.bars().lookAtWriter();
    CHECK(opened.bars().texts().front().contains(QStringLiteral("have been changed since")));
    writer.reset();
    opened.window.view()->open(PageId::Squawks);
    REQUIRE(opened.button("Open it anew"));
    opened.button("Open it anew")->click();
    REQUIRE(QTest::qWaitFor([&] { return !opened.session().isReadOnly(); }, 2000));
    CHECK(opened.window.view()->current() == PageId::Squawks);
    CHECK(opened.session().records()->find(opened.workshop.squawk)->title == "Dent");
    CHECK_FALSE(opened.session().isReadOnly());
    CHECK(opened.bars().texts().isEmpty());
}

TEST_CASE("Damage that the look after opening finds stays over the page, with the way to all of it")
{
    Opened opened;
    opened.bars().lookForDamage();
    CHECK(opened.bars().texts().isEmpty());
    opened.window.closeProject();
    {
        storage::Database database(opened.workshop.folder() / "records.db",
                                   storage::Database::Access::ReadWrite,
                                   storage::Database::Safety::WriteAhead);
        database.checkReferences(false);
        database.run("UPDATE squawk SET component_id=12345");
    }
    opened.open();
    opened.bars().lookForDamage();
    REQUIRE(opened.bars().texts().size() == 1);
    test::picture(opened.window, 1280, 720, "window-damaged");
    REQUIRE(opened.button("Verify records and files"));
    opened.button("Verify records and files")->click();
    auto *dialog = opened.window.findChild<FindingsDialog *>();
    REQUIRE(dialog);
    CHECK(dialog->lines().filter(QStringLiteral("squawk")).size() >= 2);
    test::picture(*dialog, 640, 420, "findings");
    dialog->mend();
    CHECK(dialog->lines().filter(QStringLiteral("Done: ")).size() >= 2);
    CHECK(dialog->lines().filter(QStringLiteral("names a component")).size() >= 1);
}

} // namespace lastrivet::ui
