// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/ShiftForm.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/PhotosWindow.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>
#include <QTest>

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

namespace lastrivet::test {

namespace {

Id<Media> photo(Edit &edit, const std::string &file, std::string_view taken)
{
    Media media;
    media.file = "photos/" + file;
    media.taken_on = Moment::parse(taken);
    return edit.put(media);
}

} // namespace

TEST_CASE("The times of the chosen photos are shifted at once, and what they become is shown first")
{
    PhotosWindow window;
    Id<Media> early;
    Id<Media> late;
    Id<Media> unknown;
    window.change([&](Edit &edit) {
        early = photo(edit, "a.jpg", "2026-03-01T10:00");
        late = photo(edit, "b.jpg", "2026-03-01T23:30");
        unknown = photo(edit, "c.jpg", "");
    });
    const auto taken = [&](Id<Media> id) { return window.session->records()->find(id)->taken_on; };
    window.grid().setFocus();
    window.grid().selectAll();
    press(window.page, QStringLiteral("Shift times…"));
    type(window.page, QStringLiteral("Length of time"), QStringLiteral("1h"));
    CHECK(says(window.page, QStringLiteral("1 stay")));
    press(window.page, QStringLiteral("Shift the times"));
    CHECK(taken(early) == Moment::parse("2026-03-01T11:00"));
    CHECK(taken(late) == Moment::parse("2026-03-02T00:30"));
    CHECK_FALSE(taken(unknown));
    CHECK(window.page.findChild<ui::ShiftForm *>()->media().empty());
    CHECK(window.session->project().undoLabel() == "2 photos: times shifted forward by 1 h 00");
    window.session->undo();
    CHECK(taken(early) == Moment::parse("2026-03-01T10:00"));
    CHECK(taken(late) == Moment::parse("2026-03-01T23:30"));
}

TEST_CASE("Who shifts the times of photos that belong to log entries is told that they stay there")
{
    PhotosWindow window;
    window.change([&](Edit &edit) {
        WorkSession evening;
        evening.component_id = window.workshop.bay;
        evening.began = Moment::parse("2026-03-01T10:00");
        evening.minutes = Minutes{60};
        const auto entry = edit.put(evening);
        Media media;
        media.file = "photos/a.jpg";
        media.taken_on = Moment::parse("2026-03-01T10:30");
        media.links.push_back({RecordType::WorkSession, entry.value()});
        edit.put(media);
        photo(edit, "b.jpg", "2026-03-01T10:40");
    });
    window.grid().setFocus();
    window.grid().selectAll();
    press(window.page, QStringLiteral("Shift times…"));
    type(window.page, QStringLiteral("Length of time"), QStringLiteral("1h"));
    CHECK(says(window.page, QStringLiteral("1 belong")));
}

TEST_CASE("When the first of the chosen photos was taken in truth says how far all are shifted")
{
    PhotosWindow window;
    Id<Media> early;
    Id<Media> late;
    window.change([&](Edit &edit) {
        late = photo(edit, "b.jpg", "2026-03-01T10:30");
        early = photo(edit, "a.jpg", "2026-03-01T10:00");
    });
    window.grid().setFocus();
    window.grid().selectAll();
    press(window.page, QStringLiteral("Shift times…"));
    QComboBox &how = choice(window.page, QStringLiteral("How"));
    how.setCurrentIndex(2);
    QCoreApplication::processEvents();
    CHECK(how.height() >= how.minimumSizeHint().height());
    CHECK(how.width() >= how.minimumSizeHint().width());
    type(window.page, QStringLiteral("First taken at"), QStringLiteral("2026-02-28T09:15"));
    press(window.page, QStringLiteral("Shift the times"));
    const auto taken = [&](Id<Media> id) { return window.session->records()->find(id)->taken_on; };
    CHECK(taken(early) == Moment::parse("2026-02-28T09:15"));
    CHECK(taken(late) == Moment::parse("2026-02-28T09:45"));
}

TEST_CASE(
    "Undo in a shift that is begun anew does not bring back what was typed about other photos")
{
    PhotosWindow window;
    Id<Media> first;
    Id<Media> second;
    window.change([&](Edit &edit) {
        first = photo(edit, "a.jpg", "2026-03-01T10:00");
        second = photo(edit, "b.jpg", "2026-03-02T10:00");
    });
    window.page.showRecord({RecordType::Media, first.value()});
    press(window.page, QStringLiteral("Shift times…"));
    QLineEdit &length = field(window.page, QStringLiteral("Length of time"));
    QTest::keyClicks(&length, QStringLiteral("6h"));
    press(window.page, QStringLiteral("Shift the times"));
    window.page.showRecord({RecordType::Media, second.value()});
    press(window.page, QStringLiteral("Shift times…"));
    CHECK(length.text().isEmpty());
    CHECK_FALSE(length.isUndoAvailable());
}

TEST_CASE("A shift that is half said waits with its photos while others are looked at")
{
    PhotosWindow window;
    Id<Media> first;
    Id<Media> second;
    window.change([&](Edit &edit) {
        first = photo(edit, "a.jpg", "2026-03-01T10:00");
        second = photo(edit, "b.jpg", "2026-03-02T10:00");
    });
    window.page.showRecord({RecordType::Media, first.value()});
    press(window.page, QStringLiteral("Shift times…"));
    type(window.page, QStringLiteral("Length of time"), QStringLiteral("soon"));
    press(window.page, QStringLiteral("Shift the times"));
    CHECK(says(window.page, QStringLiteral("By how much?")));
    window.page.showRecord({RecordType::Media, second.value()});
    CHECK_FALSE(button(window.page, QStringLiteral("Shift the times")));
    window.page.showRecord({RecordType::Media, first.value()});
    CHECK(field(window.page, QStringLiteral("Length of time")).text() == QStringLiteral("soon"));
}

} // namespace lastrivet::test
