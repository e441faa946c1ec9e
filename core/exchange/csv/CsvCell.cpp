// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvCell.h"

#include "core/base/CaseFold.h"
#include "core/base/CountWords.h"
#include "core/base/Digits.h"
#include "core/base/ParseNumber.h"
#include "core/base/Trimmed.h"
#include "core/entry/DurationText.h"
#include "core/exchange/FieldValue.h"
#include "core/exchange/JsonEvents.h"
#include "core/exchange/csv/CsvExport.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>

namespace lastrivet::exchange {

namespace {

/// As the words of vocabularies are written.
std::string lowered(std::string_view text)
{
    std::string lower = asciiLower(text);
    std::ranges::replace(lower, ' ', '_');
    return lower;
}

Scalar flag(std::string_view text)
{
    const auto word = lowered(text);
    for (const std::string_view yes : {"true", "yes", "y", "x", "1"}) {
        if (word == yes)
            return true;
    }
    for (const std::string_view no : {"false", "no", "n", "0"}) {
        if (word == no)
            return false;
    }
    return text;
}

bool feedWord(DocumentBuilder &builder, const Field &field, std::string_view text)
{
    const auto lower = lowered(text);
    const bool isWord =
        std::find(field.words.begin(), field.words.end(), text) != field.words.end();
    return builder.scalar(isWord ? text : std::string_view(lower));
}

bool feedReference(DocumentBuilder &builder, const Field &field, std::string_view text,
                   const NameLookup &names, PartsFirst partsFirst = PartsFirst::ByName)
{
    if (field.target == RecordType::Component || field.target == RecordType::Person) {
        const auto id = field.target == RecordType::Person ? names.person(text)
                        : partsFirst == PartsFirst::ById   ? names.partById(text)
                                                           : names.part(text);
        return id ? builder.scalar(*id) : builder.refuse(id.reason());
    }
    const auto id = parseNumber<std::int64_t>(text);
    return builder.scalar(id ? Scalar{*id} : Scalar{text});
}

/// Calls `body` with each entry of a list separated by semicolons, while it returns true.
template <class Body> bool eachEntry(std::string_view list, Body &&body)
{
    while (!list.empty()) {
        const auto end = std::min(list.find(';'), list.size());
        const auto entry = trimmed(list.substr(0, end));
        if (!entry.empty() && !body(entry))
            return false;
        list.remove_prefix(std::min(end + 1, list.size()));
    }
    return true;
}

bool feedCollection(DocumentBuilder &builder, const Field &field, std::string_view text,
                    const NameLookup &names)
{
    if (text.starts_with('[') && isJson(text))
        return feedJson(builder, text);
    const bool namesPeople = field.rows && field.rows->fields.front().target == RecordType::Person;
    if (field.type == FieldType::Numbers || (field.rows && !namesPeople))
        return builder.scalar(text);
    return builder.beginArray() &&
           eachEntry(text,
                     [&](std::string_view entry) {
                         if (field.type == FieldType::Set)
                             return feedWord(builder, field, entry);
                         if (!namesPeople)
                             return feedReference(builder, field, entry, names);
                         const Field &person = field.rows->fields.front();
                         return builder.beginObject() && builder.key(person.name) &&
                                feedReference(builder, person, entry, names) && builder.endObject();
                     }) &&
           builder.endArray();
}

/// "1200" of "1 200": blanks between groups of three figures, as spreadsheets write thousands.
std::string withoutBlanksOfThousands(std::string_view text)
{
    constexpr std::size_t group = 3;
    std::string plain(text);
    for (const std::string_view blank : {" ", "\u00a0", "\u202f", "\u2009"}) {
        for (auto at = plain.find(blank); at != std::string::npos; at = plain.find(blank, at)) {
            const auto behind = std::string_view(plain).substr(at + blank.size());
            const bool isGroup = behind.size() >= group && isAllDigits(behind.substr(0, group)) &&
                                 (behind.size() == group || !isDigit(behind[group]));
            const bool isFirst = plain.size() == text.size();
            if (at == 0 || !isDigit(plain[at - 1]) || !isGroup || (isFirst && at > group))
                return std::string(text);
            plain.erase(at, blank.size());
        }
    }
    return plain;
}

/// "12" of "12 pcs", where this word stands behind a figure.
std::optional<std::string_view> withoutWord(std::string_view text, std::string_view word)
{
    if (!folded(text).ends_with(word))
        return std::nullopt;
    const auto count = trimmed(text.substr(0, text.size() - word.size()));
    return !count.empty() && isDigit(count.back()) ? std::optional(count) : std::nullopt;
}

/// "12" of "12 pcs" and "12 Stk."; the whole text where no such word stands behind a figure.
std::string_view withoutCountWord(std::string_view text)
{
    if (!text.empty() && isDigit(text.back()))
        return text;
    for (const std::string_view word : countWords) {
        if (const auto count = withoutWord(text, word))
            return *count;
    }
    // Alone in its cell it cannot be an ordinal or a station, as in a line of words.
    return withoutWord(text, "st").value_or(text);
}

/// "4" of "4.0" and "4,00", as spreadsheets write whole numbers; the zeros of "4.000" may be those
/// of a thousand.
std::string_view withoutNoughts(std::string_view text)
{
    constexpr std::size_t group = 3;
    const auto mark = text.find_first_of(".,");
    const auto noughts = mark == std::string_view::npos ? mark : text.size() - mark - 1;
    const bool areAll = mark != std::string_view::npos && noughts > 0 && noughts != group &&
                        text.find_first_not_of('0', mark + 1) == std::string_view::npos;
    return areAll ? text.substr(0, mark) : text;
}

bool feedCount(DocumentBuilder &builder, std::string_view text)
{
    const auto count = withoutNoughts(withoutCountWord(text));
    const auto number = parseNumber<std::int64_t>(withoutBlanksOfThousands(count));
    if (number)
        return builder.scalar(*number);
    return builder.refuse(
        {"{0} is no number of pieces; write it in figures alone, as 12 or 1200.", {shown(text)}});
}

/// A whole number; of minutes also "2h15" and "1:30", as people write durations.
bool feedWhole(DocumentBuilder &builder, const Field &field, std::string_view text)
{
    if (field.name.ends_with("quantity"))
        return feedCount(builder, text);
    const bool isLength = field.name.ends_with("minutes");
    const auto number =
        parseNumber<std::int64_t>(isLength ? std::string(text) : withoutBlanksOfThousands(text));
    if (number || !isLength)
        return builder.scalar(number ? Scalar{*number} : Scalar{text});
    // However short or long: what is wrong with it, the rules of the records say.
    if (const auto minutes = entry::readMinutes(text))
        return builder.scalar(*minutes);
    return builder.refuse({"{0} is no length of time, as 1:30 or 2h15.", {shown(text)}});
}

std::string momentText(std::string_view text)
{
    std::string moment(text);
    constexpr std::size_t dayLength = 10;
    if (moment.size() > dayLength && moment[dayLength] == ' ')
        moment[dayLength] = 'T';
    return moment;
}

} // namespace

bool feedCell(DocumentBuilder &builder, const Field &field, std::string_view cell,
              const NameLookup &names, PartsFirst partsFirst)
{
    const auto text = trimmed(cell);
    if (field.isCollection())
        return feedCollection(builder, field, text, names);
    switch (field.type) {
    case FieldType::Text:
        return builder.scalar(withoutApostrophe(cell));
    case FieldType::Ref:
        return feedReference(builder, field, text, names, partsFirst);
    case FieldType::Bool:
        return builder.scalar(flag(text));
    case FieldType::Enum:
        return feedWord(builder, field, text);
    case FieldType::Moment:
        return builder.scalar(std::string_view(momentText(text)));
    case FieldType::Real: {
        const auto number = parseNumber<double>(text);
        return builder.scalar(number ? Scalar{*number} : Scalar{text});
    }
    default:
        return feedWhole(builder, field, text);
    }
}

} // namespace lastrivet::exchange
