// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ProjectFiles.h"

#include "tests/ui/support/Workshop.h"

#include <QSignalSpy>

#include <catch2/catch.hpp>

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

} // namespace lastrivet::ui
