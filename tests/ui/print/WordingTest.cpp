// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Wording.h"

#include "core/profiles/ProfileLibrary.h"
#include "ui/print/Language.h"
#include "ui/print/Phrases.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

TEST_CASE("Numbers are written as the paper's language does, in whichever country it is printed")
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    const auto number = [](QLocale::Language language) {
        return print::wordingIn(print::languageFor(language)).number(1751.6).toStdString();
    };
    CHECK(number(QLocale::English) == "1751.6");
    CHECK(number(QLocale::German) == "1751,6");
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    CHECK(number(QLocale::German) == "1751,6");
    CHECK(number(QLocale::French) == "1751,6");
    QLocale::setDefault(before);
}

TEST_CASE("No number is written with an exponent")
{
    const auto number = [](double value) { return print::Wording().number(value).toStdString(); };
    CHECK(number(0.0005) == "0.0005");
    CHECK(number(-0.00025) == "-0.00025");
    CHECK(number(100000) == "100000");
    CHECK(number(2500000) == "2500000");
    CHECK(number(0.1) == "0.1");
    CHECK(number(27) == "27");
}

TEST_CASE("Hours are grouped as other numbers are")
{
    const auto hours = [](QLocale::Language language, std::int64_t minutes) {
        return print::wordingIn(print::languageFor(language)).hours(Minutes{minutes}).toStdString();
    };
    CHECK(hours(QLocale::English, 53 * 60 + 5) == "53 h 05");
    CHECK(hours(QLocale::English, 1053 * 60) == "1,053 h 00");
    CHECK(hours(QLocale::German, 1053 * 60) == "1.053 h 00");
}

TEST_CASE("A count is written in a text as in a table")
{
    for (const QLocale::Language language : {QLocale::English, QLocale::German, QLocale::French}) {
        const print::Wording words = print::wordingIn(print::languageFor(language));
        CHECK(words.count(1289) == words.number(std::int64_t{1289}).toStdString());
        CHECK(words.count(1289) != "1289");
        CHECK(words.count(999) == "999");
    }
    CHECK(print::wordingIn(print::languageFor(QLocale::English)).count(1289) == "1,289");
}

TEST_CASE("Pieces of one line are parted as the paper's language parts them")
{
    const auto listed = [](QLocale::Language language) {
        return print::wordingIn(print::languageFor(language))
            .listed({QStringLiteral("a"), QStringLiteral("b")});
    };
    CHECK(listed(QLocale::English) == QStringLiteral("a; b"));
    CHECK(listed(QLocale::German) == QStringLiteral("a; b"));
    CHECK(listed(QLocale::French) == QStringLiteral("a\u00a0; b"));
}

TEST_CASE("A day is written as the paper's language writes it")
{
    const auto day = [](QLocale::Language language, std::string_view moment) {
        return print::wordingIn(print::languageFor(language))
            .date(*Moment::parse(moment))
            .toStdString();
    };
    CHECK(day(QLocale::English, "2027-07-13") == "13 Jul 2027");
    CHECK(day(QLocale::German, "2027-07-13") == "13. Juli 2027");
    CHECK(day(QLocale::German, "2026-02-06T09:05") == "6. Feb 2026 09:05");
    CHECK(day(QLocale::French, "2027-07-13") == "13 juil 2027");
    CHECK(day(QLocale::French, "2026-08-01") == "1er août 2026");
    CHECK(day(QLocale::English, "2026-08-01") == "1 Aug 2026");
}

TEST_CASE("A time to wait is printed in days as soon as it has two of them")
{
    const print::Wording words;
    CHECK(words.span(Minutes{90}).toStdString() == "1 h 30");
    CHECK(words.span(Minutes{47 * 60}).toStdString() == "47 h 00");
    CHECK(words.span(Minutes{48 * 60}).toStdString() == "2 d");
    CHECK(words.span(Minutes{336 * 60}).toStdString() == "14 d");
    CHECK(words.span(Minutes{54 * 60}).toStdString() == "2 d 6 h");
    CHECK(words.span(Minutes{54 * 60 + 30}).toStdString() == "2 d 6 h 30");
}

TEST_CASE("Cautions, lists and documents of the profiles that come with the program are said in "
          "each language")
{
    for (const print::Language &language : print::languages()) {
        if (language.id == QLocale::English)
            continue;
        const print::Wording words = print::wordingIn(language);
        for (const char *id : {"ca", "gb", "plain", "us"}) {
            const Profile profile = ProfileLibrary::shipped().profile(id);
            for (const auto &caution : profile.cautions) {
                INFO(caution.text);
                CHECK(words.text(caution.text).toStdString() != caution.text);
            }
            for (const Profile::Document &document : profile.documents) {
                INFO(document.title);
                CHECK(words.text(document.title).toStdString() != document.title);
            }
            for (const Profile::CreditRule &rule : profile.credit.rules) {
                INFO(rule.text);
                CHECK(words.text(rule.text).toStdString() != rule.text);
            }
            const std::string practice = profile.citation("trade-practice", Mark::SecondHand);
            CHECK(print::sourceIn(words, practice).toStdString() != practice);
            for (const Profile::Checklist &list : profile.checklists) {
                for (const auto &line : list.items) {
                    INFO(line.item);
                    CHECK(words.text(line.item).toStdString() != line.item);
                }
            }
        }
        CHECK(print::sourceIn(words, "Handbook 7, page 3") == QStringLiteral("Handbook 7, page 3"));
        CHECK(print::sourceIn(words, {}).isEmpty());
        const QString told = print::sourceIn(words, "Handbook 7 [second-hand]");
        CHECK(told.startsWith(QStringLiteral("Handbook 7 [")));
        CHECK_FALSE(told.contains(QStringLiteral("second-hand")));
        CHECK(words.text("A caution of one's own.") == QStringLiteral("A caution of one's own."));
    }
}
