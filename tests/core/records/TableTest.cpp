// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Table.h"
#include "core/records/Component.h"

#include <catch2/catch.hpp>

#include <map>
#include <random>

using namespace lastrivet;

TEST_CASE("A table agrees with a map under random puts and removals, and snapshots do not change")
{
    std::mt19937 random(7);
    Table<Component> table;
    std::map<std::int64_t, std::string> expected;
    Table<Component> snapshot;
    std::map<std::int64_t, std::string> expectedThen;
    for (int i = 0; i < 5000; ++i) {
        const std::int64_t id = 1 + std::int64_t(random() % 900);
        if (random() % 3 == 0) {
            table.erase(id);
            expected.erase(id);
        } else {
            Component component;
            component.id = Id<Component>{id};
            component.name = std::to_string(i);
            table.put(component);
            expected[id] = component.name;
        }
        if (i == 2500) {
            snapshot = table;
            expectedThen = expected;
        }
    }
    const auto content = [](const Table<Component> &t) {
        std::map<std::int64_t, std::string> all;
        for (const auto &component : t)
            all[component.id.value()] = component.name;
        return all;
    };
    CHECK(content(table) == expected);
    CHECK(table.size() == expected.size());
    CHECK(content(snapshot) == expectedThen);
    std::int64_t walked = 0;
    for (std::int64_t id = 0; const void *row = table.nextAny(id); ++walked)
        id = static_cast<const Component *>(row)->id.value();
    CHECK(walked == std::int64_t(expected.size()));
    CHECK_FALSE(table.find(Id<Component>{901}));
    CHECK(table.find(Id<Component>{expected.begin()->first})->name == expected.begin()->second);
}
