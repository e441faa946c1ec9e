// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/MessageLine.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/shell/Progress.h"

#include <QPushButton>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("Work that goes on is shown, and can be stopped, when other work has come and gone")
{
    test::theme();
    MessageLine line;
    test::picture(line, 900, 40, "message-line");
    const auto photos = std::make_shared<Progress>(QStringLiteral("Taking in photos"));
    const auto lists = std::make_shared<Progress>(QStringLiteral("Writing lists"));
    line.follow(photos);
    line.follow(lists);
    CHECK(test::says(line, QStringLiteral("Writing lists; 1 more at work")));
    line.forget(lists);
    CHECK(test::says(line, QStringLiteral("Taking in photos")));
    test::press(line, QStringLiteral("Cancel"));
    CHECK(photos->isCancelled());
    CHECK_FALSE(lists->isCancelled());
    CHECK_FALSE(test::button(line, QStringLiteral("Cancel")));
    line.forget(photos);
    CHECK_FALSE(test::says(line, QStringLiteral("Taking in photos")));
}

} // namespace lastrivet::ui
