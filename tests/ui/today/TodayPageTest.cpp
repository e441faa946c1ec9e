// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/TodayPage.h"

#include "core/profiles/ProfileLibrary.h"
#include "core/project/acts/Signing.h"
#include "core/records/Description.h"
#include "tests/support/ReferenceLoad.h"
#include "tests/ui/support/Workshop.h"
#include "ui/bench/BenchView.h"
#include "ui/today/StandingPanel.h"
#include "ui/today/TodayActs.h"
#include "ui/widgets/AirframePicture.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/WeekBars.h"

#include <QAction>
#include <QElapsedTimer>
#include <QImage>
#include <QLabel>
#include <QScrollArea>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>

#include <catch2/catch.hpp>

#include <vector>

namespace lastrivet::ui {

namespace {

bool says(const QWidget &page, const QString &words)
{
    for (const QLabel *label : page.findChildren<QLabel *>()) {
        if (label->text().contains(words))
            return true;
    }
    return false;
}

RowListView *list(const QWidget &page, const QString &name)
{
    for (RowListView *list : page.findChildren<RowListView *>()) {
        if (list->accessibleName() == name)
            return list;
    }
    return nullptr;
}

} // namespace

TEST_CASE("What the hatchings mean is not cut off where its lines are wrapped")
{
    QWidget column;
    auto *layout = new QVBoxLayout(&column);
    auto *panel = new StandingPanel(test::theme(), &column);
    layout->addWidget(panel);
    layout->addStretch(1);
    panel->show({.must_stay_open = 9,
                 .wait_for_signature = 5,
                 .clear = 1,
                 .not_begun = 1,
                 .closed = 1,
                 .closed_early = 1,
                 .wait_for_own = 2});
    column.resize(200, 700);
    column.show();
    REQUIRE(QTest::qWaitForWindowExposed(&column));
    int wrapped = 0;
    for (const QLabel *label : panel->findChildren<QLabel *>()) {
        if (!label->wordWrap())
            continue;
        INFO(label->text().toStdString());
        CHECK(label->height() >= label->heightForWidth(label->width()));
        wrapped += label->height() > 2 * label->fontMetrics().height() - 4 ? 1 : 0;
    }
    CHECK(wrapped > 2);
}

TEST_CASE("The first page counts what must stay open and leaves out what is not begun")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    CHECK(says(page, QStringLiteral("2 closings must stay open, 1 of them waits only for a "
                                    "signature.")));
    const auto *open = list(page, QStringLiteral("Stays open"));
    REQUIRE(open->rows().rowCount() == 2);
    for (int i = 0; i < 2; ++i)
        CHECK(open->rows().row(i).record.id != workshop.rudderClosing.value());
}

TEST_CASE("The first page follows the answer after a change")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    session->change(QStringLiteral("Signed"), [&](Edit &edit) {
        for (const HoldPoint &point : session->records()->hold_points) {
            if (point.closing_id != workshop.aileronClosing)
                continue;
            SignOff signature;
            signature.hold_point_id = point.id;
            signature.person_id = workshop.inspector;
            signature.signed_on = edit.today();
            acts::sign(edit, signature);
        }
    });
    CHECK(says(page, QStringLiteral("1 closing must stay open.")));
    CHECK(says(page, QStringLiteral("Against 1, nothing on record stands.")));
}

TEST_CASE("The start button of a step starts the clock, once")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    auto *work = list(page, QStringLiteral("Workable now"));
    REQUIRE(work->rows().rowCount() == 1);
    work->setFocus();
    work->setCurrentIndex(work->model()->index(0, 0));
    QTest::keyClick(work, Qt::Key_Space);
    const auto timer = session->timer();
    REQUIRE(timer);
    CHECK(timer->step_id == workshop.wires);
    CHECK(timer->component_id == workshop.bay);
    CHECK(work->rows().row(0).action == QStringLiteral("Running"));
}

TEST_CASE("Each row of what stays open leads to the mending of what is nearest")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    QSignalSpy wanted(session.get(), &Session::recordWanted);
    auto *open = list(page, QStringLiteral("Stays open"));
    REQUIRE(open->rows().rowCount() == 2);
    for (int i = 0; i < 2; ++i) {
        const ListRow row = open->rows().row(i);
        open->setFocus();
        open->setCurrentIndex(open->model()->index(i, 0));
        QTest::keyClick(open, Qt::Key_Return);
        REQUIRE(wanted.size() == 1);
        CHECK(wanted.takeFirst().front().value<RecordRef>() == row.record);
        REQUIRE(row.acts_on);
        if (row.record.id != workshop.aileronClosing.value())
            continue;
        CHECK(row.action == QStringLiteral("Sign"));
        // Its state is told by a word too, not by its shape alone.
        REQUIRE(row.state);
        CHECK(row.figure.startsWith(shortStateWords(*row.state)));
        QTest::keyClick(open, Qt::Key_Space);
        CHECK(wanted.takeFirst().front().value<RecordRef>() ==
              RecordRef{RecordType::HoldPoint,
                        test::Workshop::point(*session->records(), workshop.aileronClosing,
                                              HoldPointKind::ToolAndDebrisCheck)
                            .value()});
    }
}

TEST_CASE("Photos that the next closing would bury are taken in from the list")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    const auto *chances = list(page, QStringLiteral("Before it is out of reach"));
    REQUIRE(chances->rows().rowCount() > 0);
    const ListRow row = chances->rows().row(0);
    CHECK(row.action == QStringLiteral("Photo"));
    CHECK(row.record == RecordRef{RecordType::Closing, workshop.aileronClosing.value()});
    QImage photo(64, 48, QImage::Format_RGB32);
    photo.fill(Qt::gray);
    const QTemporaryDir folder;
    REQUIRE(photo.save(folder.filePath(QStringLiteral("a.jpg"))));
    TodayActs acts(*session, &page);
    acts.takeIn({folder.filePath(QStringLiteral("a.jpg"))}, workshop.aileronClosing);
    REQUIRE(QTest::qWaitFor([&] { return session->records()->media.size() == 1; }));
    const Media &taken = *session->records()->media.begin();
    CHECK(taken.links ==
          std::vector<Media::Link>{{RecordType::Closing, workshop.aileronClosing.value()},
                                   {RecordType::Component, workshop.aileron.value()}});
}

TEST_CASE("The picture shows the wing in hold, and a click goes to the part")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today");
    auto &picture = *page.findChild<AirframePicture *>();
    const auto standing = [&](airframe::Zone zone) {
        return picture.zones().row(picture.zones().rowOf(zone)).standing;
    };
    CHECK(standing(airframe::Zone::LeftWing).state == readiness::State::Hold);
    CHECK(standing(airframe::Zone::LeftWing).part == workshop.wing);
    CHECK(standing(airframe::Zone::LeftAileron).begun);
    CHECK_FALSE(standing(airframe::Zone::Rudder).begun);
    CHECK_FALSE(standing(airframe::Zone::RightWing).state);
    QSignalSpy wanted(session.get(), &Session::recordWanted);
    const auto wing = picture.zones().index(picture.zones().rowOf(airframe::Zone::LeftWing));
    picture.setFocus();
    picture.setCurrentIndex(wing);
    CHECK(says(page, QStringLiteral("stays open, work left")));
    QTest::keyClick(&picture, Qt::Key_Return);
    REQUIRE(wanted.size() == 1);
    CHECK(wanted.front().front().value<RecordRef>() ==
          RecordRef{RecordType::Component, workshop.wing.value()});
}

TEST_CASE("The drawing follows the records until the builder chooses another")
{
    test::Workshop workshop;
    {
        const auto session = workshop.session();
        TodayPage page(*session);
        auto &picture = *page.findChild<AirframePicture *>();
        CHECK(picture.kind() == airframe::AircraftKind::LowWing);
        session->change(QStringLiteral("Type"), [](Edit &edit) {
            ProjectFacts facts = edit.records().project;
            facts.aircraft_type = "Single-seat biplane";
            edit.put(facts);
        });
        test::picture(page, 1110, 640, "today-biplane");
        CHECK(picture.kind() == airframe::AircraftKind::Biplane);
        for (QAction *action : page.findChildren<QAction *>()) {
            if (action->text() == QStringLiteral("canard"))
                action->trigger();
        }
        CHECK(picture.kind() == airframe::AircraftKind::Canard);
    }
    const auto session = workshop.session();
    TodayPage page(*session);
    CHECK(page.findChild<AirframePicture *>()->kind() == airframe::AircraftKind::Canard);
}

TEST_CASE("Parts that the picture cannot place are counted below it and reached from there")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<Component> radio;
    session->change(QStringLiteral("Radio"), [&](Edit &edit) {
        Component part;
        part.name = "Radio & headset";
        radio = edit.put(part);
    });
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today-elsewhere");
    QSignalSpy wanted(session.get(), &Session::recordWanted);
    for (QAction *action : page.findChildren<QAction *>()) {
        if (action->text() == QStringLiteral("Radio && headset"))
            action->trigger();
    }
    REQUIRE(wanted.size() == 1);
    CHECK(wanted.front().front().value<RecordRef>().id == radio.value());
}

TEST_CASE("Nothing scrolls sideways at 1280, and lines stay short at 3840")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    // The rail takes the rest of 1280.
    test::picture(page, 1110, 720, "today-1280");
    auto *scroll = page.findChild<QScrollArea *>();
    CHECK(scroll->widget()->width() <= scroll->viewport()->width());
    test::picture(page, 3660, 2160, "today-3840");
    const auto letters = [](const QWidget &place) {
        const auto alphabet = QStringLiteral("nothing on record stands against closing");
        return place.width() * alphabet.size() / place.fontMetrics().horizontalAdvance(alphabet);
    };
    for (const QLabel *label : page.findChildren<QLabel *>()) {
        if (label->wordWrap() && label->isVisible())
            CHECK(letters(*label) < 90);
    }
    for (const RowListView *rows : page.findChildren<RowListView *>())
        CHECK(letters(*rows) < 90);
}

TEST_CASE("The lists stand in as many columns as the page is wide for")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    const auto lefts = [&page] {
        std::vector<int> places;
        for (const Section *section : page.findChildren<Section *>())
            places.push_back(section->mapTo(&page, QPoint()).x());
        return places;
    };
    test::picture(page, 2420, 1380, "today-2560");
    const auto three = lefts();
    REQUIRE(three.size() == 4);
    CHECK(three[0] < three[1]);
    CHECK(three[1] < three[2]);
    CHECK(three[2] == three[3]);
    test::picture(page, 1780, 960, "today-1920");
    const auto two = lefts();
    CHECK(two[0] < two[1]);
    CHECK(two[0] == two[2]);
    CHECK(two[1] == two[3]);
    test::picture(page, 1110, 720, "today-1280-again");
    const auto one = lefts();
    CHECK(one == std::vector(4, one.front()));
}

TEST_CASE("A builder in the first year is told what brings a closing onto the page")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    session->change(QStringLiteral("No work yet"), [&](Edit &edit) {
        for (const WorkSession &work : session->records()->work_sessions)
            edit.withdraw(work.id, "not yet");
        edit.withdraw(workshop.squawk, "not yet");
    });
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today-first-year");
    CHECK(says(page, QStringLiteral("is begun")));
    CHECK(list(page, QStringLiteral("Stays open"))->rows().rowCount() == 0);
}

TEST_CASE("The weeks are told to who cannot see the bars")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    TodayPage page(*session);
    const auto *bars = page.findChild<WeekBars *>();
    CHECK(bars->accessibleDescription().contains(QStringLiteral("2 h 15")));
    CHECK_FALSE(bars->accessibleName().isEmpty());
}

TEST_CASE("At the load of ten builders' lifetimes the page opens in time", "[.][load]")
{
    test::ProjectBuilder load;
    test::fillReferenceLoad(load, 1);
    ProjectFacts facts = load.records.project;
    facts.builder_id = {};
    test::TemporaryFolder folder;
    test::FakeClock clock;
    InlineExecutor executor;
    auto project = Project::create(folder / "Load.lastrivet", facts,
                                   ProfileLibrary::standard().profile("plain"), {&clock, "Robin"});
    const auto result = project->change("Everything", [&](Edit &edit) {
        edit.put(load.records.project);
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
            const auto &table = load.records.table(RecordType(i));
            for (std::int64_t id = 0; const void *record = table.nextAny(id);) {
                id = idOf(describe(RecordType(i)), record);
                edit.putAny(RecordType(i), record);
            }
        }
    });
    REQUIRE(result);
    Session session(std::move(project), executor, test::theme());
    for (int round = 0; round < 3; ++round) {
        QElapsedTimer clockOfPage;
        clockOfPage.start();
        TodayPage page(session);
        page.resize(1110, 720);
        page.show();
        page.grab();
        WARN("page opened in " << clockOfPage.elapsed() << " ms");
        CHECK(clockOfPage.elapsed() < 200);
        clockOfPage.restart();
        Q_EMIT session.answerChanged();
        WARN("page filled in " << clockOfPage.elapsed() << " ms");
        CHECK(clockOfPage.elapsed() < 100);
        clockOfPage.restart();
        const BenchView bench(session);
        WARN("bench opened in " << clockOfPage.elapsed() << " ms");
        CHECK(clockOfPage.elapsed() < 200);
    }
}

TEST_CASE("An empty project says what the first page will show")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    session->undo();
    TodayPage page(*session);
    test::picture(page, 1110, 640, "today-empty");
    CHECK(says(page, QStringLiteral("Nothing is recorded yet.")));
}

} // namespace lastrivet::ui
