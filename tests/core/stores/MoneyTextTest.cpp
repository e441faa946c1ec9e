// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/MoneyText.h"

#include "core/base/Id.h"
#include "core/stores/ExpenseLine.h"
#include "core/stores/MoneySum.h"

#include <catch2/catch.hpp>

#include <limits>
#include <string>

using namespace lastrivet;
using namespace lastrivet::stores;

namespace {

std::int64_t minor(std::string_view text, std::string_view usual = "EUR",
                   DecimalSign sign = DecimalSign::Unknown)
{
    const auto money = readMoney(text, usual, sign);
    INFO(text);
    REQUIRE(money);
    return money->minor_units;
}

std::string why(std::string_view text, std::string_view usual = "EUR",
                DecimalSign sign = DecimalSign::Unknown)
{
    const auto money = readMoney(text, usual, sign);
    INFO(text);
    REQUIRE_FALSE(money);
    return english(money.reason());
}

} // namespace

TEST_CASE("An amount is read as people write it, in any of the usual ways to part its figures")
{
    CHECK(minor("12.50") == 1250);
    CHECK(minor("12,5") == 1250);
    CHECK(minor("12") == 1200);
    CHECK(minor(" 0.05 ") == 5);
    CHECK(minor("1,234.50") == 123450);
    CHECK(minor("1.234,50") == 123450);
    CHECK(minor("1 234,50") == 123450);
    CHECK(minor("1\u00a0234,50") == 123450);
    CHECK(minor("1'234.50") == 123450);
    CHECK(minor("1’234.50") == 123450);
    CHECK(minor("12 250") == 1225000);
    CHECK(minor("12,-") == 1200);
    CHECK(minor("12.–") == 1200);
    CHECK(minor("12,— €") == 1200);
    CHECK(minor("1.234,--") == 123400);
    CHECK(minor("1'234.-") == 123400);
    CHECK(minor("1,234.–") == 123400);
    CHECK(minor("1,234,567") == 123456700);
    CHECK(minor("0.1") == 10);
    CHECK(minor(".50") == 50);
}

TEST_CASE("The currency stands before or behind the amount, or is the usual one")
{
    CHECK(readMoney("12.50 cad", "EUR")->currency == "CAD");
    CHECK(readMoney("USD 3", "EUR")->currency == "USD");
    CHECK(readMoney("€ 3", "CAD")->currency == "EUR");
    CHECK(readMoney("3 £", "CAD")->currency == "GBP");
    CHECK(readMoney("$3.20", "CAD")->currency == "CAD");
    CHECK(readMoney("3", "cad")->currency == "CAD");
    CHECK(why("12.50", "") == "“12.50” names no currency; write it behind, in three letters.");
    CHECK(why("$12", "EUR") == "“$12” is no amount; write it like 12.50.");
}

TEST_CASE("A dash stands for no cents, and the euro may be written as a word")
{
    CHECK(minor("12,-") == 1200);
    CHECK(minor("12,-- €") == 1200);
    CHECK(minor("12,–") == 1200);
    CHECK(minor("100.-", "CHF") == 10000);
    CHECK(minor("1.234,-") == 123400);
    CHECK(minor("1 234,-") == 123400);
    CHECK(minor("1'234.—", "CHF") == 123400);
    CHECK(minor("1.234,-", "JPY") == 1234);
    CHECK(readMoney("12,50 Euro", "CAD")->currency == "EUR");
    CHECK(readMoney("3 euros", "CAD")->minor_units == 300);
    for (const auto *text : {"12-", ",-", "12,---", "-,12"})
        CHECK_FALSE(readMoney(text, "EUR"));
}

TEST_CASE("A currency is known by its code, its name or its sign, and an amount keeps its size")
{
    for (const auto *text : {"EUR", " eur ", "Euro", "€"})
        CHECK(currencyCode(text) == "EUR");
    CHECK(currencyCode("£") == "GBP");
    for (const auto *text : {"", "$", "XXQ", "EURO2", "money"})
        CHECK(currencyCode(text).empty());
    CHECK(withDecimals(1250, 0) == 1250);
    CHECK(withDecimals(1250, 1) == 12500);
    CHECK(withDecimals(1200, -2) == 12);
    CHECK_FALSE(withDecimals(1250, -2));
    CHECK_FALSE(withDecimals(largestId, 1));
}

TEST_CASE("Whether one sign parts thousands is told by what the person has before decimals")
{
    using enum DecimalSign;
    CHECK(minor("1.789 €", "EUR", Comma) == 178900);
    CHECK(minor("1,789 €", "EUR", Point) == 178900);
    CHECK(why("1,789 €", "EUR", Comma) == "“1,789 €” has more decimals than EUR has.");
    CHECK(why("1.789", "USD", Point) == "“1.789” has more decimals than USD has.");
    CHECK(why("1,789 €") == "“1,789 €” may be 1789 or 1.789; write 1789 when that is meant.");
    CHECK(why("1.789") == "“1.789” may be 1789 or 1.789; write 1789 when that is meant.");
    CHECK(minor("1,789", "KWD", Comma) == 1789);
    CHECK(why("1.789", "KWD", Comma) ==
          "“1.789” may be 1789 or 1,789; write 1789 when that is meant.");
    CHECK(why("1,234 JPY", "EUR", Comma) == "“1,234 JPY” has more decimals than JPY has.");
    for (const auto sign : {Unknown, Point, Comma}) {
        CHECK(minor("1.234,50", "EUR", sign) == 123450);
        CHECK(minor("12,50", "EUR", sign) == 1250);
        CHECK(minor("12.50", "EUR", sign) == 1250);
        CHECK(why("0,125", "EUR", sign) == "“0,125” has more decimals than EUR has.");
    }
}

TEST_CASE("An amount may say which sign its writer has before decimals")
{
    using enum DecimalSign;
    for (const auto *text : {"1.234,50", "0,95 USD", "12,5", "1.234.567", "0,125", "1.234,-"})
        CHECK(decimalSignIn(text) == Comma);
    for (const auto *text : {"1,234.50", "$0.95", "1'234.50", "1,234,567", "12.–"})
        CHECK(decimalSignIn(text) == Point);
    for (const auto *text : {"1,234", "1.234 €", "12", "", "12.03.2026", "free"})
        CHECK(decimalSignIn(text) == Unknown);
}

TEST_CASE("What is no amount is told in one sentence")
{
    CHECK(why("12-") == "“12-” is no amount; write it like 12.50.");
    CHECK(why(",-") == "“,-” is no amount; write it like 12.50.");
    CHECK(why("-20") == "“-20” is below zero: amounts are of what was paid.");
    CHECK(why("EUR -20") == "“EUR -20” is below zero: amounts are of what was paid.");
    CHECK(why("twelve") == "“twelve” is no amount; write it like 12.50.");
    CHECK(why("") == "“” is no amount; write it like 12.50.");
    for (const auto *text : {"1500 250", "12 50", "1 2345", "1.234 567", "12.50 250", "1  250"})
        CHECK(why(text) == "“" + std::string(text) + "” is no amount; write it like 12.50.");
    CHECK(why("1,23,45") == "“1,23,45” is no amount; write it like 12.50.");
    CHECK(why("12.5055 ") == "“12.5055” has more decimals than EUR has.");
    CHECK(why("12.5", "JPY") == "“12.5” has more decimals than JPY has.");
    CHECK(why("99999999999999999999") ==
          "“99999999999999999999” is too large an amount to be kept.");
    CHECK(why("90071992547409.92") == "“90071992547409.92” is too large an amount to be kept.");
    CHECK(minor("90071992547409.91") == largestId);
}

TEST_CASE("Minor units follow the currency")
{
    // ISO 4217; both Unicode CLDR (ICU 72) and the locales of glibc 2.36 say so.
    CHECK(decimalsOf("EUR") == 2);
    CHECK(decimalsOf("JPY") == 0);
    CHECK(decimalsOf("KRW") == 0);
    CHECK(decimalsOf("ISK") == 0);
    CHECK(decimalsOf("BHD") == 3);
    CHECK(decimalsOf("KWD") == 3);
    CHECK(minor("1.234", "KWD") == 1234);
    CHECK(minor("1,234", "JPY") == 1234);
    CHECK(figureOf({1234, "KWD"}) == "1.234");
    CHECK(figureOf({1234, "JPY"}) == "1234");
    CHECK(figureOf({5, "EUR"}) == "0.05");
    CHECK(figureOf({-305, "EUR"}) == "-3.05");
    CHECK(figureOf({0, "EUR"}) == "0.00");
    CHECK(figureOf({std::numeric_limits<std::int64_t>::min(), "EUR"}) == "-92233720368547758.08");
}

TEST_CASE("What was written is read again as the same amount")
{
    for (const std::string_view currency : {"EUR", "JPY", "KWD", "CLF"}) {
        for (std::int64_t units = 1; units < largestId / 7; units = units * 7 + 3) {
            const auto money = readMoney(figureOf({units, std::string(currency)}), currency);
            REQUIRE(money);
            CHECK(money->minor_units == units);
        }
    }
}

TEST_CASE("Dollars of one country are told by their letters, and a dash alone is no amount")
{
    const auto read = [](std::string_view text) {
        const auto money = readMoney(text, "CAD");
        return money ? std::to_string(money->minor_units) + " " + money->currency
                     : english(money.reason());
    };
    CHECK(read("US$ 3") == "300 USD");
    CHECK(read("US$3.50") == "350 USD");
    CHECK(read("3,50 $US") == "350 USD");
    CHECK(read("3.50 CAN$") == "350 CAD");
    CHECK(read("CAN$ 3.50") == "350 CAD");
    CHECK(read("3,50 $CAN") == "350 CAD");
    CHECK(read("3,50 $CA") == "350 CAD");
    CHECK(read("AU$ 12") == "1200 AUD");
    CHECK(read("3,50 us$") == "350 USD");
    CHECK(read("EUROS 12") == "1200 EUR");
    CHECK(read("$3") == "300 CAD");
    CHECK(read("-") == "“-” is no amount; write it like 12.50.");
    CHECK(read("-3") == "“-3” is below zero: amounts are of what was paid.");
}

TEST_CASE("Sums are exact where floating point is not, and currencies stay apart")
{
    MoneySum sum;
    // Ten cents ten million times and one cent: a float sum ends elsewhere.
    for (int i = 0; i < 1'000'000; ++i)
        sum.add(10, "EUR");
    sum.add(1, "eur");
    sum.add(500, "USD");
    CHECK(sum.amounts() == std::vector<Money>{{10'000'001, "EUR"}, {500, "USD"}});
    CHECK(sum.of("EUR") == 10'000'001);
    CHECK(sum.of("CAD") == 0);
    CHECK_FALSE(sum.isBeyond());
    sum.add(std::numeric_limits<std::int64_t>::max(), "EUR");
    CHECK(sum.isBeyond());
    CHECK(sum.of("EUR") == 10'000'001);
}

TEST_CASE("The amount of an expense may have blanks between thousands and its sign behind one")
{
    const auto read = [](std::string_view line) {
        const auto expense = readExpenseLine(line, "EUR");
        return expense ? std::to_string(expense->amount) + " " + expense->currency + " " +
                             expense->category + "|" + expense->what
                       : english(expense.reason());
    };
    CHECK(read("1 234,56 € tôle : dérive") == "123456 EUR tôle|dérive");
    CHECK(read("1.234,56 € Blech: Ruder") == "123456 EUR Blech|Ruder");
    CHECK(read("34,90€ Blech: Ruder") == "3490 EUR Blech|Ruder");
    CHECK(read("1 234,56€ tôle : dérive") == "123456 EUR tôle|dérive");
    CHECK(read("€1 234.56 tôle") == "123456 EUR |tôle");
    CHECK(read("12 250€ moteur") == "1225000 EUR |moteur");
    CHECK(read("£ 12.50 taps") == "1250 GBP |taps");
    CHECK(read("1 234,56 moteur : acompte") == "123456 EUR moteur|acompte");
    CHECK(read("12 500 CHF moteur : acompte") == "1250000 CHF moteur|acompte");
    CHECK(read("12,50 250 rivets") == "1250 EUR |250 rivets");
    CHECK(read("12 25 rivets") == "1200 EUR |25 rivets");
    CHECK(read("1200 250 rivets") == "120000 EUR |250 rivets");
    CHECK(read("12 250,5 m cable") == "“12 250,5” may be one amount, or an amount and a count; "
                                      "write 12250,5, or the currency behind the amount.");
    CHECK(read("12 250 rivets") == "“12 250” may be one amount, or an amount and a count; write "
                                   "12250, or the currency behind the amount.");
    for (const std::string line : {"3 x 4,50 glue", "3 × 4.50 glue", "4.50 EUR x3 glue", "3 * 4"})
        CHECK(read(line) ==
              "“" + line + "” is a count and a price: write what was paid for all of them.");
    CHECK(read("12 x rivets") ==
          "“12 x rivets” is a count and a price: write what was paid for all of them.");
    CHECK(read("4.50 x-ray of the weld") == "450 EUR |x-ray of the weld");
    CHECK(read("4.50 Xylol") == "450 EUR |Xylol");
}

TEST_CASE("The currency of an expense may be a word, in small letters, and stand before a colon")
{
    const auto read = [](std::string_view line) {
        const auto expense = readExpenseLine(line, "CAD");
        return expense ? std::to_string(expense->amount) + " " + expense->currency + " " +
                             expense->category + "|" + expense->what
                       : english(expense.reason());
    };
    CHECK(read("12 Euro Pinsel") == "1200 EUR |Pinsel");
    CHECK(read("12,50 euros : pinceau") == "1250 EUR |pinceau");
    CHECK(read("12,50 eur Porto") == "1250 EUR |Porto");
    CHECK(read("chf 100 Fracht") == "10000 CHF |Fracht");
    CHECK(read("45 US$ douane") == "4500 USD |douane");
    CHECK(read("45 $CAN : douane") == "4500 CAD |douane");
    CHECK(read("34,90 €: Schrauben") == "3490 EUR |Schrauben");
    CHECK(read("34,90 EUR: Schrauben") == "3490 EUR |Schrauben");
    CHECK(read("34,90€: Schrauben") == "3490 EUR |Schrauben");
    CHECK(read("34,90: Schrauben") == "3490 CAD |Schrauben");
    CHECK(read("34,90 KIT: Haut") == "3490 CAD KIT|Haut");
    CHECK(read("12,- Pinsel") == "1200 CAD |Pinsel");
    CHECK(read("12,- € Pinsel") == "1200 EUR |Pinsel");
    CHECK(read("12 250,- € Motor") == "1225000 EUR |Motor");
    CHECK(read("12 250,- Motor") == "1225000 CAD |Motor");
    CHECK(read("12 Europaletten") == "1200 CAD |Europaletten");
    CHECK(read("50 ct Scheiben") == "“50 ct”: write the amount with its decimals, like 0.50.");
    CHECK(read("0,50 € Cent") == "50 EUR |Cent");
}

TEST_CASE("Two figures behind a whole amount and its currency are asked about: cents or a count")
{
    const auto read = [](std::string_view line, DecimalSign sign = DecimalSign::Unknown) {
        const auto expense = readExpenseLine(line, "EUR", sign);
        return expense ? std::to_string(expense->amount) + "|" + expense->what
                       : english(expense.reason());
    };
    CHECK(read("12 € 50 boulons") ==
          "“12 € 50” may be 12.50 €, or 12.00 € for a count; write 12.50 € or 12.00 €.");
    CHECK(read("12€ 50 boulons", DecimalSign::Comma) ==
          "“12 € 50” may be 12,50 €, or 12,00 € for a count; write 12,50 € or 12,00 €.");
    CHECK(read("12 CHF 50: Porto") ==
          "“12 CHF 50” may be 12.50 CHF, or 12.00 CHF for a count; write 12.50 CHF or 12.00 CHF.");
    CHECK(read("1 234 euros 50 moteur") ==
          "“1 234 EUR 50” may be 1 234.50 EUR, or 1 234.00 EUR for a count; write 1 234.50 EUR or "
          "1 234.00 EUR.");
    CHECK(read("12,00 € 50 boulons") == "1200|50 boulons");
    CHECK(read("12,- € 50 boulons") == "1200|50 boulons");
    CHECK(read("12 € 100 boulons") == "1200|100 boulons");
    CHECK(read("12 € 5 boulons") == "1200|5 boulons");
    CHECK(read("12 JPY 50 bolts") == "12|50 bolts");
    CHECK(read("12 € 50 m câble") == "1200|50 m câble");
    CHECK(read("12 € 50 x boulons") == "1200|50 x boulons");
    CHECK(read("€12 50 bolts") == "1200|50 bolts");
}

TEST_CASE("A measure or a count that begins the line is no amount")
{
    const auto read = [](std::string_view line) {
        const auto expense = readExpenseLine(line, "EUR");
        return expense ? std::to_string(expense->amount) + "|" + expense->what
                       : english(expense.reason());
    };
    CHECK(read("10 mm Bohrer") == "“10 mm” is a measure and no amount: begin with what was paid.");
    CHECK(read("20 L Benzin") == "“20 L” is a measure and no amount: begin with what was paid.");
    CHECK(read("100 Stück Niete") ==
          "“100 Stück” is a measure and no amount: begin with what was paid.");
    CHECK(read("1,5 m câble") == "“1,5 m” is a measure and no amount: begin with what was paid.");
    CHECK(read("34.90 10 mm drill") == "3490|10 mm drill");
    CHECK(read("34,90 Bohrer 10 mm") == "3490|Bohrer 10 mm");
    CHECK(read("10 € m") == "1000|m");
    CHECK(read("€10 m of cable") == "1000|m of cable");
    CHECK(read("EUR 10 m of cable") == "1000|m of cable");
    CHECK(read("12.50 in Berlin") == "1250|in Berlin");
}

TEST_CASE("An expense is told in one line")
{
    const auto bolts = readExpenseLine("34.90 hardware: bolts and nuts", "CAD");
    REQUIRE(bolts);
    CHECK(bolts->amount == 3490);
    CHECK(bolts->currency == "CAD");
    CHECK(bolts->category == "hardware");
    CHECK(bolts->what == "bolts and nuts");
    const auto taps = readExpenseLine("120 USD taps", "CAD");
    REQUIRE(taps);
    CHECK(taps->currency == "USD");
    CHECK(taps->amount == 12000);
    CHECK(taps->category.empty());
    CHECK(taps->what == "taps");
    CHECK(readExpenseLine("EUR 3 stamps", "CAD")->currency == "EUR");
    CHECK(english(readExpenseLine("34.90", "CAD").reason()) ==
          "Say what was paid for behind the amount.");
    CHECK(english(readExpenseLine("-3 stamps", "CAD").reason()) ==
          "“-3” is below zero: amounts are of what was paid.");
    CHECK(english(readExpenseLine("stamps", "CAD").reason()) ==
          "“stamps” is no amount; write it like 12.50.");
}
