// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/CreditActs.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WaitingExecutor.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/certificate/TaskPanel.h"
#include "ui/certificate/TenthsEditor.h"
#include "ui/closings/NewClosingForm.h"
#include "ui/convert/QtText.h"
#include "ui/photos/PhotosPage.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/NewProjectForm.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/StartPage.h"
#include "ui/squawks/SquawkCapture.h"
#include "ui/squawks/SquawkEditor.h"
#include "ui/squawks/SquawkLineEdit.h"
#include "ui/widgets/ActLine.h"

#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTest>

#include <catch2/catch.hpp>

#include <filesystem>

namespace lastrivet::ui {

namespace {

const auto notKept = QStringLiteral("What is begun here is not kept.");

struct Opened : test::WholeWindow {
    Opened() { openAndShow(); }
    QString place() const { return pathText(workshop.folder()); }
    ProjectView &view() { return *window.view(); }
    NewClosingForm &form() { return *view().page(PageId::Closings).findChild<NewClosingForm *>(); }
    void beginClosing()
    {
        view().open(PageId::Closings);
        view().startNew();
        test::type(form(), QStringLiteral("Title"), QStringLiteral("Left wing tip"));
    }
    void showSquawk() { view().goTo({RecordType::Squawk, workshop.squawk.value()}); }
};

} // namespace

TEST_CASE("A form that is begun holds the window back once, on its page and with the keyboard")
{
    Opened opened;
    opened.beginClosing();
    opened.view().open(PageId::Today);
    REQUIRE_FALSE(opened.window.close());
    CHECK(opened.view().current() == PageId::Closings);
    CHECK(test::says(opened.window, notKept));
    CHECK(opened.form().isVisible());
    REQUIRE(opened.window.focusWidget());
    CHECK(opened.form().isAncestorOf(opened.window.focusWidget()));
    SECTION("who closes again lets it go")
    {
        CHECK(opened.window.close());
    }
    SECTION("who types more is told once more")
    {
        test::type(opened.form(), QStringLiteral("Title"), QStringLiteral("Right wing tip"));
        CHECK_FALSE(opened.window.close());
        CHECK(opened.window.close());
    }
    SECTION("Escape drops it")
    {
        QTest::keyClick(&opened.form(), Qt::Key_Escape);
        CHECK(opened.window.close());
    }
    SECTION("what is kept is no longer begun")
    {
        test::press(opened.form(), QStringLiteral("Make the closing"));
        CHECK(opened.window.close());
    }
}

TEST_CASE("A form in which nothing was typed holds nothing back")
{
    Opened opened;
    opened.view().open(PageId::Closings);
    opened.view().startNew();
    CHECK_FALSE(opened.form().isBegun());
    CHECK(opened.window.close());
}

TEST_CASE("A form that is begun also holds back another project and the closing of this one")
{
    Opened opened;
    test::Workshop other;
    opened.beginClosing();
    CHECK_FALSE(opened.window.openFolder(pathText(other.folder())));
    CHECK(opened.window.openedFolder() == opened.place());
    CHECK(opened.window.openFolder(pathText(other.folder())));
    opened.beginClosing();
    CHECK_FALSE(opened.window.leaveProject());
    CHECK(opened.window.leaveProject());
    CHECK_FALSE(opened.window.view());
}

TEST_CASE("A question that is half answered holds the window back like a form")
{
    Opened opened;
    opened.showSquawk();
    auto *editor = opened.view().page(PageId::Squawks).findChild<SquawkEditor *>();
    REQUIRE(editor);
    auto *ask = editor->findChild<ActLine *>();
    REQUIRE(ask);
    const ActLine::Question question{
        .words = QStringLiteral("Why?"),
        .confirm = QStringLiteral("Do it"),
        .textLabel = QStringLiteral("Because"),
    };
    ask->ask(question, [](const ActLine::Answer &) { return true; });
    CHECK_FALSE(ask->isBegun());
    test::type(*ask, QStringLiteral("Because"), QStringLiteral("cracked"));
    opened.view().open(PageId::Log);
    CHECK_FALSE(opened.window.close());
    CHECK(opened.view().current() == PageId::Squawks);
    ask->leave();
    CHECK(opened.window.close());
}

TEST_CASE("What is typed into a record and cannot be saved holds the window back")
{
    Opened opened;
    const auto folder = opened.workshop.folder();
    auto elsewhere = folder;
    elsewhere += ".unplugged";
    opened.showSquawk();
    std::filesystem::rename(folder, elsewhere);
    test::type(opened.view().page(PageId::Squawks), QStringLiteral("Title"),
               QStringLiteral("Cracked rivet"));
    REQUIRE_FALSE(opened.window.close());
    CHECK(test::says(opened.window, QStringLiteral("What was typed here is not on record")));
    QLineEdit &title = test::field(opened.window, QStringLiteral("Title"));
    CHECK(title.text() == QStringLiteral("Cracked rivet"));
    CHECK(opened.window.focusWidget() == &title);
    std::filesystem::rename(elsewhere, folder);
    CHECK(opened.window.close());
    CHECK(opened.workshop.session()->records()->find(opened.workshop.squawk)->title ==
          "Cracked rivet");
}

TEST_CASE("A form on another board of its page comes up with the board's own button")
{
    Opened opened;
    Id<MaterialLot> lot;
    opened.view().session().change(QStringLiteral("Lot"), [&](Edit &edit) {
        MaterialLot made;
        made.name = "Sealant";
        lot = edit.put(made);
    });
    opened.view().goTo({RecordType::MaterialLot, lot.value()});
    QWidget &page = opened.view().page(PageId::Stores);
    test::press(page, QStringLiteral("Used on…"));
    test::type(page, QStringLiteral("Mix"), QStringLiteral("100:12"));
    test::press(page, QStringLiteral("Tools"));
    CHECK_FALSE(test::button(page, QStringLiteral("Keep the use")));
    CHECK_FALSE(opened.window.close());
    CHECK(test::button(page, QStringLiteral("Keep the use")));
    const QPushButton *materials = test::button(page, QStringLiteral("Materials"));
    REQUIRE(materials);
    CHECK(materials->isChecked());
}

TEST_CASE("Photos chosen for a squawk that is not written down hold the window back")
{
    Opened opened;
    const QString file = pathText(opened.folder / "rivet.png");
    QImage image(32, 24, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    REQUIRE(image.save(file));
    opened.view().startSquawk();
    auto *capture = opened.view().findChild<SquawkCapture *>();
    REQUIRE(capture);
    CHECK_FALSE(capture->isBegun());
    capture->addPhotos({file});
    opened.view().open(PageId::Log);
    REQUIRE_FALSE(capture->isVisible());
    REQUIRE_FALSE(opened.window.close());
    CHECK(test::says(opened.window, QStringLiteral("The photos that were chosen for a squawk")));
    CHECK(capture->isVisible());
    REQUIRE(opened.window.focusWidget());
    CHECK(capture->isAncestorOf(opened.window.focusWidget()));
    SECTION("who closes again leaves without them")
    {
        CHECK(opened.window.close());
        CHECK(opened.workshop.session()->records()->media.isEmpty());
    }
    SECTION("more photos are told of once more")
    {
        capture->addPhotos({pathText(opened.folder / "rib.png")});
        CHECK_FALSE(opened.window.close());
        CHECK(opened.window.close());
    }
    SECTION("what is cleared holds nothing back")
    {
        test::press(*capture, QStringLiteral("Clear"));
        CHECK(opened.window.close());
    }
    SECTION("what is written down has them")
    {
        auto *line = capture->findChild<SquawkLineEdit *>();
        REQUIRE(line);
        QTest::keyClicks(line, QStringLiteral("rudder: dent"));
        QTest::keyClick(line, Qt::Key_Return);
        CHECK_FALSE(capture->isBegun());
        CHECK(opened.window.close());
        CHECK(opened.workshop.session()->records()->media.size() == 1);
    }
}

TEST_CASE("Photos chosen on the page of squawks hold the window back, too")
{
    Opened opened;
    opened.view().open(PageId::Squawks);
    auto *capture = opened.view().page(PageId::Squawks).findChild<SquawkCapture *>();
    REQUIRE(capture);
    capture->addPhotos({pathText(opened.folder / "rib.png")});
    opened.view().open(PageId::Today);
    CHECK_FALSE(opened.window.close());
    CHECK(opened.view().current() == PageId::Squawks);
    CHECK(opened.window.close());
}

TEST_CASE("A new project that is half typed holds the window back")
{
    test::Workshop workshop;
    test::TemporaryFolder folder;
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    MainWindow window{{settings, workshop.executor, test::theme(), workshop.clock}};
    window.resize(1280, 800);
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    test::type(window, QStringLiteral("Name of the project"), QStringLiteral("Kestrel"));
    CHECK_FALSE(window.close());
    CHECK(test::says(window, QStringLiteral("A new project is begun and not made.")));
    QTest::keyClick(&window.startPage().form(), Qt::Key_Escape);
    CHECK(test::field(window, QStringLiteral("Name of the project")).text().isEmpty());
    CHECK(window.close());
}

TEST_CASE("Photos that are being taken in hold the window back until they are on record")
{
    test::Workshop workshop;
    test::TemporaryFolder folder;
    QSettings settings{pathText(folder / "settings.ini"), QSettings::IniFormat};
    test::WaitingExecutor executor;
    MainWindow window{{settings, executor, test::theme(), workshop.clock}};
    REQUIRE(window.openFolder(pathText(workshop.folder())));
    const QString file = pathText(folder / "spar.png");
    QImage image(32, 24, QImage::Format_RGB32);
    image.fill(Qt::darkRed);
    REQUIRE(image.save(file));
    static_cast<PhotosPage &>(window.view()->page(PageId::Photos)).takeIn({file});
    Session &session = window.view()->session();
    REQUIRE_FALSE(session.running().empty());
    QString complained;
    QObject::connect(&session, &Session::complained, &window,
                     [&](const QString &sentence) { complained = sentence; });
    REQUIRE_FALSE(window.close());
    CHECK(complained.contains(QStringLiteral("being taken in")));
    SECTION("who closes again stops it")
    {
        CHECK(window.close());
        CHECK(workshop.session()->records()->media.isEmpty());
    }
    SECTION("who waits has them")
    {
        while (!session.running().empty()) {
            executor.work();
            executor.finish();
        }
        CHECK(window.close());
        CHECK(workshop.session()->records()->media.size() == 1);
    }
}

TEST_CASE("Lines that are typed and not kept are there again when the project is opened again")
{
    Opened opened;
    const auto log = QStringLiteral("Log work on this squawk");
    const auto way = QStringLiteral("A way to repair it");
    opened.showSquawk();
    test::type(opened.window, log, QStringLiteral("45m: drilled out"));
    test::type(opened.window, way, QStringLiteral("Doubler"));
    test::type(opened.window, QStringLiteral("What is for it"), QStringLiteral("light"));
    opened.view().goTo({RecordType::Component, opened.workshop.wing.value()});
    test::type(opened.window, QStringLiteral("New step"), QStringLiteral("Deburr the ribs"));
    REQUIRE(opened.window.leaveProject());
    REQUIRE(opened.window.openFolder(opened.place()));
    opened.showSquawk();
    CHECK(test::field(opened.window, log).text() == QStringLiteral("45m: drilled out"));
    CHECK(test::field(opened.window, way).text() == QStringLiteral("Doubler"));
    CHECK(test::field(opened.window, QStringLiteral("What is for it")).text() ==
          QStringLiteral("light"));
    QTest::keyClick(&test::field(opened.window, log), Qt::Key_Return);
    opened.view().goTo({RecordType::Component, opened.workshop.wing.value()});
    CHECK(test::field(opened.window, QStringLiteral("New step")).text() ==
          QStringLiteral("Deburr the ribs"));
    REQUIRE(opened.window.leaveProject());
    REQUIRE(opened.window.openFolder(opened.place()));
    opened.showSquawk();
    CHECK(test::field(opened.window, log).text().isEmpty());
}

TEST_CASE("A document and a task that are typed and not added are there again, too")
{
    Opened opened;
    const auto paper = QStringLiteral("A document that is on no list");
    const auto task = QStringLiteral("A task that the form does not name");
    const auto show = [&](const QString &place) {
        opened.view().open(PageId::Certificate);
        test::press(opened.view().page(PageId::Certificate), place);
    };
    show(QStringLiteral("Documents"));
    test::type(opened.window, paper, QStringLiteral("Letter of the club"));
    show(QStringLiteral("Major portion"));
    test::type(opened.window, task, QStringLiteral("Wings: fairings"));
    REQUIRE(opened.window.leaveProject());
    REQUIRE(opened.window.openFolder(opened.place()));
    show(QStringLiteral("Major portion"));
    CHECK(test::field(opened.window, task).text() == QStringLiteral("Wings: fairings"));
    show(QStringLiteral("Documents"));
    CHECK(test::field(opened.window, paper).text() == QStringLiteral("Letter of the club"));
    test::press(opened.view().page(PageId::Certificate), QStringLiteral("Add"));
    REQUIRE(opened.window.leaveProject());
    REQUIRE(opened.window.openFolder(opened.place()));
    show(QStringLiteral("Documents"));
    CHECK(test::field(opened.window, paper).text().isEmpty());
}

TEST_CASE("Tenths that were typed and not kept are there again when the project is opened again")
{
    Opened opened;
    Id<CreditTask> task;
    REQUIRE(opened.view().session().change(QStringLiteral("Task"), [&](Edit &edit) {
        task = acts::addTask(edit, "Wings", "Ribs");
        acts::setTenths(edit, task, {10, 0, 0, 0});
    }));
    const auto panel = [&]() -> TaskPanel & {
        opened.view().goTo({RecordType::CreditTask, task.value()});
        return *opened.view().page(PageId::Certificate).findChild<TaskPanel *>();
    };
    panel().tenths().startTyping();
    REQUIRE(opened.window.focusWidget());
    QTest::keyClicks(opened.window.focusWidget(), QStringLiteral("4"));
    REQUIRE(panel().tenths().isBeingTyped());
    REQUIRE(opened.window.leaveProject());
    REQUIRE(opened.window.openFolder(opened.place()));
    CHECK(panel().shown() == task);
    CHECK(panel().tenths().tenths() == credit::Tenths{4, 0, 0, 0});
    CHECK(credit::tenthsOf(*opened.view().session().records()->find(task)) ==
          credit::Tenths{10, 0, 0, 0});
}

TEST_CASE("The time of a stopped clock is logged once, also when the window was closed before")
{
    Opened opened;
    Session &session = opened.view().session();
    REQUIRE(session.setTimer(
        RunningTimer{session.now(), opened.workshop.bay, {}, opened.workshop.squawk}));
    opened.showSquawk();
    opened.workshop.clock.advance(std::chrono::minutes{25});
    test::press(opened.view().page(PageId::Squawks), QStringLiteral("Stop work"));
    REQUIRE(opened.window.leaveProject());
    REQUIRE(opened.window.openFolder(opened.place()));
    REQUIRE(opened.view().session().timer());
    opened.showSquawk();
    QLineEdit &line = test::field(opened.window, QStringLiteral("Log work on this squawk"));
    CHECK(line.text() == QStringLiteral("25m: "));
    QTest::keyClicks(&line, QStringLiteral("drilled out"));
    QTest::keyClick(&line, Qt::Key_Return);
    CHECK_FALSE(opened.view().session().timer());
}

} // namespace lastrivet::ui
