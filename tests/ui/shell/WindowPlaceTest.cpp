// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/convert/QtText.h"
#include "ui/shell/PageList.h"
#include "ui/shell/ProjectOpening.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/RecentProjects.h"

#include <QDir>
#include <QSettings>

#include <catch2/catch.hpp>

// Where the window comes up, how large, and with what to open again.
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

TEST_CASE("A new window, as of another language, shows its project on the page that was shown")
{
    test::WholeWindow opened;
    opened.openAndShow();
    opened.window.view()->open(PageId::Squawks);
    const PageId shown = opened.window.view()->current();
    const QString folder = opened.window.openedFolder();
    REQUIRE(opened.window.close());
    MainWindow again{
        {opened.settings, opened.workshop.executor, test::theme(), opened.workshop.clock}};
    ProjectOpening opening(folder, opened.settings, opened.workshop.clock);
    REQUIRE(again.open(opening, shown));
    CHECK(again.view()->current() == PageId::Squawks);
    again.closeProject();
    ProjectOpening usual(folder, opened.settings, opened.workshop.clock);
    REQUIRE(again.open(usual));
    CHECK(again.view()->current() == PageId::Today);
}

TEST_CASE("Projects of one name are told apart by their folders where they are opened again")
{
    const test::TemporaryFolder place;
    QSettings settings(pathText(place / "settings.ini"), QSettings::IniFormat);
    RecentProjects recent(settings);
    const QDir here(pathText(place.path()));
    for (const QString &name : {QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")})
        REQUIRE(here.mkdir(name));
    recent.add(here.filePath(QStringLiteral("a")), QStringLiteral("Fox & Son"));
    CHECK(recent.label(here.filePath(QStringLiteral("a"))) == QStringLiteral("Fox && Son"));
    recent.add(here.filePath(QStringLiteral("b")), QStringLiteral("Fox & Son"));
    recent.add(here.filePath(QStringLiteral("c")), QStringLiteral("Heron"));
    const QString first = recent.label(here.filePath(QStringLiteral("a")));
    const QString second = recent.label(here.filePath(QStringLiteral("b")));
    CHECK(first.startsWith(QStringLiteral("Fox && Son – ")));
    CHECK(first != second);
    CHECK(recent.label(here.filePath(QStringLiteral("c"))) == QStringLiteral("Heron"));
}

} // namespace lastrivet::ui
