// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/QtText.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/RefusalText.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("Hours are written with minutes, never with decimals")
{
    CHECK(hoursText(Minutes{53 * 60 + 30}) == QStringLiteral("53 h 30"));
    CHECK(hoursText(Minutes{5}) == QStringLiteral("0 h 05"));
    CHECK(hoursText(Minutes{1250 * 60}) == QStringLiteral("1,250 h 00"));
}

TEST_CASE("The name of a field in a sentence is words, and what people wrote stays as it is")
{
    const Message told{"{0} has {1} {2}, which is below zero.",
                       {"Bolt_4", nested({"damaged_quantity", {}}), "-3"}};
    CHECK(inWords(told) == QStringLiteral("Bolt_4 has damaged quantity -3, which is below zero."));
}

TEST_CASE("That nothing was changed is said once, also where the reason says so")
{
    const NotSaved full("The disk is full; nothing was changed.", Unchanged::IsSaid);
    CHECK(nothingChanged(full) == QStringLiteral("The disk is full; nothing was changed."));
    const NotWritable held("Another program holds the project's database just now.");
    CHECK(nothingChanged(held) ==
          QStringLiteral("Nothing was changed: Another program holds the project's database just "
                         "now."));
}

TEST_CASE("What is said of a name stands behind a colon as the language sets it")
{
    class French final : public QTranslator {
    public:
        bool isEmpty() const override { return false; }
        QString translate(const char *, const char *text, const char *, int) const override
        {
            return QLatin1String(text) == QLatin1String("%1: %2") ? QStringLiteral("%1\u00A0: %2")
                                                                  : QString();
        }
    };
    CHECK(withColon(QStringLiteral("May %2"), QStringLiteral("38 ohm")) ==
          QStringLiteral("May %2: 38 ohm"));
    French french;
    QCoreApplication::installTranslator(&french);
    CHECK(withColon(QStringLiteral("Mai"), QStringLiteral("38 ohm")) ==
          QStringLiteral("Mai\u00A0: 38 ohm"));
    QCoreApplication::removeTranslator(&french);
}

TEST_CASE("Days go to Qt and back, over leap days and the turn of the century")
{
    for (const auto text : {"1900-01-01", "1999-12-31", "2000-02-29", "2026-03-14", "2199-12-31"}) {
        const Moment moment = *Moment::parse(text);
        CHECK(toDate(moment).toString(Qt::ISODate).toStdString() == text);
        CHECK(toMoment(toDate(moment)) == moment);
    }
    CHECK_FALSE(toMoment(QDate(1899, 12, 31)));
    CHECK_FALSE(toMoment(QDate()));
}

TEST_CASE("A count of thousands is written as the language does")
{
    const QLocale before;
    CHECK(countText(999) == QStringLiteral("999"));
    CHECK(countText(12345) == QStringLiteral("12,345"));
    QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
    CHECK(countText(12345) == QStringLiteral("12.345"));
    QLocale::setDefault(before);
}

TEST_CASE("What is shown can be typed again")
{
    for (const auto text : {"2026-03-14", "2026-03-14T16:10", "2026-03-14T00:00"}) {
        const Moment moment = *Moment::parse(text);
        CHECK(parseMoment(dateText(moment)) == moment);
        CHECK(parseMoment(QString::fromUtf8(text)) == moment);
    }
    CHECK(parseMoment(QStringLiteral(" 2026-03-14 9:05 ")) == Moment::parse("2026-03-14T09:05"));
    for (const auto text : {"", "soon", "2026-02-30", "2026-03-14 24:00", "2026-03-14 12:60"})
        CHECK_FALSE(parseMoment(QString::fromUtf8(text)));
}

TEST_CASE("A time of day may stand behind a day in any of its words")
{
    const Moment today = *Moment::parse("2026-03-14"); // a Saturday
    const auto typed = [&](const char *text) {
        const auto moment = typedMoment(QString::fromUtf8(text), today);
        return moment ? moment->text() : std::string();
    };
    CHECK(typed("13 Mar 2026, 08:15") == "2026-03-13T08:15");
    CHECK(typed("13 Mar 8:15") == "2026-03-13T08:15");
    CHECK(typed("13.3. 8:15") == "2026-03-13T08:15");
    CHECK(typed("13.3.2026, 14:30 Uhr") == "2026-03-13T14:30");
    CHECK(typed("2026-03-13 8h15") == "2026-03-13T08:15");
    CHECK(typed("yesterday 2:30pm") == "2026-03-13T14:30");
    CHECK(typed("gestern 14:30") == "2026-03-13T14:30");
    CHECK(typed("Friday") == "2026-03-13");
    CHECK(typed("2026-03-13T08:15") == "2026-03-13T08:15");
    for (const auto text : {"8:15", "yesterday 25:00", "soon 8:15", "yesterday noon", ""})
        CHECK(typed(text).empty());
}

namespace {

struct Language {
    explicit Language(const QString &name) { QLocale::setDefault(QLocale(name)); }
    ~Language() { QLocale::setDefault(before); }
    QLocale before;
};

} // namespace

TEST_CASE("Days are shown with the month's name, in the order of the locale, without a weekday")
{
    // Names and orders: Unicode CLDR, as the Qt library carries them.
    const auto [locale, shown] = GENERATE(table<const char *, const char *>({
        {"en_US", "Jun 2, 2026"},
        {"en_GB", "2 Jun 2026"},
        {"de_DE", "2. Juni 2026"},
        {"fr_FR", "2 juin 2026"},
        {"es_ES", "2 de jun de 2026"},
        {"sv_SE", "2 juni 2026"},
        {"hu_HU", "2026. jún. 2."},
        {"ja_JP", "2026年6月2日"},
    }));
    const Language language(QString::fromUtf8(locale));
    CAPTURE(locale);
    CHECK(dayText(*Moment::parse("2026-06-02")).toStdString() == shown);
}

TEST_CASE("A point that may part thousands is asked about where decimals have a comma")
{
    const Language german(QStringLiteral("de_DE"));
    const auto plain = [](const char *typed) { return withPoint(QString::fromUtf8(typed)); };
    for (const auto text : {"1.250", "1.250 kg", "-12.500", "300.000 mm", "1.250 in-lb"})
        CHECK_FALSE(readNumber(QString::fromUtf8(text)));
    REQUIRE_FALSE(plain("1.250 in-lb"));
    CHECK(plain("1.250 in-lb").reason().thousand == "1250 in-lb");
    CHECK(plain("1.250 in-lb").reason().decimals == "1,250 in-lb");
    CHECK(english(readNumber(QStringLiteral("1.250")).reason()) ==
          "“1.250” may be 1250 or 1,250; write 1250 when that is meant.");
    CHECK(*plain("1,250 in-lb") == "1.250 in-lb");
    CHECK(*plain("1.125 in") == "1.125 in");
    for (const auto text : {"0.125", "1.25", "1.2505", "1250", "1250.125"})
        CHECK(*plain(text) == text);
    CHECK(*readNumber(QStringLiteral("1,250")) == 1.25);
    CHECK(*plain("1.432,5 mm") == "1432.5 mm");
    CHECK(*readNumber(QStringLiteral("-1.234.567,25")) == -1234567.25);
    for (const auto text : {"1.43,5", "1,432.5", "0.432,5", "1.432,5,2"})
        CHECK_FALSE(readNumber(QString::fromUtf8(text)));
    CHECK(english(readNumber(QStringLiteral("9,7 lb")).reason()) == "“9,7 lb” is no number.");
    const auto limits = twoReadings(QStringLiteral("2.740-2.746 mm"));
    REQUIRE(limits);
    CHECK(english(askWhich(*limits)) ==
          "“2.740” may be 2740 or 2,740; write 2740 when that is meant.");
    CHECK(twoReadings(QStringLiteral("> 1.250 kg"))->decimals == "1,250");
    for (const auto text : {"2740-2746 mm", "1,5-2,5 mm", "0.125 mm", "9.5255-9.5500 mm"})
        CHECK_FALSE(twoReadings(QString::fromUtf8(text)));
}

TEST_CASE("A point is one for decimals where the language has it")
{
    const Language english(QStringLiteral("en_US"));
    CHECK(*readNumber(QStringLiteral("1.250")) == 1.25);
    CHECK_FALSE(twoReadings(QStringLiteral("2.740-2.746 mm")));
}

TEST_CASE("A time is told alike with its day and alone, in every country")
{
    const Language language(QStringLiteral("en_US"));
    const Moment moment = *Moment::parse("2026-06-02T06:11");
    CHECK(timeText(moment) == QStringLiteral("06:11"));
    CHECK(dateText(moment) == QStringLiteral("Jun 2, 2026, 06:11"));
}

TEST_CASE("A day of every month can be typed as it is shown, in the short and in the long form")
{
    const auto name = GENERATE("en_US", "en_GB", "de_DE", "fr_FR", "es_ES", "it_IT", "nl_NL");
    const Language language(QString::fromUtf8(name));
    for (int month = 1; month <= 12; ++month) {
        const QDate day(2026, month, 2);
        const auto moment = toMoment(day);
        CAPTURE(name, month);
        CHECK(parseDay(dayText(*moment)) == moment);
        CHECK(parseDay(QLocale().toString(day, QLocale::ShortFormat)) == moment);
        CHECK(parseDay(QLocale().toString(day, QLocale::LongFormat)) == moment);
    }
}

TEST_CASE("A short form may be typed with the year in two figures or in four")
{
    const Language language(QStringLiteral("en_US"));
    for (const auto *text : {"6/2/26", "6/2/2026", "06/02/2026"})
        CHECK(parseDay(QString::fromUtf8(text)) == Moment::parse("2026-06-02"));
}

TEST_CASE("A short form of four figures for the year may be typed with two, and without zeros")
{
    const Language language(QStringLiteral("fr_FR"));
    for (const auto *text : {"02/06/2026", "2/6/2026", "02/06/26", "2/6/26"})
        CHECK(parseDay(QString::fromUtf8(text)) == Moment::parse("2026-06-02"));
    CHECK(parseDay(QStringLiteral("2/6/1999")) == Moment::parse("1999-06-02"));
    for (const auto *text : {"2/6", "06/2026", "31/2/26", "2/6/226"})
        CHECK_FALSE(parseDay(QString::fromUtf8(text)));
}

TEST_CASE("A field is named by what it is, not by how it is stored")
{
    const auto title = [](RecordType type, std::string_view field) {
        return fieldTitle(*describe(type).find(field)).toStdString();
    };
    CHECK(title(RecordType::Step, "estimate_minutes") == "Estimate");
    CHECK(title(RecordType::MaterialUse, "cure_minutes") == "Cure time");
    CHECK(title(RecordType::MaterialUse, "sample") != title(RecordType::MaterialUse, "sample_on"));
}

TEST_CASE("Days within sentences follow the locale")
{
    const Message sentence{"Calibration is due on {0}", {"2026-03-14"}};
    CHECK(inWords(sentence) ==
          QStringLiteral("Calibration is due on ") + dateText(*Moment::parse("2026-03-14")));
}

TEST_CASE("What would steer a terminal or turn the order of reading round is shown as a sign")
{
    CHECK(toQt("not \u202Edengis") == QStringLiteral("not \uFFFDdengis"));
    CHECK(toQt("a\x1b[2J\n") == QStringLiteral("a\u241B[2J\n"));
}

} // namespace lastrivet::ui
