// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "tests/ui/support/WholeWindow.h"

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("A window that was closed over the bench comes up without it in its old frame")
{
    test::WholeWindow opened;
    opened.openAndShow();
    opened.window.toggleBench();
    REQUIRE(opened.window.isFullScreen());
    REQUIRE(opened.window.close());
    const MainWindow again{
        {opened.settings, opened.workshop.executor, test::theme(), opened.workshop.clock}};
    CHECK_FALSE(again.isFullScreen());
    CHECK_FALSE(again.bench());
}

} // namespace lastrivet::ui
