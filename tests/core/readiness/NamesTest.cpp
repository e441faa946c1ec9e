// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Names.h"

#include "core/records/Records.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

TEST_CASE("Records of every kind are named by what people gave them, and not by the program's ids")
{
    Records records;
    records.loading_cases.put({.id = Id<LoadingCase>{5011836}, .name = "Full tanks"});
    records.equipment.put({.id = Id<Equipment>{5011837}, .name = "Radio"});
    records.credit_tasks.put({.id = Id<CreditTask>{5011838}, .task = "Wing ribs"});
    const auto nameOf = [&](RecordType type, std::int64_t id) {
        return english(readiness::named(records, {type, id}));
    };
    CHECK(nameOf(RecordType::LoadingCase, 5011836) == "loading case “Full tanks”");
    CHECK(nameOf(RecordType::Equipment, 5011837).find("5011837") == std::string::npos);
    CHECK(nameOf(RecordType::CreditTask, 5011838).find("Wing ribs") != std::string::npos);
    CHECK(nameOf(RecordType::CreditTask, 5011838).find("5011838") == std::string::npos);
    // What is not on record has nothing but its id.
    CHECK(nameOf(RecordType::LoadingCase, 7) == "loading case 7");
}
