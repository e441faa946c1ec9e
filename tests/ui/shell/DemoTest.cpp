// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Demo.h"

#include "core/base/Error.h"
#include "core/project/Project.h"
#include "tests/support/FakeClock.h"
#include "tests/support/TemporaryFolder.h"
#include "ui/convert/QtText.h"

#include <QDir>
#include <QFile>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

struct Installed {
    Installed(const char *text)
    {
        QFile file(document);
        REQUIRE(file.open(QIODevice::WriteOnly));
        REQUIRE(file.write(text) > 0);
    }

    test::TemporaryFolder folder;
    QDir place{pathText(folder.path())};
    QString document = place.filePath(QStringLiteral("demo.json"));
    QString project = place.filePath(QStringLiteral("own/data/Demo.lastrivet"));
    test::FakeClock clock;
    Demo demo{project, document};
};

constexpr const char *wing = R"({"format": "lastrivet-records", "version": 1,
    "project": {"name": "Look around", "profile": "ca", "time_zone": "America/Toronto"},
    "components": [{"id": 1, "name": "Wing", "kind": "assembly"}]})";

} // namespace

TEST_CASE("A demo that came as a document is made into a project once")
{
    Installed installed(wing);
    REQUIRE(installed.demo.isThere());
    REQUIRE(installed.demo.open(installed.clock) == installed.project);
    const auto parts = [&] {
        return Project::open(toPath(installed.project), {&installed.clock, {}, true})
            ->records()
            ->components.size();
    };
    CHECK(parts() == 1);
    REQUIRE(QFile::remove(installed.document));
    CHECK(installed.demo.isThere());
    CHECK(installed.demo.open(installed.clock) == installed.project);
    CHECK(parts() == 1);
}

TEST_CASE("A demo that cannot be made is told, and leaves its place free")
{
    Installed installed("{");
    CHECK_THROWS_AS(installed.demo.open(installed.clock), Fault);
    CHECK_FALSE(QDir(installed.project).exists());
    CHECK_FALSE(Demo().isThere());
    CHECK_FALSE(Demo(installed.project, installed.project).isThere());
}

} // namespace lastrivet::ui
