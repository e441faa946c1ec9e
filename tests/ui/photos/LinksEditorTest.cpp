// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/LinksEditor.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
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

/// The records that there is a row for.
int rows(const LinksEditor &editor)
{
    QCoreApplication::processEvents();
    int count = 0;
    for (const QPushButton *button : editor.findChildren<QPushButton *>()) {
        if (button->isVisible() && button->accessibleName().startsWith(QStringLiteral("Go to ")))
            ++count;
    }
    return count;
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
    CHECK(rows(editor) == 6);
    // What all of them belong to is not among those left out.
    const auto isOfAll = [](const QPushButton *button) {
        const QString name = button->accessibleName();
        return button->isVisible() && name.startsWith(QStringLiteral("Go to part: RU")) &&
               !name.contains(QStringLiteral(" of "));
    };
    const auto buttons = editor.findChildren<QPushButton *>();
    CHECK(std::ranges::any_of(buttons, isOfAll));
    test::press(editor, QStringLiteral("15 more"));
    CHECK(rows(editor) == 21);
    // The same photos after a change; others begin with a few again.
    editor.show(photos);
    CHECK(rows(editor) == 21);
    editor.show({photos.begin(), photos.end() - 1});
    CHECK(rows(editor) == 6);
    editor.show({photos.front()});
    CHECK(rows(editor) == 2);
}

} // namespace lastrivet::ui
