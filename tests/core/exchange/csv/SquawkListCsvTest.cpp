// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/SquawkListCsv.h"

#include "core/base/Error.h"
#include "core/exchange/csv/CsvTable.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace lastrivet::exchange {

namespace {

using readiness::ListedSquawk;
using readiness::Reachable;

struct Bench {
    Bench()
    {
        put(Component{.id = Id<Component>{1}, .code = "-LW", .name = "Left, wing"});
        put(Closing{.id = Id<Closing>{7}, .title = "=Skin"});
        put(Squawk{.id = Id<Squawk>{1},
                   .number = "1",
                   .component_id = Id<Component>{1},
                   .title = "+49 \"odd\"",
                   .found_on = Moment::parse("2026-03-01")});
        put(Squawk{.id = Id<Squawk>{2},
                   .number = "2",
                   .title = "Scratch",
                   .found_on = Moment::parse("2026-03-02")});
    }
    template <class Record> void put(const Record &record) { records.put(Record::type, &record); }
    std::string cell(const CsvTable &table, std::size_t row, std::string_view column) const
    {
        const auto place = std::ranges::find(table.header, column) - table.header.begin();
        return table.rows.at(row).at(std::size_t(place));
    }

    Records records;
    std::vector<ListedSquawk> list{{Id<Squawk>{2}, Reachable::Yes, {}},
                                   {Id<Squawk>{1}, Reachable::NoLonger, {Id<Closing>{7}}}};
    Moment asOf = *Moment::parse("2026-03-14");
};

} // namespace

TEST_CASE("A list of squawks keeps its order and holds nothing that a spreadsheet would run")
{
    const Bench bench;
    std::ostringstream out;
    writeSquawkList(bench.records, bench.list, bench.asOf, out);
    const auto table = readCsv(out.str());
    REQUIRE(table);
    REQUIRE(table->rows.size() == 2);
    CHECK(bench.cell(*table, 0, "number") == "2");
    CHECK(bench.cell(*table, 1, "title") == "'+49 \"odd\"");
    CHECK(bench.cell(*table, 1, "part") == "'-LW Left, wing");
    CHECK(bench.cell(*table, 1, "closings") == "'=Skin");
    CHECK(bench.cell(*table, 1, "reachable") == "no_longer");
    CHECK(bench.cell(*table, 1, "state") == "open");
}

TEST_CASE("A closing that was taken back since the list was made is left out of it")
{
    Bench bench;
    bench.list[1].closings = {Id<Closing>{7}, Id<Closing>{8}};
    std::ostringstream out;
    writeSquawkList(bench.records, bench.list, bench.asOf, out);
    const auto table = readCsv(out.str());
    REQUIRE(table);
    CHECK(bench.cell(*table, 1, "closings") == "'=Skin");
}

TEST_CASE("A list that cannot be written leaves what was there as it was, and nothing beside it")
{
    namespace fs = std::filesystem;
    const Bench bench;
    const test::TemporaryFolder folder;
    const auto place = folder / "list.csv";
    fs::create_directory(place);
    std::ofstream(place / "older") << "older";
    CHECK_THROWS_AS(writeSquawkListFile(bench.records, bench.list, bench.asOf, place), NotSaved);
    CHECK(fs::exists(place / "older"));
    CHECK(std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator()) == 1);
}

} // namespace lastrivet::exchange
