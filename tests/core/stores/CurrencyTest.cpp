// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Currency.h"

#include "core/stores/MoneyText.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <fstream>
#include <set>
#include <string>

using namespace lastrivet;
using namespace lastrivet::stores;

// ISO 4217 as the package iso-codes of Debian holds it.
TEST_CASE("Every currency of the published list is known, and nothing else with three letters")
{
    std::ifstream file("/usr/share/iso-codes/json/iso_4217.json");
    REQUIRE(file);
    std::set<std::string> published;
    const auto list = nlohmann::json::parse(file);
    for (const auto &entry : list.at("4217"))
        published.insert(entry.at("alpha_3").get<std::string>());
    REQUIRE(published.size() > 150);
    published.erase("XTS"); // for tests
    published.erase("XXX"); // for transactions without a currency
    std::set<std::string> known;
    for (char a = 'A'; a <= 'Z'; ++a)
        for (char b = 'A'; b <= 'Z'; ++b)
            for (char c = 'A'; c <= 'Z'; ++c)
                if (isCurrency(std::string{a, b, c}))
                    known.insert({a, b, c});
    CHECK(known == published);
    CHECK_FALSE(isCurrency(""));
    CHECK_FALSE(isCurrency("eur"));
    CHECK_FALSE(isCurrency("EURO"));
}

TEST_CASE("What is behind an amount and is no currency is said, whatever the project pays in")
{
    const auto read = readMoney("20 pcs", "EUR");
    REQUIRE_FALSE(read);
    CHECK(english(read.reason()) == "“20 pcs”: PCS is the code of no currency.");
    REQUIRE(readMoney("20 sek", "EUR"));
    CHECK(readMoney("20 sek", "EUR")->currency == "SEK");
    // What the project itself says stays.
    REQUIRE(readMoney("20", "XBT"));
    CHECK(readMoney("20 xbt", "XBT")->currency == "XBT");
}
