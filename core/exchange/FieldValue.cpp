// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/FieldValue.h"

#include "core/base/Id.h"
#include "core/base/Utf8.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lastrivet::exchange {

namespace {

/// The value with a text turned into the moment it spells; empty when it spells none.
std::optional<Scalar> read(const Field &field, const Scalar &value)
{
    if (field.type != FieldType::Moment || isNull(value))
        return value;
    const auto *text = std::get_if<std::string_view>(&value);
    const auto moment = text ? Moment::parse(*text) : std::nullopt;
    return moment ? std::optional<Scalar>(*moment) : std::nullopt;
}

std::string_view mismatchPattern(FieldType type)
{
    switch (type) {
    case FieldType::Id:
    case FieldType::Ref:
    case FieldType::Refs:
        return "{0} is no id: a whole number from 1 to {1}, without fraction or exponent.";
    case FieldType::Int:
        return "{0} is no whole number from -{1} to {1}, without fraction or exponent.";
    case FieldType::Real:
    case FieldType::Numbers:
        return "{0} is no number.";
    case FieldType::Bool:
        return "{0} is neither true nor false.";
    case FieldType::Text:
        return "{0} is no text.";
    case FieldType::Moment:
        return "{0} is no day or time that exists: YYYY-MM-DD or YYYY-MM-DDTHH:MM, from 1900 to "
               "2199.";
    case FieldType::Enum:
    case FieldType::Set:
        return "{0} is none of {1}.";
    case FieldType::Record:
        return "{0} is no type of record.";
    case FieldType::List:
        break;
    }
    return "{0} is no list.";
}

} // namespace

bool assignValue(const Field &field, void *owner, const Scalar &value)
{
    if (isNull(value))
        return true;
    const auto given = read(field, value);
    return given && field.assign(owner, *given);
}

bool addValue(const Field &field, void *owner, const Scalar &value)
{
    return !isNull(value) && field.add(owner, value);
}

Message mismatch(const Field &field, std::string shownValue)
{
    const bool isWord = field.type == FieldType::Enum || field.type == FieldType::Set;
    return {mismatchPattern(field.type),
            {std::move(shownValue),
             isWord ? fmt::format("{}", fmt::join(field.words, ", ")) : std::to_string(largestId)}};
}

std::string shown(std::string_view text)
{
    constexpr std::size_t longest = 40;
    if (text.size() <= longest)
        return fmt::format("“{}”", text);
    return fmt::format("“{}…”", prefixOf(text, longest));
}

std::string shown(const Scalar &value)
{
    if (const auto *flag = std::get_if<bool>(&value))
        return *flag ? "true" : "false";
    if (const auto *whole = std::get_if<std::int64_t>(&value))
        return std::to_string(*whole);
    if (const auto *real = std::get_if<double>(&value))
        return fmt::format("{}", *real);
    if (const auto *text = std::get_if<std::string_view>(&value))
        return shown(*text);
    if (const auto *moment = std::get_if<Moment>(&value))
        return moment->text();
    return "null";
}

} // namespace lastrivet::exchange
