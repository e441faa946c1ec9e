// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/StoredSample.h"

#include "core/exchange/DocumentWriter.h"
#include "core/project/Project.h"
#include "core/storage/Migration.h"
#include "core/storage/Schema.h"
#include "core/storage/Shape.h"
#include "core/verify/Verification.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <sstream>

using namespace lastrivet;
using Json = nlohmann::json;
namespace fs = std::filesystem;

namespace {

Json exported(const Project &project)
{
    std::ostringstream out;
    exchange::writeDocument(*project.records(), out);
    return Json::parse(out.str());
}

/// Fields of later schemas may have come in, with what they are when nobody filled them.
bool saysAllOf(const Json &now, const Json &then)
{
    if (then.is_object()) {
        return now.is_object() &&
               std::all_of(then.items().begin(), then.items().end(), [&](const auto &member) {
                   return now.contains(member.key()) &&
                          saysAllOf(now[member.key()], member.value());
               });
    }
    if (then.is_array())
        return now.is_array() &&
               std::equal(now.begin(), now.end(), then.begin(), then.end(), saysAllOf);
    return now == then;
}

int schemaIn(const fs::path &folder)
{
    return storage::schemaOf(storage::Database(folder / "records.db",
                                               storage::Database::Access::ReadOnly,
                                               storage::Database::Safety::WriteAhead));
}

std::size_t filesIn(const fs::path &folder)
{
    return std::size_t(std::distance(fs::directory_iterator(folder), {}));
}

} // namespace

TEST_CASE("There is a stored sample of every schema that was released, and of no other")
{
    const auto names = test::storedSamples();
    REQUIRE_FALSE(names.empty());
    for (std::size_t i = 0; i < names.size(); ++i) {
        CHECK(names[i] == "schema-" + std::to_string(i + 1));
        CHECK(schemaIn(test::StoredSample(names[i]).folder()) == int(i) + 1);
    }
    CHECK(int(names.size()) <= storage::newestSchema());
}

TEST_CASE("A project of every earlier version opens, is whole, and says what it said")
{
    const auto name = GENERATE(from_range(test::storedSamples()));
    INFO(name);
    const test::StoredSample sample(name);
    const bool isOld = schemaIn(sample.folder()) < storage::newestSchema();
    CHECK(verify(sample.folder()).findings == std::vector<Finding>{});
    {
        const auto read = Project::open(sample.folder(), {nullptr, {}, true});
        CHECK(saysAllOf(exported(*read), Json::parse(sample.exported())));
        CHECK(filesIn(sample.folder() / "backups") == 0);
    }
    const auto project = Project::open(sample.folder(), {});
    REQUIRE_FALSE(project->isReadOnly());
    CHECK(filesIn(sample.folder() / "backups") == std::size_t(isOld));
    CHECK(schemaIn(sample.folder()) == storage::newestSchema());
    CHECK(saysAllOf(exported(*project), Json::parse(sample.exported())));
    CHECK(verify(sample.folder()).findings == std::vector<Finding>{});
}

TEST_CASE("The tables of an earlier project become those of a new one")
{
    const auto name = GENERATE(from_range(test::storedSamples()));
    const test::StoredSample sample(name);
    (void)Project::open(sample.folder(), {});
    const storage::Database migrated(sample.folder() / "records.db",
                                     storage::Database::Access::ReadOnly,
                                     storage::Database::Safety::WriteAhead);
    storage::Database made;
    storage::runSteps(made);
    CHECK(storage::differenceBetween(storage::shapeOf(migrated), storage::shapeOf(made)) ==
          std::nullopt);
}

TEST_CASE("What was changed under an earlier schema is undone and done again under this one")
{
    const auto name = GENERATE(from_range(test::storedSamples()));
    const test::StoredSample sample(name);
    const auto project = Project::open(sample.folder(), {});
    const auto before = project->records();
    const auto label = project->undoLabel();
    REQUIRE(label);
    REQUIRE(project->undo());
    CHECK(*project->records() != *before);
    CHECK(project->redoLabel() == label);
    REQUIRE(project->redo());
    CHECK(*project->records() == *before);
    CHECK(verify(sample.folder()).findings == std::vector<Finding>{});
}
