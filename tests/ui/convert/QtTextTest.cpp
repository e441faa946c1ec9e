// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/QtText.h"

#include <QLocale>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("Hours are written with minutes, never with decimals")
{
    CHECK(hoursText(Minutes{53 * 60 + 30}) == QStringLiteral("53 h 30"));
    CHECK(hoursText(Minutes{5}) == QStringLiteral("0 h 05"));
    CHECK(hoursText(Minutes{1250 * 60}) == QStringLiteral("1,250 h 00"));
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

TEST_CASE("Days within sentences follow the locale")
{
    const Message sentence{"Calibration is due on {0}", {"2026-03-14"}};
    CHECK(inWords(sentence) ==
          QStringLiteral("Calibration is due on ") + dateText(*Moment::parse("2026-03-14")));
}

} // namespace lastrivet::ui
