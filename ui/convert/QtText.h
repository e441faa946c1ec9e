// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"

#include <QDate>
#include <QDateTime>
#include <QString>

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

// The one place where std and Qt types meet, and where records become words of the user's language.
namespace lastrivet::ui {

QString toQt(std::string_view text);
/// Without spaces at both ends, as records keep their texts.
std::string toStd(const QString &text);

std::filesystem::path toPath(const QString &file);
QString pathText(const std::filesystem::path &file);

/// The text for a button, a box or a menu, where a lone ampersand marks the key that presses it.
QString onButton(QString text);

/// The sentence in the language of the screen.
QString inWords(const Message &message);

/// A line of an inspector's list, or what is said of a document or a test period, as papers print
/// it: one of a profile's in the language of the screen, one that the builder wrote as it is.
QString listLine(const std::string &item);

/// What a profile or a record names as its source: documents as they are called, the rest in the
/// language of the screen.
QString sourceWords(const std::string &source);

/// The sentence, for a line of its own: its first letter is a capital.
QString asSentence(const Message &message);

QDate toDate(Moment moment);
/// Empty when the date is invalid or outside the years that records know.
std::optional<Moment> toMoment(QDate day);
std::optional<Moment> toMoment(QDateTime when);

/// The day as the locale writes it, with the time where one is known: "14 Mar 2026, 16:10".
QString dateText(Moment moment);
/// `dateText`, or an empty text when nothing is known.
QString dateText(const std::optional<Moment> &moment);
/// The day without its time.
QString dayText(Moment moment);
/// The time of day alone, as in `dateText`: "16:10".
QString timeText(Moment moment);
/// What a person typed: ISO, or the locale's short form; empty when it is no such day.
std::optional<Moment> parseDay(const QString &text);
/// The same, and a time of day may follow: "14/03/2026, 16:10".
std::optional<Moment> parseMoment(const QString &text);
/// The same, or the day in the words of the log's entry line, by `today`: "yesterday 16:10",
/// "14 Mar", "14.3. 9:30".
std::optional<Moment> typedMoment(const QString &text, Moment today);

/// "Name: what", with the colon as the language sets it.
QString withColon(const QString &name, const QString &what);

/// Hours and minutes, never decimals: "53 h 30".
QString hoursText(Minutes minutes);

} // namespace lastrivet::ui
