// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/PhotosWindow.h"

#include <QComboBox>

#include <catch2/catch.hpp>

namespace lastrivet::test {

TEST_CASE("Where no photo is shown, the page says why")
{
    PhotosWindow window;
    window.change([&](Edit &edit) {
        Media media;
        media.file = "photos/a.jpg";
        media.links.push_back({RecordType::Component, window.workshop.bay.value()});
        edit.put(media);
    });
    QComboBox &which = choice(window.page, QStringLiteral("Which photos"));
    const auto told = [&] { return window.grid().accessibleDescription(); };
    CHECK(told().isEmpty());
    which.setCurrentIndex(1);
    CHECK(told() == QStringLiteral("Every photo belongs to a part or a closing."));
    which.setCurrentIndex(3);
    CHECK(told() == QStringLiteral("No paper is on record."));
    which.setCurrentIndex(0);
    CHECK(told().isEmpty());
}

} // namespace lastrivet::test
