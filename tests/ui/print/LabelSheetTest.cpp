// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LabelSheet.h"

#include "core/base/Error.h"
#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

std::vector<packet::ShelfLabel> labels(int count)
{
    std::vector<packet::ShelfLabel> labels;
    for (int i = 1; i <= count; ++i)
        labels.push_back({{RecordType::Component, 100'000 + i},
                          "LW-R" + std::to_string(i),
                          "Nose rib with a name that is rather long for a label",
                          {{"shelf {0}", {"B" + std::to_string(i)}}}});
    return labels;
}

} // namespace

TEST_CASE("Every code on a sheet of labels is read back, in every size of label")
{
    const PrintedFolder folder;
    const WingProject project;
    const auto aircraft = packet::aircraftOf(project.records, project.profile);
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        for (const print::LabelGrid &grid : print::labelGrids(paper)) {
            INFO(grid.width << " x " << grid.height);
            const auto pdf = folder.path("labels.pdf");
            const auto all = labels(grid.count());
            const auto printed =
                print::printLabels({aircraft, all, grid, 0}, imprintOfTest(), {}, pdf);
            REQUIRE(printed);
            CHECK(printed->pages == 1);
            CHECK(PrintedFolder::isSound(pdf));
            QStringList expected;
            for (const packet::ShelfLabel &label : all)
                expected << QStringLiteral("lastrivet:component:%1").arg(label.record.id);
            expected.sort();
            CHECK(folder.codesOn(pdf, 1) == expected);
            const QString text = PrintedFolder::text(pdf);
            CHECK(text.contains(QLatin1String("LW-R1")));
            CHECK(text.contains(QLatin1String("Shelf B1")));
        }
    }
}

TEST_CASE("Labels stand inside their sheet and beside each other")
{
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        const QSizeF size = print::sizeOf(paper);
        for (const print::LabelGrid &grid : print::labelGrids(paper)) {
            INFO(grid.width << " x " << grid.height);
            for (int i = 0; i < grid.count(); ++i) {
                const QRectF place = grid.place(i);
                CHECK(place.left() >= 0);
                CHECK(place.right() <= size.width() + print::millimetres(0.3));
                CHECK(place.bottom() <= size.height() + print::millimetres(0.3));
                if (i % grid.columns > 0)
                    CHECK(place.left() >= grid.place(i - 1).right() - 1);
            }
        }
    }
}

TEST_CASE("A sheet that is partly used goes on behind the used labels")
{
    const PrintedFolder folder;
    const WingProject project;
    const auto aircraft = packet::aircraftOf(project.records, project.profile);
    const print::LabelGrid grid = print::labelGrids(print::Paper::A4)[2];
    const auto pdf = folder.path("labels.pdf");
    const auto printed =
        print::printLabels({aircraft, labels(grid.count()), grid, 5}, imprintOfTest(), {}, pdf);
    REQUIRE(printed);
    CHECK(printed->pages == 2);
    CHECK(folder.codesOn(pdf, 1).size() == grid.count() - 5);
    CHECK(folder.codesOn(pdf, 2).size() == 5);
}

TEST_CASE("A day of expiry is printed whole, whatever the size of label and the length of the name")
{
    const PrintedFolder folder;
    const packet::ShelfLabel lot{{RecordType::MaterialLot, 7},
                                 "25-11804",
                                 "Tank sealant for brushes, and a long name besides",
                                 {{"use before {0}", {"2027-09-30"}}}};
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        for (const print::LabelGrid &grid : print::labelGrids(paper)) {
            INFO(grid.width << " x " << grid.height);
            const auto pdf = folder.path("labels.pdf");
            REQUIRE(print::printLabels({{}, {lot}, grid, 0}, imprintOfTest(), {}, pdf));
            const QString text = PrintedFolder::text(pdf).simplified();
            CHECK(text.contains(QLatin1String("Use before 30 Sep 2027")));
        }
    }
}

TEST_CASE("No label is no document")
{
    const PrintedFolder folder;
    CHECK_THROWS_AS(print::printLabels({{}, {}, print::labelGrids(print::Paper::A4)[0], 0},
                                       imprintOfTest(), {}, folder.path("labels.pdf")),
                    Fault);
    CHECK_FALSE(std::filesystem::exists(folder.path("labels.pdf")));
}
