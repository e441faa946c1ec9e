// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotosPage.h"

#include "core/evidence/PictureCache.h"
#include "core/evidence/SessionMatcher.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/PhotosWindow.h"
#include "tests/ui/support/WaitingExecutor.h"
#include "ui/photos/HeadingList.h"
#include "ui/photos/MatchBar.h"
#include "ui/photos/MissingView.h"
#include "ui/photos/PhotoListModel.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RowListView.h"

#include <QComboBox>
#include <QLineEdit>
#include <QScrollBar>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>

namespace lastrivet::test {

namespace {

Id<Media> photo(Edit &edit, const std::string &file, std::string_view taken,
                std::vector<Media::Link> links = {})
{
    return edit.put(Media{
        .file = "photos/" + file, .taken_on = Moment::parse(taken), .links = std::move(links)});
}

void chooseOrder(PhotosWindow &window, int order)
{
    for (auto *box : window.page.findChildren<QComboBox *>()) {
        if (box->accessibleName() == QStringLiteral("Order"))
            box->setCurrentIndex(order);
    }
}

QStringList headings(PhotosWindow &window)
{
    QStringList words;
    const auto *list = window.page.findChild<ui::HeadingList *>();
    for (int i = 0; i < list->count(); ++i)
        words.append(list->item(i)->text());
    return words;
}

void typeInto(const QString &words)
{
    auto *line = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(line);
    QTest::keyClicks(line, words);
    QWidget *popup = QApplication::activePopupWidget();
    REQUIRE(popup);
    QTest::keyClick(popup, Qt::Key_Down);
    QTest::keyClick(popup, Qt::Key_Return);
}

} // namespace

TEST_CASE("Several photos are assigned to parts by keyboard, and taken from one again")
{
    PhotosWindow window;
    window.page.takeIn({window.file(1), window.file(2), window.file(3)});
    window.grid().setFocus();
    window.grid().selectAll();
    window.key(window.grid(), Qt::Key_A);
    typeInto(QStringLiteral("rudder"));
    window.grid().setFocus();
    window.key(window.grid(), Qt::Key_A);
    typeInto(QStringLiteral("aileron"));
    const Media::Link rudder{RecordType::Component, window.workshop.rudder.value()};
    const Media::Link aileron{RecordType::Component, window.workshop.aileron.value()};
    for (const Media &media : window.media())
        CHECK(media.links == std::vector{rudder, aileron});
    QCoreApplication::processEvents();
    for (auto *button : window.page.findChildren<QPushButton *>()) {
        if (button->isVisible() &&
            button->accessibleName().startsWith(QStringLiteral("Remove part: RU")))
            QTest::mouseClick(button, Qt::LeftButton);
    }
    for (const Media &media : window.media())
        CHECK(media.links == std::vector{aileron});
}

TEST_CASE("A link that only some of the chosen have is told and given to all")
{
    PhotosWindow window;
    window.change([&](Edit &edit) {
        photo(edit, "a.jpg", "2026-03-01", {{RecordType::Component, window.workshop.bay.value()}});
        photo(edit, "b.jpg", "2026-03-02");
    });
    window.grid().selectAll();
    QPushButton *all = window.button(QStringLiteral("All"));
    REQUIRE(all);
    CHECK(all->accessibleName().contains(QStringLiteral("(1 of 2)")));
    all->click();
    for (const Media &media : window.media())
        CHECK(media.links.size() == 1);
}

TEST_CASE("Number keys say what the chosen photos show, and take it away again")
{
    PhotosWindow window;
    window.change([](Edit &edit) {
        photo(edit, "a.jpg", "2026-03-01");
        photo(edit, "b.jpg", "2026-03-02");
    });
    window.grid().setFocus();
    window.grid().selectAll();
    window.key(window.grid(), Qt::Key_3);
    for (const Media &media : window.media())
        CHECK(media.shows == WordSet<Shows>{Shows::BuilderAtWork});
    window.key(window.grid(), Qt::Key_1);
    window.key(window.grid(), Qt::Key_3);
    for (const Media &media : window.media())
        CHECK(media.shows == WordSet<Shows>{Shows::Interior});
}

TEST_CASE("Each photo goes to the log entry of its own time with one key")
{
    PhotosWindow window;
    Id<WorkSession> noon;
    Id<WorkSession> evening;
    Id<Media> atNoon;
    Id<Media> atNight;
    Id<Media> otherDay;
    window.change([&](Edit &edit) {
        noon = edit.put(WorkSession{.began = Moment::parse("2026-03-12T12:00"),
                                    .minutes = Minutes{120},
                                    .component_id = window.workshop.bay});
        evening = edit.put(WorkSession{.began = Moment::parse("2026-03-12T19:00"),
                                       .minutes = Minutes{60},
                                       .component_id = window.workshop.aileron});
        atNoon = photo(edit, "a.jpg", "2026-03-12T12:30");
        atNight = photo(edit, "b.jpg", "2026-03-12T22:30");
        otherDay = photo(edit, "c.jpg", "2026-03-13T12:30");
    });
    window.grid().setFocus();
    window.grid().selectAll();
    window.key(window.grid(), Qt::Key_M);
    const auto links = [&](Id<Media> id) { return window.session->records()->find(id)->links; };
    CHECK(links(atNoon) ==
          std::vector<Media::Link>{{RecordType::WorkSession, noon.value()},
                                   {RecordType::Component, window.workshop.bay.value()}});
    CHECK(links(atNight).front() == Media::Link{RecordType::WorkSession, evening.value()});
    CHECK(links(otherDay).empty());
    CHECK(window.session->project().undoLabel() == "2 photos belong to their log entries");
}

TEST_CASE("Photos taken during logged work are proposed and confirmed together")
{
    PhotosWindow window;
    Id<Media> during;
    window.change([&](Edit &edit) {
        edit.put(WorkSession{.began = Moment::parse("2026-03-12T13:00"),
                             .minutes = Minutes{120},
                             .component_id = window.workshop.bay});
        during = photo(edit, "a.jpg", "2026-03-12T14:20");
        photo(edit, "b.jpg", "2026-03-12T19:20");
    });
    REQUIRE(window.button(QStringLiteral("Confirm them all")));
    window.grid().setFocus();
    window.key(window.grid(), Qt::Key_M, Qt::ShiftModifier);
    CHECK(window.session->records()->find(during)->links.size() == 2);
    CHECK(std::ranges::count_if(window.media(),
                                [](const Media &media) { return !media.links.empty(); }) == 1);
    CHECK_FALSE(window.button(QStringLiteral("Confirm them all")));
}

TEST_CASE("Of two looks for photos and their work the later one counts, whichever ends last")
{
    Workshop workshop;
    WaitingExecutor executor;
    ui::Session session(Project::open(workshop.folder(), {&workshop.clock, "Robin"}), executor,
                        theme());
    ui::MatchBar bar(session);
    bar.refresh();
    REQUIRE(session.change(QStringLiteral("Change"), [&](Edit &edit) {
        edit.put(WorkSession{.began = Moment::parse("2026-03-12T13:00"),
                             .minutes = Minutes{120},
                             .component_id = workshop.bay});
        photo(edit, "a.jpg", "2026-03-12T14:20");
    }));
    bar.refresh();
    executor.overtake();
    CHECK_FALSE(bar.isHidden());
    // The first one, which knows of no photos.
    executor.work();
    executor.finish();
    CHECK_FALSE(bar.isHidden());
}

TEST_CASE("A picture that could not be read is tried again when its place is shown anew")
{
    PhotosWindow window;
    window.page.takeIn({window.file(1)});
    REQUIRE(QTest::qWaitFor([&] { return window.media().size() == 1; }));
    const Media media = window.lastMedia();
    const auto project = window.workshop.folder();
    std::filesystem::rename(project / media.file, window.folder / "away");
    evidence::PictureCache(project).wipe();
    QWidget place;
    ui::PictureLoader loader(*window.session, &place);
    CHECK(loader.small(media).isNull());
    REQUIRE(QTest::qWaitFor([&] { return !loader.failure(media.id).isEmpty(); }));
    std::filesystem::rename(window.folder / "away", project / media.file);
    place.show();
    CHECK(loader.failure(media.id).isEmpty());
    CHECK(QTest::qWaitFor([&] { return !loader.small(media).isNull(); }));
}

TEST_CASE("By part a photo stands under each part that it is about, by date once")
{
    PhotosWindow window;
    window.change([&](Edit &edit) {
        photo(edit, "a.jpg", "2026-03-01",
              {{RecordType::Component, window.workshop.bay.value()},
               {RecordType::Component, window.workshop.rudder.value()}});
        photo(edit, "b.jpg", "2026-02-02", {{RecordType::Squawk, window.workshop.squawk.value()}});
        photo(edit, "c.jpg", "2026-02-03");
    });
    CHECK(headings(window) ==
          QStringList{QStringLiteral("March 2026 (1)"), QStringLiteral("February 2026 (2)")});
    chooseOrder(window, 1);
    CHECK(headings(window) == QStringList{QStringLiteral("LW-B3 Bay 3 (2)"),
                                          QStringLiteral("RU Rudder (1)"),
                                          QStringLiteral("Belonging to no part (1)")});
    CHECK(window.grid().model()->rowCount() == 4);
}

TEST_CASE("The chosen photos stay chosen when they move to another heading")
{
    PhotosWindow window;
    Id<Media> stray;
    window.change([&](Edit &edit) {
        stray = photo(edit, "a.jpg", "2026-03-01");
        photo(edit, "b.jpg", "2026-03-02",
              {{RecordType::Component, window.workshop.rudder.value()}});
    });
    chooseOrder(window, 1);
    ModelWatch watch(*window.grid().model());
    window.page.showRecord({RecordType::Media, stray.value()});
    window.grid().setFocus();
    window.key(window.grid(), Qt::Key_A);
    typeInto(QStringLiteral("LW-B3"));
    const auto chosen = window.grid().selectionModel()->selectedIndexes();
    REQUIRE(chosen.size() == 1);
    CHECK(chosen.front().row() == 0);
    CHECK(static_cast<ui::PhotoListModel *>(window.grid().model())->idAt(0) == stray);
    window.session->undo();
    watch.check();
}

TEST_CASE("Keys go from card to card, from line to line and from heading to heading")
{
    PhotosWindow window;
    window.change([](Edit &edit) {
        for (int i = 0; i < 40; ++i)
            photo(edit, "a" + std::to_string(i) + ".jpg", i < 20 ? "2026-02-10" : "2026-03-10");
    });
    ui::PhotoGrid &grid = window.grid();
    grid.setFocus();
    grid.setCurrentIndex(grid.model()->index(0, 0));
    const int columns = [&] {
        int n = 1;
        const int top = grid.visualRect(grid.model()->index(0, 0)).top();
        while (grid.visualRect(grid.model()->index(n, 0)).top() == top)
            ++n;
        return n;
    }();
    REQUIRE(columns > 1);
    window.key(grid, Qt::Key_Right);
    CHECK(grid.currentIndex().row() == 1);
    window.key(grid, Qt::Key_Down);
    CHECK(grid.currentIndex().row() == 1 + columns);
    window.key(grid, Qt::Key_PageDown, Qt::ControlModifier);
    CHECK(grid.currentIndex().row() == 20);
    window.key(grid, Qt::Key_Up);
    CHECK(grid.currentIndex().row() < 20);
    window.key(grid, Qt::Key_End);
    CHECK(grid.currentIndex().row() == 39);
    CHECK(grid.viewport()->rect().contains(grid.visualRect(grid.currentIndex())));
    window.key(grid, Qt::Key_Home, Qt::ShiftModifier);
    CHECK(grid.selectionModel()->selectedIndexes().size() == 40);
}

TEST_CASE("What is missing is listed, and photos taken in from there belong there")
{
    PhotosWindow window;
    for (auto *box : window.page.findChildren<QComboBox *>()) {
        if (box->accessibleName() == QStringLiteral("Which photos"))
            box->setCurrentIndex(4);
    }
    const auto lists = window.page.findChildren<ui::RowListView *>();
    const auto closings = std::ranges::find_if(lists, [](const ui::RowListView *list) {
        return list->accessibleName() == QStringLiteral("Closings that lack photographs");
    });
    REQUIRE(closings != lists.end());
    const auto isListed = [&](Id<Closing> id) {
        const ui::RowListModel &rows = (*closings)->rows();
        for (int i = 0; i < rows.rowCount(); ++i) {
            if (rows.row(i).record == RecordRef{RecordType::Closing, id.value()})
                return true;
        }
        return false;
    };
    CHECK(isListed(window.workshop.aileronClosing));
    CHECK_FALSE(isListed(window.workshop.rudderClosing));
    QStringList files;
    for (int i = 0; i < int(window.session->project().profile().interior_photos); ++i)
        files.append(window.file(i));
    window.page.takeIn(files, {{RecordType::Closing, window.workshop.aileronClosing.value()}});
    CHECK_FALSE(isListed(window.workshop.aileronClosing));
}

TEST_CASE("Photos are withdrawn together with one reason")
{
    PhotosWindow window;
    window.page.takeIn({window.file(1), window.file(2)});
    window.grid().setFocus();
    window.grid().selectAll();
    window.key(window.grid(), Qt::Key_Delete);
    auto *why = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(why);
    QTest::keyClicks(why, QStringLiteral("blurred"));
    QTest::keyClick(why, Qt::Key_Return);
    CHECK(std::ranges::all_of(window.media(),
                              [](const Media &media) { return media.withdrawn_why == "blurred"; }));
    CHECK(window.grid().model()->rowCount() == 0);
}

TEST_CASE("Of twenty thousand photos only those in view and near it are asked for")
{
    Workshop workshop;
    auto session = workshop.session();
    session->change(QStringLiteral("Many"), [](Edit &edit) {
        for (int i = 0; i < 20000; ++i)
            edit.put(Media{.file = "photos/x.jpg",
                           .taken_on = Moment::parse("2026-01-01")->plusDays(-i / 20)});
    });
    ui::PictureLoader loader(*session);
    int asked = 0;
    QObject::connect(&loader, &ui::PictureLoader::loaded, &loader, [&] { ++asked; });
    ui::PhotoListModel model(*session, loader);
    model.show(ui::PhotoOrder::ByDate, {});
    REQUIRE(model.rowCount() == 20000);
    ui::PhotoGrid grid(theme(), model, loader);
    grid.resize(900, 600);
    grid.show();
    REQUIRE(QTest::qWaitForWindowExposed(&grid));
    grid.scrollTo(model.index(19999), QAbstractItemView::PositionAtBottom);
    QTest::qWait(50);
    CHECK(grid.verticalScrollBar()->value() == grid.verticalScrollBar()->maximum());
    CHECK(asked > 0);
    CHECK(asked < 200);
}

TEST_CASE("The photos page is shown whole, in light and in dark")
{
    PhotosWindow window;
    QStringList files;
    for (int i = 0; i < 18; ++i)
        files.append(window.file(i));
    window.page.takeIn(files);
    window.grid().setCurrentIndex(window.grid().model()->index(2, 0));
    QTest::qWait(300);
    lightAndDark(window.page, 1120, 660, "photos");
    CHECK(says(window.page, QStringLiteral("18 shown")));
    CHECK(says(window.page, QStringLiteral("It belongs to")));
}

TEST_CASE("What lacks photographs by an older answer and is gone by now is left out")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::MissingView view(*session);
    readiness::MissingPictures missing;
    missing.closings.push_back({Id<Closing>{999}, {readiness::Rule::TooFewPhotos}, 0});
    missing.closings.push_back({workshop.wingClosing, {readiness::Rule::TooFewPhotos}, 0});
    missing.parts.push_back(Id<Component>{999});
    view.show(missing);
    CHECK(view.firstFocus()->accessibleName() == QStringLiteral("Closings that lack photographs"));
    int rows = 0;
    for (const auto *list : view.findChildren<ui::RowListView *>())
        rows += list->rows().rowCount();
    CHECK(rows == 1);
}

} // namespace lastrivet::test
