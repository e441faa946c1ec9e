// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/EntryPictures.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/ui/daylog/LogWindow.h"
#include "tests/ui/support/FileDrop.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/ReadOnlyPage.h"

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QImage>

#include <algorithm>
#include <vector>

namespace lastrivet::test {

namespace {

/// The entry of the bay, chosen in the list.
Id<WorkSession> chooseEntry(LogWindow &window)
{
    for (const WorkSession &entry : window.session->records()->work_sessions) {
        if (entry.component_id != window.workshop.bay)
            continue;
        window.page->showRecord({RecordType::WorkSession, entry.id.value()});
        return entry.id;
    }
    FAIL("no entry on the bay");
    return {};
}

std::vector<Media> photosOf(const LogWindow &window, Id<WorkSession> entry)
{
    std::vector<Media> photos;
    for (const Media &media : window.session->records()->media) {
        if (std::ranges::find(media.links, Media::Link{RecordType::WorkSession, entry.value()}) !=
            media.links.end())
            photos.push_back(media);
    }
    return photos;
}

QString savedPicture(const TemporaryFolder &folder, const char *name)
{
    QImage picture(64, 48, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    const QString file = QString::fromStdString((folder / name).string());
    REQUIRE(picture.save(file));
    return file;
}

} // namespace

TEST_CASE("Photos dropped on a log entry, or pasted into it, belong to it and to its part")
{
    const TemporaryFolder folder;
    LogWindow window;
    const Id<WorkSession> entry = chooseEntry(window);
    auto &pictures = *window.page->findChild<ui::EntryPictures *>();
    REQUIRE(pictures.isVisible());
    CHECK(says(pictures, QStringLiteral("No photo of this entry yet")));
    REQUIRE(dropFile(pictures, savedPicture(folder, "rib.png")));
    CHECK(photosOf(window, entry).size() == 1);
    QImage pasted(32, 32, QImage::Format_RGB32);
    pasted.fill(Qt::red);
    QGuiApplication::clipboard()->setImage(pasted);
    QTest::keyClick(button(pictures, QStringLiteral("Add photos…")), Qt::Key_V,
                    Qt::ControlModifier);
    const auto photos = photosOf(window, entry);
    REQUIRE(photos.size() == 2);
    for (const Media &photo : photos) {
        const Media::Link part{RecordType::Component, window.workshop.bay.value()};
        CHECK(std::ranges::find(photo.links, part) != photo.links.end());
    }
    CHECK(pictures.count() == 2);
    CHECK_FALSE(says(pictures, QStringLiteral("No photo of this entry yet")));
}

TEST_CASE("Photos are added to one log entry, not to several, and not to one that is withdrawn")
{
    const TemporaryFolder folder;
    LogWindow window;
    const Id<WorkSession> entry = chooseEntry(window);
    auto &pictures = *window.page->findChild<ui::EntryPictures *>();
    const auto before = window.session->records()->media.size();
    CHECK_FALSE(dropFile(pictures, QString::fromStdString((folder / "parts.csv").string())));
    auto &entries = list(*window.page, QStringLiteral("Log entries"));
    entries.setFocus();
    QTest::keySequence(&entries, QKeySequence::SelectAll);
    CHECK_FALSE(pictures.isVisible());
    window.session->change(QStringLiteral("Withdrawn"), [&](Edit &edit) {
        edit.update(entry, [&](WorkSession &copy) {
            copy.withdrawn_on = edit.today();
            copy.withdrawn_why = "of another aircraft";
        });
    });
    pictures.show(entry);
    pictures.addFiles({savedPicture(folder, "rib.png")});
    CHECK(window.session->records()->media.size() == before);
}

TEST_CASE("Who pastes a photo while somebody else has the project open is told why it is not taken")
{
    ReadOnlyPage<ui::LogPage> reader;
    const Snapshot records = reader.session->records();
    reader.page.showRecord({RecordType::WorkSession, records->work_sessions.begin()->id.value()});
    auto &pictures = *reader.page.findChild<ui::EntryPictures *>();
    REQUIRE(pictures.isVisible());
    QImage pasted(32, 32, QImage::Format_RGB32);
    pasted.fill(Qt::red);
    QGuiApplication::clipboard()->setImage(pasted);
    QTest::keyClick(&pictures, Qt::Key_V, Qt::ControlModifier);
    REQUIRE(reader.complaints.size() == 1);
    CHECK(reader.complaints.front().contains(QStringLiteral("open for writing")));
    CHECK(reader.session->records()->media.size() == records->media.size());
}

} // namespace lastrivet::test
