// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvImport.h"
#include "core/exchange/csv/CsvExport.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <sstream>
#include <string>

using namespace lastrivet;
using namespace lastrivet::exchange;
using namespace lastrivet::test;

namespace {

using Fate = CsvRow::Fate;
using Said = std::vector<std::string>;

CsvPlan planOf(const ProjectBuilder &project, RecordType type, std::string_view text,
               std::int64_t last = 1000)
{
    const auto table = readCsv(text);
    REQUIRE(table);
    return planCsv(*table, type, columnsByHeader(*table, type), project.records, project.profile,
                   [&last] { return ++last; });
}

Said sentences(const CsvPlan &plan)
{
    Said all;
    for (const auto &error : plan.errors)
        all.push_back(english(error, "f"));
    return all;
}

std::vector<Fate> fates(const CsvPlan &plan)
{
    std::vector<Fate> all;
    for (const auto &row : plan.rows)
        all.push_back(row.fate);
    return all;
}

} // namespace

TEST_CASE("Columns are known by their headers, and others are left out")
{
    const auto table = readCsv("Name,Part Number,Colour,name,PART\nx");
    REQUIRE(table);
    CHECK(columnsByHeader(*table, RecordType::PartLine) ==
          CsvColumns{"name", "part_number", "", "", "component_id"});
    CHECK(doubledColumns(*table, RecordType::PartLine) == std::vector<std::string>{"name"});
    const auto nameless = readCsv("Name,,\nx,,");
    REQUIRE(nameless);
    CHECK(doubledColumns(*nameless, RecordType::PartLine).empty());
}

TEST_CASE("Columns are known by what German and French people write over them")
{
    const auto columns = [](std::string_view header, RecordType type) {
        const auto table = readCsv(std::string(header) + "\nx");
        REQUIRE(table);
        return columnsByHeader(*table, type);
    };
    CHECK(columns("Tag;Teil;Dauer;Beschreibung", RecordType::WorkSession) ==
          CsvColumns{"began", "component_id", "minutes", "note"});
    CHECK(columns("Teil;Beschreibung;Stunden;Erledigt;Notiz", RecordType::Step) ==
          CsvColumns{"component_id", "title", "estimate_minutes", "done_on", "note"});
    CHECK(columns("ÉTAPE;Pièce;Fait;Remarques", RecordType::Step) ==
          CsvColumns{"title", "component_id", "done_on", "note"});
    CHECK(columns("Artikel;Teile-Nr;Menge;Stückpreis;Währung;Einheit", RecordType::PartLine) ==
          CsvColumns{"name", "part_number", "quantity", "unit_price", "currency", ""});
    CHECK(columns("Teil;Gehört zu;Anmerkung", RecordType::Component) ==
          CsvColumns{"name", "parent_id", "note"});
    CHECK(columns("Bezeichnung;Art.-Nr.;Anzahl;Preis/Stk.", RecordType::PartLine) ==
          CsvColumns{"name", "part_number", "quantity", "unit_price"});
    CHECK(columns("Désignation;Réf.;Qté.;P.U. HT;Total HT", RecordType::PartLine) ==
          CsvColumns{"name", "part_number", "quantity", "unit_price", ""});
    // Of two for one field the first.
    CHECK(columns("code,name,note,comment", RecordType::Component) ==
          CsvColumns{"code", "name", "note", ""});
}

TEST_CASE("A list of parts finds the parents within itself and on record")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    project.change(wing, [](Component &c) { c.code = "W"; });
    const auto plan = planOf(project, RecordType::Component,
                             "code,name,parent,kind,construction,position\n"
                             "W-R1,Rib 1,W,part,metal,1\n"
                             "W-R1-A,Clip,W-R1,,Metal,\n"
                             ",,,,,\n"
                             "T,Tank,Wing,fuel tank,,2\n");
    CHECK(sentences(plan).empty());
    CHECK(fates(plan) == std::vector{Fate::Added, Fate::Added, Fate::Blank, Fate::Added});
    CHECK(english(plan.rows[1].record) == "part W-R1-A “Clip”");
    const auto nut = planOf(project, RecordType::PartLine, "name,quantity\nNut,3\n");
    CHECK(english(nut.rows[0].record) == "packing line “Nut”");
    CHECK(plan.rows[3].row == 5);
    const auto &parts = plan.import.merged.components;
    CHECK(parts.find(Id<Component>{1001})->parent_id == wing);
    CHECK(parts.find(Id<Component>{1002})->parent_id == Id<Component>{1001});
    CHECK(parts.find(Id<Component>{1002})->construction == Construction::Metal);
    CHECK(parts.find(Id<Component>{1003})->kind == ComponentKind::FuelTank);
    CHECK(parts.find(Id<Component>{1003})->position == 2);
}

TEST_CASE("A number is an id first where the column is headed as an export heads it, else a code")
{
    ProjectBuilder project;
    const auto plan = planOf(project, RecordType::Component,
                             "id,parent_id,code,name\n11,,12,Wing\n12,11,11,Rib\n");
    CHECK(sentences(plan).empty());
    CHECK(plan.import.merged.components.find(Id<Component>{12})->parent_id == Id<Component>{11});
    project.records = plan.import.merged;
    const auto partOf = [&](std::string_view list) {
        const auto steps = planOf(project, RecordType::Step, list);
        CHECK(sentences(steps).empty());
        return steps.import.merged.steps.find(Id<Step>{1001})->component_id;
    };
    CHECK(partOf("component_id,title\n11,Drill\n") == Id<Component>{11});
    CHECK(partOf("part,title\n11,Drill\n") == Id<Component>{12});
    CHECK(partOf("component_id,title\nWing,Drill\n") == Id<Component>{11});
}

TEST_CASE("A log has its people by name, and is the builder's where it names none")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto helper = project.person("Bo", {Role::Helper});
    const auto plan = planOf(project, RecordType::WorkSession,
                             "began,minutes,part,kind,workers,note\n"
                             "2026-03-14 09:30,90,Wing,fabrication,Ada Plank; Bo,ribs\n"
                             "2026-03-15,,,,,\"found, later\"\n");
    CHECK(sentences(plan).empty());
    const auto *first = plan.import.merged.find(Id<WorkSession>{1001});
    REQUIRE(first);
    CHECK(first->began == on("2026-03-14T09:30"));
    CHECK(first->component_id == wing);
    CHECK(first->workers == std::vector<WorkSession::Worker>{{project.builder}, {helper}});
    const auto *second = plan.import.merged.find(Id<WorkSession>{1002});
    REQUIRE(second);
    CHECK_FALSE(second->minutes);
    CHECK(second->workers == std::vector<WorkSession::Worker>{{project.builder}});
    CHECK(second->note == "found, later");
}

TEST_CASE("Who worked is read below the words that people head it with, and is not the builder")
{
    ProjectBuilder project;
    const auto helper = project.person("Bo", {Role::Helper});
    for (const std::string_view header : {"who", "People", "Wer", "Qui"}) {
        INFO(header);
        const auto plan = planOf(project, RecordType::WorkSession,
                                 "date,minutes," + std::string(header) + "\n2026-03-14,90,Bo\n");
        CHECK(sentences(plan).empty());
        const auto *session = plan.import.merged.find(Id<WorkSession>{1001});
        REQUIRE(session);
        CHECK(session->workers == std::vector<WorkSession::Worker>{{helper}});
    }
}

TEST_CASE("What is wrong is told by row and column, and rows without fault keep theirs")
{
    ProjectBuilder project;
    project.part("Rib");
    project.part("Rib");
    const auto plan = planOf(project, RecordType::PartLine,
                             "name,quantity,component_id,received_on\n"
                             "Bolt,12,,2026-03-14\n"
                             "Nut,twelve,Rib,2026-02-30\n"
                             ",1.5,Wing,\n");
    CHECK(fates(plan) == std::vector{Fate::Added, Fate::Wrong, Fate::Wrong});
    CHECK(
        sentences(plan) ==
        Said{
            "f: row 3, column quantity: packing line 1002 “Nut”: “twelve” is no number of "
            "pieces; write it in figures alone, as 12 or 1200.",
            "f: row 3, column component_id: packing line 1002 “Nut”: There are several parts "
            "called "
            "“Rib”; name it by code or id.",
            "f: row 3, column received_on: packing line 1002 “Nut”: “2026-02-30” is no day or time "
            "that exists: YYYY-MM-DD or YYYY-MM-DDTHH:MM, from 1900 to 2199.",
            "f: row 4, column quantity: packing line 1003: “1.5” is no number of pieces; "
            "write it in figures alone, as 12 or 1200.",
            "f: row 4, column component_id: packing line 1003: No part has the code or name "
            "“Wing”.",
            "f: row 4: packing line 1003: The field name is missing."});
}

TEST_CASE("Invariants hold for lists too")
{
    ProjectBuilder project;
    project.part("Wing");
    const auto plan = planOf(project, RecordType::WorkSession, "began,minutes\n2026-03-14,0\n");
    CHECK(fates(plan) == std::vector{Fate::Wrong});
    CHECK(sentences(plan) == Said{"f: row 2: Log entry 1001 of 2026-03-14 lasts 0 minutes; leave "
                                  "them empty when they are "
                                  "not known."});
}

TEST_CASE("A list that this program wrote is there already when it is taken in again")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto drill = project.step(wing, "=Drill");
    project.step(wing, "Rivet", {drill});
    project.session(wing, "2026-03-14T10:00", 90);
    project.partLine(wing, "-Bolt", 4);
    for (const RecordType type : csvRecordTypes()) {
        std::ostringstream out;
        writeCsv(project.records, type, out);
        const auto plan = planOf(project, type, out.str());
        INFO(out.str());
        CHECK(sentences(plan).empty());
        CHECK(plan.import.added.empty());
        REQUIRE_FALSE(plan.rows.empty());
        for (const auto &row : plan.rows)
            CHECK(row.fate == Fate::AlreadyThere);
    }
}

TEST_CASE("A log that grows is taken in again and again, and counts nothing twice")
{
    ProjectBuilder project;
    project.part("Wing");
    const std::string log = "began,minutes,part,note\n2026-03-01,90,Wing,Drilled\n"
                            "2026-03-01,90,Wing,Drilled\n";
    const auto first = planOf(project, RecordType::WorkSession, log);
    CHECK(fates(first) == std::vector{Fate::Added, Fate::Added});
    project.records = first.import.merged;
    const auto again =
        planOf(project, RecordType::WorkSession,
               log + "2026-03-02,30,Wing,Deburred\n2026-03-01,90,Wing,Drilled\n", 2000);
    CHECK(sentences(again).empty());
    CHECK(fates(again) ==
          std::vector{Fate::AlreadyThere, Fate::AlreadyThere, Fate::Added, Fate::Added});
    CHECK(again.import.added.size() == 2);
    CHECK(again.import.skipped == 2);
}

TEST_CASE("Parts that are on record are known again with all that lies in them")
{
    ProjectBuilder project;
    const std::string parts = "code,name,parent\nT-1-a,Rib,T-1\nT,Tail,\nT-1,Fin,T\n";
    project.records = planOf(project, RecordType::Component, parts).import.merged;
    const auto again = planOf(project, RecordType::Component, parts + "T-2,Rudder,T\n", 2000);
    CHECK(sentences(again).empty());
    CHECK(fates(again) ==
          std::vector{Fate::AlreadyThere, Fate::AlreadyThere, Fate::AlreadyThere, Fate::Added});
    const auto changed = planOf(project, RecordType::Component, "code,name\nT,Empennage\n", 2000);
    CHECK(fates(changed) == std::vector{Fate::Wrong});
}

TEST_CASE("Columns may be called what people call them, and durations written as people write them")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto plan = planOf(project, RecordType::WorkSession,
                             "Date,Part,Duration,What\n2026-03-01,Wing,2h15,Drilled\n"
                             "2026-03-02,Wing,90,Riveted\n2026-03-03,Wing,long,Rested\n");
    CHECK(fates(plan) == std::vector{Fate::Added, Fate::Added, Fate::Wrong});
    std::vector<std::int64_t> minutes;
    for (const WorkSession &session : plan.import.merged.work_sessions) {
        CHECK(session.component_id == wing);
        minutes.push_back(session.minutes.value_or(Minutes{}).count());
    }
    CHECK(minutes[0] == 135);
    CHECK(minutes[1] == 90);
}

TEST_CASE("A length of time may be long, and what is wrong with one is said of what was written")
{
    ProjectBuilder project;
    project.part("Wing");
    const auto plan = planOf(project, RecordType::Step,
                             "part,title,estimate\nWing,Rivet,150h\nWing,Paint,-2h\n"
                             "Wing,Rest,1e2\n");
    CHECK(fates(plan) == std::vector{Fate::Added, Fate::Wrong, Fate::Wrong});
    CHECK(plan.import.merged.steps.find(Id<Step>{1001})->estimate_minutes == Minutes{9000});
    CHECK(sentences(plan) ==
          Said{"f: row 4, column estimate: step 1003 “Rest”: “1e2” is no length of time, as 1:30 "
               "or 2h15.",
               "f: row 3: Step 1002 “Paint” has estimate_minutes -120, which is below zero."});
}

TEST_CASE("A name means the part and the person that count, not ones that were taken back")
{
    ProjectBuilder project;
    const auto first = project.part("Rib");
    const auto second = project.part("Rib");
    project.withdraw(first);
    project.withdraw(project.person("Bo", {Role::Helper}));
    const auto bo = project.person("Bo", {Role::Helper});
    const auto plan = planOf(project, RecordType::WorkSession,
                             "began,minutes,part,workers\n2026-03-14,90,Rib,Bo\n");
    CHECK(sentences(plan).empty());
    const auto *session = plan.import.merged.find(Id<WorkSession>{1001});
    REQUIRE(session);
    CHECK(session->component_id == second);
    CHECK(session->workers == std::vector<WorkSession::Worker>{{bo}});
}

TEST_CASE("Only a length of time may be written with a colon, a number of parts is a number")
{
    ProjectBuilder project;
    const auto plan = planOf(project, RecordType::PartLine, "name,quantity\nBolt,1:30\n");
    CHECK(fates(plan) == std::vector{Fate::Wrong});
}

TEST_CASE("A quantity may have blanks between its thousands, as French spreadsheets write it")
{
    ProjectBuilder project;
    const auto plan = planOf(project, RecordType::PartLine,
                             "Désignation;Qté\nRivet;1 200\nClou;12\u00a0000\nVis;1\u202f000\n");
    CHECK(sentences(plan).empty());
    const auto &lines = plan.import.merged.part_lines;
    CHECK(lines.find(Id<PartLine>{1001})->quantity == 1200);
    CHECK(lines.find(Id<PartLine>{1002})->quantity == 12000);
    CHECK(lines.find(Id<PartLine>{1003})->quantity == 1000);
    for (const std::string quantity : {"1200 250", "12 25", "1 2", "1 2000", "x 100"})
        CHECK(fates(planOf(project, RecordType::PartLine,
                           "Désignation;Qté\nRivet;" + quantity + "\n")) ==
              std::vector{Fate::Wrong});
}

TEST_CASE("A quantity may have a word for pieces behind it, or the noughts of a spreadsheet")
{
    ProjectBuilder project;
    const auto quantity = [&](const std::string &text) {
        const auto plan = planOf(project, RecordType::PartLine, "Item;Qty\nRivet;" + text + "\n");
        const auto *line = plan.import.merged.part_lines.find(Id<PartLine>{1001});
        return plan.errors.empty() && line ? line->quantity : -1;
    };
    for (const auto *text : {"12", "12 pcs", "12pcs.", "12 EA", "12 Stk.", "12 St", "12 Stück",
                             "12 pièces", "12x", "12 ×", "12 off", "12 *", "12.0", "12,00"}) {
        INFO(text);
        CHECK(quantity(text) == 12);
    }
    CHECK(quantity("1 200 pcs") == 1200);
    for (const auto *text : {"12.5", "1.200", "1,200", "4.000", "12 ft", "12 m", "pcs", "x 12",
                             "12 boxes", "2.0.0", ".0", "12."}) {
        INFO(text);
        CHECK(quantity(text) == -1);
    }
}

TEST_CASE("However many columns name no field, those that do are found")
{
    CsvTable table;
    for (int i = 0; i < 50'000; ++i)
        table.header.push_back("c" + std::to_string(i));
    table.header.push_back("Title");
    const auto columns = columnsByHeader(table, RecordType::Step);
    CHECK(columns.back() == "title");
    CHECK(std::count(columns.begin(), columns.end(), std::string()) == 50'000);
    CHECK(doubledColumns(table, RecordType::Step).empty());
}
