// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotosPage.h"

#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PictureLoader.h"

#include <QDir>
#include <QImage>
#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

struct Window {
    Window()
    {
        page.resize(1100, 680);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
    }
    QListView &grid()
    {
        for (auto *view : page.findChildren<QListView *>()) {
            if (view->accessibleName() == QStringLiteral("Photos by date"))
                return *view;
        }
        FAIL("no grid");
        return *page.findChild<QListView *>();
    }
    /// A picture file that is unlike the others.
    QString file(int number)
    {
        QImage image(640, 480, QImage::Format_RGB32);
        image.fill(QColor::fromHsv(number * 47 % 360, 90, 190));
        QPainter painter(&image);
        for (int x = 40; x < 640; x += 50)
            painter.drawEllipse(x, 200 + (x * number) % 60, 18, 18);
        painter.end();
        const QString name = QString::fromStdString((folder / std::to_string(number)).string()) +
                             QStringLiteral(".png");
        REQUIRE(image.save(name));
        return name;
    }

    Workshop workshop;
    test::TemporaryFolder folder;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::PhotosPage page{*session};
};

} // namespace

TEST_CASE("Files are taken in, the same file once, and one that is no picture is told")
{
    Window window;
    QString complaint;
    QObject::connect(window.session.get(), &ui::Session::complained, &window.page,
                     [&](const QString &sentence) { complaint = sentence; });
    window.page.takeIn({window.file(1), window.file(2), window.file(1)});
    CHECK(window.session->records()->media.size() == 2);
    CHECK(complaint.isEmpty());
    const QString text = QString::fromStdString((window.folder / "no.jpg").string());
    QFile no(text);
    REQUIRE(no.open(QIODevice::WriteOnly));
    no.write("not a picture");
    no.close();
    window.page.takeIn({text});
    CHECK(window.session->records()->media.size() == 2);
    CHECK(complaint.contains(QStringLiteral("no.jpg")));
}

TEST_CASE("Several photos are assigned to a part by keyboard")
{
    Window window;
    window.page.takeIn({window.file(1), window.file(2), window.file(3)});
    window.grid().setFocus();
    window.grid().selectAll();
    QTest::keyClick(&window.grid(), Qt::Key_A);
    auto *line = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    REQUIRE(line);
    QTest::keyClicks(line, QStringLiteral("rudder"));
    QWidget *popup = QApplication::activePopupWidget();
    REQUIRE(popup);
    QTest::keyClick(popup, Qt::Key_Down);
    QTest::keyClick(popup, Qt::Key_Return);
    for (const Media &media : window.session->records()->media) {
        REQUIRE(media.links.size() == 1);
        CHECK(media.links.front() ==
              Media::Link{RecordType::Component, window.workshop.rudder.value()});
    }
}

TEST_CASE("Photos taken during logged work are proposed and confirmed together")
{
    Workshop workshop;
    auto session = workshop.session();
    Id<WorkSession> work;
    Id<Media> photo;
    session->change(QStringLiteral("Logged"), [&](Edit &edit) {
        work = edit.put(WorkSession{.began = Moment::parse("2026-03-12T13:00"),
                                    .minutes = Minutes{120},
                                    .component_id = workshop.bay});
        photo = edit.put(Media{.file = "photos/a.jpg", .taken_on = Moment::parse("2026-03-12T14:20")});
        edit.put(Media{.file = "photos/b.jpg", .taken_on = Moment::parse("2026-03-12T19:20")});
    });
    ui::PhotosPage page(*session);
    page.show();
    for (auto *button : page.findChildren<QPushButton *>()) {
        if (button->text() == QStringLiteral("Confirm them all"))
            button->click();
    }
    CHECK(session->records()->find(photo)->links.size() == 2);
    CHECK(std::ranges::count_if(session->records()->media, [](const Media &media) {
              return !media.links.empty();
          }) == 1);
}

TEST_CASE("Twenty thousand photos are laid out and scrolled without reading them all")
{
    Workshop workshop;
    auto session = workshop.session();
    session->change(QStringLiteral("Many"), [](Edit &edit) {
        for (int i = 0; i < 20000; ++i)
            edit.put(Media{.kind = MediaKind::Document,
                           .file = "photos/x.jpg",
                           .taken_on = Moment::parse("2026-01-01")->plusDays(-i / 20)});
    });
    ui::PictureLoader loader(*session);
    ui::MediaModel model(*session, loader);
    model.setFilter({});
    CHECK(model.rowCount() == 20000);
    QListView view;
    view.setViewMode(QListView::IconMode);
    view.setUniformItemSizes(true);
    view.setModel(&model);
    view.resize(900, 600);
    view.show();
    REQUIRE(QTest::qWaitForWindowExposed(&view));
    QElapsedTimer clock;
    clock.start();
    view.scrollToBottom();
    view.grab();
    CHECK(clock.elapsed() < 500); // far above what it takes; a layout of every item is not
}

TEST_CASE("Photos as they look")
{
    Window window;
    QStringList files;
    for (int i = 0; i < 18; ++i)
        files.append(window.file(i));
    window.page.takeIn(files);
    window.grid().setCurrentIndex(window.grid().model()->index(2, 0));
    QTest::qWait(300);
    picture(window.page, 1120, 660, "photos-light");
    theme().choose(ui::Theme::Choice::Dark);
    picture(window.page, 1120, 660, "photos-dark");
    theme().choose(ui::Theme::Choice::Light);
    QTest::keyClick(&window.grid(), Qt::Key_Space);
    picture(window.page, 1120, 660, "photos-viewer");
}

} // namespace lastrivet::test
