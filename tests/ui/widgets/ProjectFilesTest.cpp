// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ProjectFiles.h"

#include "core/base/Error.h"
#include "core/project/acts/PhotoActs.h"
#include "tests/support/TemporaryFolder.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/SheetBox.h"

#include <QCoreApplication>
#include <QDragEnterEvent>
#include <QImage>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QUrl>

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>

namespace lastrivet::ui {

TEST_CASE("A file that is gone is said to be gone, and not to lack a program that opens it")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<Media> lost;
    REQUIRE(session->change(QStringLiteral("Photo"), [&](Edit &edit) {
        Media photo;
        photo.file = "media/lost.jpg";
        photo.sha256 = std::string(64, 'a');
        photo.imported_on = edit.today();
        lost = edit.put(photo);
    }));
    QSignalSpy complaints(session.get(), &Session::complained);
    openFile(*session, lost);
    REQUIRE(complaints.count() == 1);
    CHECK(complaints.front().front().toString().startsWith(
        QStringLiteral("media/lost.jpg is not opened: it is not there")));
}

TEST_CASE("Files that are attached are taken in by the change that attaches them")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const test::TemporaryFolder folder;
    QImage image(32, 32, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    const QString file = pathText(folder / "drawing.png");
    REQUIRE(image.save(file));
    const auto rows = session->project().journal().size();
    const auto media = session->records()->media.size();
    const auto attach = [&](Edit &edit, Id<Media> id) {
        acts::linkMedia(edit, id, {RecordType::Component, workshop.rudder.value()});
    };
    CHECK(attachFiles(*session, QStringLiteral("Rudder"), {file}, attach));
    CHECK(session->project().journal().size() == rows + 1);
    CHECK(session->records()->media.size() == media + 1);
    session->undo();
    CHECK(session->records()->media.size() == media);
    QSignalSpy complaints(session.get(), &Session::complained);
    CHECK_FALSE(
        attachFiles(*session, QStringLiteral("Rudder"), {pathText(folder / "gone.png")}, attach));
    CHECK(complaints.count() == 1);
}

TEST_CASE("A picture of a form is taken in by the change that the form makes")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const test::TemporaryFolder folder;
    QImage image(32, 32, QImage::Format_RGB32);
    image.fill(Qt::darkRed);
    SheetBox box(*session);
    const auto rows = session->project().journal().size();
    Id<Media> shown{1};
    REQUIRE(box.change(QStringLiteral("Without"), [&](Edit &edit, Id<Media> sheet) {
        shown = sheet;
        edit.update(workshop.rudder, [](Component &part) { part.note = "seen"; });
    }));
    CHECK_FALSE(shown);
    box.setFile(pathText(folder / "sheet.png"));
    REQUIRE(image.save(box.file()));
    REQUIRE(box.change(QStringLiteral("With"), [&](Edit &, Id<Media> sheet) { shown = sheet; }));
    CHECK(session->project().journal().size() == rows + 2);
    CHECK(session->records()->find(shown)->shows.contains(Shows::SignedSheet));
    CHECK(session->project().undoLabel() == "With");
}

TEST_CASE("A picture of a form whose change was not saved leaves no copy behind")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const test::TemporaryFolder folder;
    QImage image(32, 32, QImage::Format_RGB32);
    image.fill(Qt::darkBlue);
    SheetBox box(*session);
    box.setFile(pathText(folder / "sheet.png"));
    REQUIRE(image.save(box.file()));
    const auto copies = [&] {
        namespace fs = std::filesystem;
        const fs::recursive_directory_iterator photos(session->project().folder() / "photos");
        return std::count_if(begin(photos), end(photos), [](const fs::directory_entry &entry) {
            return entry.is_regular_file();
        });
    };
    const auto before = copies();
    QSignalSpy complaints(session.get(), &Session::complained);
    CHECK_FALSE(box.change(QStringLiteral("Full"), [&](Edit &, Id<Media>) {
        CHECK(copies() == before + 1);
        throw NotSaved("The disk is full.");
    }));
    CHECK(complaints.count() == 1);
    CHECK(copies() == before);
}

TEST_CASE("A picture that was chosen for a form can be left out again")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    SheetBox box(*session);
    box.show();
    const auto leaveOut = [&] { return test::button(box, QStringLiteral("Leave it out")); };
    CHECK_FALSE(leaveOut());
    box.setFile(QStringLiteral("sheet.png"));
    CHECK(test::says(box, QStringLiteral("sheet.png")));
    REQUIRE(leaveOut());
    test::press(box, QStringLiteral("Leave it out"));
    CHECK_FALSE(box.hasFile());
    CHECK_FALSE(leaveOut());
}

TEST_CASE("Of several files that are dropped on a place for one, it is told which was chosen")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    SheetBox box(*session);
    QSignalSpy complaints(session.get(), &Session::complained);
    QMimeData files;
    files.setUrls({QUrl::fromLocalFile(QStringLiteral("/tmp/page-1.png")),
                   QUrl::fromLocalFile(QStringLiteral("/tmp/page-2.png"))});
    QDragEnterEvent entered(QPoint(5, 5), Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&box, &entered);
    CHECK(entered.isAccepted());
    QDropEvent drop(QPointF(5, 5), Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&box, &drop);
    CHECK(box.file() == QStringLiteral("/tmp/page-2.png"));
    CHECK(complaints.count() == 1);
}

} // namespace lastrivet::ui
