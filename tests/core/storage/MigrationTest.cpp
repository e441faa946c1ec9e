// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Migration.h"

#include "core/base/Error.h"
#include "core/project/Project.h"
#include "core/storage/Journal.h"
#include "core/storage/Schema.h"
#include "core/storage/Shape.h"
#include "core/verify/Verification.h"
#include "tests/support/EarlierProject.h"

#include <catch2/catch.hpp>

#include <fstream>

using namespace lastrivet;
using namespace lastrivet::storage;
namespace fs = std::filesystem;

namespace {

/// A part that was made and then renamed, before its table got another column.
struct Fixture {
    Fixture()
    {
        old.change("Part Wing", R"(INSERT INTO "component" ("id","name","kind")
                                   VALUES (5,'Wing','part'))");
        old.change("Renamed", R"(UPDATE "component" SET "name"='Left wing' WHERE "id"=5)");
    }

    std::unique_ptr<Project> open() const { return Project::open(old.folder().root(), {}); }
    Database read() const
    {
        return {old.folder().database(), Database::Access::ReadOnly, Database::Safety::WriteAhead};
    }
    std::vector<fs::path> copies() const
    {
        std::vector<fs::path> files;
        for (const auto &entry : fs::directory_iterator(old.folder().backups()))
            files.push_back(entry.path());
        return files;
    }
    std::vector<Finding> findings() const { return verify(old.folder().root()).findings; }

    test::EarlierProject old;
};

std::string newestHash(Database database)
{
    return Journal(database).newestHash();
}

Component partIn(const Project &project)
{
    return *project.records()->components.find(Id<Component>{5});
}

constexpr const char *fillShelf = R"(UPDATE "component" SET "shelf"='Loft' WHERE "shelf" IS NULL;)";

std::optional<JournalEntry> migrationIn(const Project &project)
{
    for (const auto &entry : project.journal()) {
        if (entry.kind == ChangeKind::Migration && entry.seq > 1)
            return entry;
    }
    return std::nullopt;
}

} // namespace

TEST_CASE("A step that only adds a column writes no journal row, and the copy made first stays")
{
    Fixture fixture;
    const auto before = newestHash(fixture.read());
    fixture.old.migrate();
    const auto copies = fixture.copies();
    REQUIRE(copies.size() == 1);
    Database copy(copies[0], Database::Access::ReadOnly, Database::Safety::RollbackJournal);
    CHECK(schemaOf(copy) == test::EarlierProject::lastSchema() - 1);
    CHECK(Journal(copy).newestHash() == before);
    const auto project = fixture.open();
    CHECK(project->journalHash() == before);
    CHECK(fixture.findings() == std::vector<Finding>{});
}

TEST_CASE("A change recorded before a column was added is undone and done again after it")
{
    Fixture fixture;
    fixture.old.migrate();
    const auto project = fixture.open();
    REQUIRE(project->undo());
    CHECK(partIn(*project).name == "Wing");
    REQUIRE(project->undo());
    CHECK(project->records()->components.isEmpty());
    REQUIRE(project->redo());
    REQUIRE(project->redo());
    CHECK(partIn(*project).name == "Left wing");
    REQUIRE(project->change("Withdrawn",
                            [](Edit &edit) { edit.withdraw(Id<Component>{5}, "entered twice"); }));
    CHECK(fixture.findings() == std::vector<Finding>{});
    REQUIRE(project->undo());
    REQUIRE(project->undo());
    CHECK(partIn(*project).name == "Wing");
    CHECK(fixture.findings() == std::vector<Finding>{});
}

TEST_CASE("What a step rewrites is a row of the journal that undo stops at, and is found by search")
{
    Fixture fixture;
    fixture.old.migrate(fillShelf, 1'000);
    const auto project = fixture.open();
    CHECK(partIn(*project).shelf == "Loft");
    const auto row = migrationIn(*project);
    REQUIRE(row);
    CHECK(row->change_id == migrationId(test::EarlierProject::lastSchema()));
    CHECK(row->schema == test::EarlierProject::lastSchema());
    CHECK(project->changesOf(row->seq).size() == 1);
    CHECK_FALSE(project->undoLabel());
    CHECK(project->search("loft").size() == 1);
    CHECK(fixture.findings() == std::vector<Finding>{});
}

TEST_CASE("Copies of a project that were migrated apart have the migration in common")
{
    const auto migrated = [](std::int64_t now) {
        Fixture fixture;
        fixture.old.migrate(fillShelf, now);
        const auto project = fixture.open();
        const auto row = *migrationIn(*project);
        auto database = fixture.read();
        return std::pair(row.change_id, Journal(database).changeset(row.seq));
    };
    CHECK(migrated(1'000) == migrated(5'000'000));
}

TEST_CASE("A step that fails leaves the database as it was, says so once, and keeps the copy")
{
    Fixture fixture;
    const auto [statement, why] = GENERATE(table<std::string, std::string>({
        {"CREATE TABLE \"component\" (nonsense)", "already exists"},
        {R"(UPDATE "component" SET "parent_id"=99;)", "names a component that does not exist"},
        {R"(UPDATE "component" SET "name"=NULL;)", "NOT NULL constraint failed"},
    }));
    const auto shape = shapeOf(fixture.read());
    for (int attempt = 0; attempt < 2; ++attempt) {
        CHECK_THROWS_MATCHES(fixture.old.migrate(statement), NotSaved,
                             Catch::Predicate<NotSaved>([&, why = why](const NotSaved &fault) {
                                 const std::string said = fault.what();
                                 return said.find(why) != std::string::npos &&
                                        said.find("is whole at schema") != std::string::npos &&
                                        said.find(fixture.copies().at(0).string()) !=
                                            std::string::npos;
                             }));
        CHECK(fixture.copies().size() == 1);
    }
    CHECK(schemaOf(fixture.read()) == test::EarlierProject::lastSchema() - 1);
    CHECK(shapeOf(fixture.read()) == shape);
    fixture.old.migrate();
    CHECK(fixture.findings() == std::vector<Finding>{});
}

TEST_CASE("A reference that dangled before a step is for verify to tell, not a reason to stay out")
{
    Fixture fixture;
    fixture.old.tamper(R"(PRAGMA foreign_keys=OFF; UPDATE "component" SET "parent_id"=99)");
    REQUIRE_NOTHROW(fixture.old.migrate());
    CHECK(partIn(*fixture.open()).name == "Left wing");
    const auto findings = fixture.findings();
    CHECK(std::any_of(findings.begin(), findings.end(), [](const Finding &finding) {
        return finding.text.find("does not exist") != std::string::npos;
    }));
}

TEST_CASE("A database whose tables somebody altered is not migrated, and the difference is named")
{
    Fixture fixture;
    fixture.old.tamper(R"(ALTER TABLE "component" ADD COLUMN "colour" TEXT)");
    CHECK_THROWS_WITH(fixture.old.migrate(), Catch::Contains("component: 16 colour TEXT"));
    CHECK(fixture.copies().size() == 1);
}

TEST_CASE("A copy that cannot be made keeps the migration from beginning")
{
    Fixture fixture;
    fs::remove(fixture.old.folder().backups());
    std::ofstream(fixture.old.folder().backups()) << "a file where the folder should be";
    CHECK_THROWS_WITH(fixture.old.migrate(), Catch::Contains("no copy of it could be made"));
    CHECK(schemaOf(fixture.read()) == test::EarlierProject::lastSchema() - 1);
}

TEST_CASE("Comments and line breaks make no difference to a shape, a default does")
{
    const auto shaped = [](const char *statement) {
        Database database;
        database.run(statement);
        return shapeOf(database);
    };
    const auto plain = shaped(R"(CREATE TABLE "bin" ("id" INTEGER PRIMARY KEY, "b" TEXT) STRICT)");
    CHECK(shaped("CREATE TABLE \"bin\" (\"id\" INTEGER PRIMARY KEY, -- a number\n"
                 "   \"b\" TEXT) STRICT") == plain);
    CHECK(shaped(R"(CREATE TABLE "bin" ("id" INTEGER PRIMARY KEY, "b" TEXT DEFAULT 'x') STRICT)") !=
          plain);
    CHECK(shaped(R"(CREATE TABLE "bin" ("id" INTEGER PRIMARY KEY, "b" TEXT))") != plain);
    CHECK(shaped(R"(CREATE TABLE "bin" ("id" INTEGER PRIMARY KEY, "b" TEXT) STRICT;
                    CREATE INDEX "b" ON "bin" ("b"))") != plain);
}
