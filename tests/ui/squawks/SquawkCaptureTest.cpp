// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkCapture.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/squawks/SquawkLineEdit.h"

#include <QAbstractItemView>
#include <QClipboard>
#include <QCompleter>
#include <QDropEvent>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QKeyEvent>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QUrl>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

/// By id, which is the order in which they came.
std::vector<Squawk> squawks(const ui::Session &session)
{
    std::vector<Squawk> all;
    for (const Squawk &squawk : session.records()->squawks)
        all.push_back(squawk);
    return all;
}

/// An open project on the page of parts, with the left aileron chosen.
struct Window {
    Window()
    {
        view.resize(1100, 680);
        view.show();
        REQUIRE(QTest::qWaitForWindowExposed(&view));
        view.goTo({RecordType::Component, workshop.aileron.value()});
        view.startSquawk();
    }
    ui::SquawkCapture &capture() { return *view.findChild<ui::SquawkCapture *>(); }
    ui::SquawkLineEdit &line() { return *capture().findChild<ui::SquawkLineEdit *>(); }
    void type(const QString &text) { QTest::keyClicks(&line(), text); }
    Squawk newest() const { return squawks(view.session()).back(); }
    std::size_t count() const { return squawks(view.session()).size(); }
    void drop(const QString &file)
    {
        QMimeData offered;
        offered.setUrls({QUrl::fromLocalFile(file)});
        QDragEnterEvent entered(QPoint(5, 5), Qt::CopyAction, &offered, Qt::LeftButton,
                                Qt::NoModifier);
        QCoreApplication::sendEvent(&capture(), &entered);
        CHECK(entered.isAccepted());
        QDropEvent dropped(QPointF(5, 5), Qt::CopyAction, &offered, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&capture(), &dropped);
    }

    Workshop workshop;
    ui::ProjectView view{workshop.session()};
};

QString savedPicture(const TemporaryFolder &folder)
{
    QImage picture(64, 48, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    const QString file = QString::fromStdString((folder / "rivet.png").string());
    REQUIRE(picture.save(file));
    return file;
}

std::vector<const Media *> photosOf(const Records &records, Id<Squawk> squawk)
{
    std::vector<const Media *> found;
    for (const Media &media : records.media) {
        for (const Media::Link &link : media.links) {
            if (link == Media::Link{RecordType::Squawk, squawk.value()})
                found.push_back(&media);
        }
    }
    return found;
}

} // namespace

TEST_CASE("A squawk is captured over any page, about the part that is looked at", "[squawks]")
{
    Window window;
    CHECK(window.capture().isVisible());
    CHECK(window.line().hasFocus());
    window.type(QStringLiteral("cosmetic yesterday: scratch by the hinge"));
    const QString understood = window.capture().understood();
    CHECK(understood.contains(QStringLiteral("Squawk 2: “scratch by the hinge”")));
    CHECK(understood.contains(QStringLiteral("LA Left aileron")));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK_FALSE(window.capture().isVisible());
    CHECK(window.view.current() == ui::PageId::Parts);
    CHECK(window.newest().title == "scratch by the hinge");
    CHECK(window.newest().component_id == window.workshop.aileron);
    CHECK(window.newest().severity == Severity::Cosmetic);
    CHECK(window.newest().found_on == Moment::parse("2026-03-13"));
    CHECK(window.newest().found_by == window.workshop.builder);
    CHECK(window.view.page(ui::PageId::Parts).isAncestorOf(window.view.focusWidget()));
}

TEST_CASE("The line for a new squawk does not lie over the next page, nor over the page of squawks",
          "[squawks]")
{
    Window window;
    window.type(QStringLiteral("half told"));
    window.view.open(ui::PageId::Log);
    CHECK_FALSE(window.capture().isVisible());
    window.view.startSquawk();
    CHECK(window.capture().isVisible());
    CHECK(window.line().text() == QStringLiteral("half told"));

    window.view.open(ui::PageId::Squawks);
    window.view.startSquawk();
    const auto visible = [](const ui::SquawkCapture *one) { return one->isVisible(); };
    const auto captures = window.view.findChildren<ui::SquawkCapture *>();
    CHECK(std::ranges::count_if(captures, visible) == 1);
    CHECK(window.view.page(ui::PageId::Squawks).isAncestorOf(window.view.focusWidget()));
    CHECK(qobject_cast<ui::SquawkLineEdit *>(window.view.focusWidget()));
}

TEST_CASE("After a squawk was written down, undo and redo in its line are about the squawk",
          "[squawks]")
{
    Window window;
    const auto takes = [&window](Qt::KeyboardModifiers modifiers) {
        QKeyEvent asked(QEvent::ShortcutOverride, Qt::Key_Z, modifiers);
        QCoreApplication::sendEvent(&window.line(), &asked);
        return asked.isAccepted();
    };
    const Qt::KeyboardModifiers redo = Qt::ControlModifier | Qt::ShiftModifier;
    window.type(QStringLiteral("scratch"));
    CHECK(takes(Qt::ControlModifier));
    CHECK_FALSE(takes(redo));
    window.line().undo();
    CHECK(takes(redo));
    window.line().redo();
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK_FALSE(takes(Qt::ControlModifier));
    CHECK_FALSE(takes(redo));
}

TEST_CASE("Esc keeps the line, also until the project is opened again", "[squawks]")
{
    Workshop workshop;
    {
        ui::ProjectView view(workshop.session());
        view.show();
        view.startSquawk();
        auto &line = *view.findChild<ui::SquawkLineEdit *>();
        QTest::keyClicks(&line, QStringLiteral("rudder: dent half told"));
        QTest::keyClick(&line, Qt::Key_Escape);
        CHECK_FALSE(line.isVisible());
        CHECK(line.text() == QStringLiteral("rudder: dent half told"));
    }
    ui::ProjectView view(workshop.session());
    view.show();
    view.startSquawk();
    auto &line = *view.findChild<ui::SquawkLineEdit *>();
    CHECK(line.text() == QStringLiteral("rudder: dent half told"));
    QTest::keyClick(&line, Qt::Key_Return);
    CHECK(squawks(view.session()).back().title == "dent half told");
    view.startSquawk();
    CHECK(line.text().isEmpty());
}

TEST_CASE("A line without a title, or of a day to come, is refused in one sentence and stays",
          "[squawks]")
{
    Window window;
    QString said;
    QObject::connect(&window.view.session(), &ui::Session::complained, &window.view,
                     [&](const QString &sentence) { said = sentence; });
    const std::size_t before = window.count();
    window.type(QStringLiteral("rudder:"));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(said == QStringLiteral("Say in a few words what is wrong."));
    window.line().clear();
    window.type(QStringLiteral("rudder 2026-03-20: dent"));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(said.contains(QStringLiteral("has not come yet")));
    CHECK(window.line().text() == QStringLiteral("rudder 2026-03-20: dent"));
    CHECK(window.count() == before);
}

TEST_CASE("Photos dropped on the line, or pasted into it, belong to the squawk as its defect",
          "[squawks]")
{
    TemporaryFolder folder;
    const QString file = savedPicture(folder);
    Window window;
    const auto before = window.count();
    window.type(QStringLiteral("rudder: overdriven rivet"));
    window.drop(file);
    QImage pasted(32, 32, QImage::Format_RGB32);
    pasted.fill(Qt::red);
    QGuiApplication::clipboard()->setImage(pasted);
    QTest::keyClick(&window.line(), Qt::Key_V, Qt::ControlModifier);
    QTest::keyClick(&window.line(), Qt::Key_Return);
    const auto records = window.view.session().records();
    const auto photos = photosOf(*records, window.newest().id);
    REQUIRE(photos.size() == 2);
    for (const Media *photo : photos) {
        CHECK(photo->shows.contains(Shows::Defect));
        CHECK(QFile::exists(
            QString::fromStdString((window.workshop.folder() / photo->file).string())));
    }
    // What was one act is one to undo, which is still offered.
    CHECK(says(window.view, QStringLiteral("written down: overdriven rivet. 2 taken in.")));
    press(window.view, QStringLiteral("Undo"));
    CHECK(window.count() == before);
    CHECK(window.view.session().records()->media.size() + 2 == records->media.size());
    window.view.session().redo();
    CHECK(photosOf(*window.view.session().records(), window.newest().id).size() == 2);
}

TEST_CASE("A photo that is gone is said, and the squawk is on record all the same", "[squawks]")
{
    const TemporaryFolder folder;
    Window window;
    QString said;
    QObject::connect(&window.view.session(), &ui::Session::complained, &window.view,
                     [&](const QString &sentence) { said = sentence; });
    window.type(QStringLiteral("rudder: dent"));
    window.drop(QString::fromStdString((folder / "gone.jpg").string()));
    QTest::keyClick(&window.line(), Qt::Key_Return);
    CHECK(window.newest().title == "dent");
    CHECK(said.contains(QStringLiteral("gone.jpg")));
}

TEST_CASE("A part is completed while the line is typed", "[squawks]")
{
    Window window;
    window.type(QStringLiteral("cosmetic rudd"));
    QWidget *offered = window.line().findChild<QCompleter *>()->popup();
    REQUIRE(offered->isVisible());
    QTest::keyClick(offered, Qt::Key_Down);
    QTest::keyClick(offered, Qt::Key_Return);
    CHECK(window.line().text() == QStringLiteral("cosmetic RU: "));
}

TEST_CASE("The line for a new squawk is shown whole, with what is understood", "[squawks]")
{
    Window window;
    window.type(QStringLiteral("rudder airworthiness: crack at the lower hinge"));
    wholePicture(window.view, 1120, 660, "squawk-capture-light");
    const QString understood = window.capture().understood();
    CHECK(understood.contains(QStringLiteral("“crack at the lower hinge”")));
    CHECK(understood.contains(QStringLiteral("RU Rudder")));
    CHECK(understood.contains(QStringLiteral("airworthiness")));
}

} // namespace lastrivet::test
