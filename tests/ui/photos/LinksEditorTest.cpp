// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/LinksEditor.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QStringList>
#include <QTest>

#include <catch2/catch.hpp>

#include <string>
#include <vector>

namespace lastrivet::ui {

namespace {

/// Photos on different parts each, and all of them on the rudder as well.
std::vector<Id<Media>> photosOfParts(Session &session, Id<Component> rudder, int count)
{
    std::vector<Id<Media>> photos;
    REQUIRE(session.change(QStringLiteral("Photos"), [&](Edit &edit) {
        for (int i = 0; i < count; ++i) {
            Component part;
            part.name = "Rib " + std::to_string(i);
            const auto rib = edit.put(part);
            Media media;
            media.taken_on = Moment::parse("2026-03-01");
            media.file = "photos/" + std::to_string(i) + ".jpg";
            media.links = {{RecordType::Component, rib.value()},
                           {RecordType::Component, rudder.value()}};
            photos.push_back(edit.put(media));
        }
    }));
    return photos;
}

/// The records that there is a row for, from top to bottom.
QStringList rows(const LinksEditor &editor)
{
    QCoreApplication::processEvents();
    QStringList names;
    for (const QPushButton *button : editor.findChildren<QPushButton *>()) {
        if (button->isVisible() && button->accessibleName().startsWith(QStringLiteral("Go to ")))
            names << button->accessibleName();
    }
    return names;
}

} // namespace

TEST_CASE("Of many records that the chosen photos belong to a few have rows, the others a button")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const auto photos = photosOfParts(*session, workshop.rudder, 20);
    LinksEditor editor(*session);
    editor.resize(400, 700);
    editor.show(photos);
    editor.QWidget::show();
    REQUIRE(QTest::qWaitForWindowExposed(&editor));
    const QStringList few = rows(editor);
    REQUIRE(few.size() == 6);
    // What all of them belong to is not among those left out.
    CHECK(few.front().startsWith(QStringLiteral("Go to part: RU")));
    CHECK_FALSE(few.front().contains(QStringLiteral(" of ")));
    test::press(editor, QStringLiteral("15 more"));
    // They come behind those that are there, and the keyboard to the first of them.
    const QStringList all = rows(editor);
    REQUIRE(all.size() == 21);
    CHECK(all.mid(0, few.size()) == few);
    REQUIRE(editor.focusWidget());
    CHECK(editor.focusWidget()->accessibleName() == all[few.size()]);
    // The same photos after a change; others begin with a few again.
    editor.show(photos);
    CHECK(rows(editor).size() == 21);
    editor.show({photos.begin(), photos.end() - 1});
    CHECK(rows(editor).size() == 6);
    editor.show({photos.front()});
    CHECK(rows(editor).size() == 2);
}

} // namespace lastrivet::ui
