// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/Value.h"

#include "core/readiness/Names.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace lastrivet::journal {

namespace {

using Json = nlohmann::ordered_json;

Content numberIn(const Records &records, const Field *field, std::int64_t number,
                 const std::string &currency)
{
    if (!field)
        return number;
    if ((field->type == FieldType::Ref || field->type == FieldType::Refs) && field->target)
        return readiness::named(records, {*field->target, number});
    if (field->name.ends_with("minutes"))
        return Minutes{number};
    if (field->name == "unit_price" || field->name == "amount")
        return Money{number, currency};
    return number;
}

Content textIn(const Field *field, std::string text)
{
    if (!field)
        return text;
    if (field->type == FieldType::Enum || (field->type == FieldType::Set && !field->words.empty()))
        return VocabularyWord{std::move(text)};
    if (field->type == FieldType::Moment) {
        if (const auto moment = Moment::parse(text))
            return *moment;
    }
    return text;
}

Content contentIn(const Records &records, const Field *field, const Json &json,
                  const std::string &currency = {})
{
    if (json.is_boolean())
        return json.get<bool>();
    if (json.is_number_integer())
        return numberIn(records, field, json.get<std::int64_t>(), currency);
    if (json.is_number())
        return json.get<double>();
    if (json.is_string())
        return textIn(field, json.get<std::string>());
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

const Field *find(std::span<const Field> fields, std::string_view name)
{
    for (const Field &field : fields) {
        if (field.name == name)
            return &field;
    }
    return nullptr;
}

/// Numbers, one after another: the corners of an envelope, say.
Value numbersIn(const Field *field, const Json &json)
{
    Value value;
    for (const Json &each : json) {
        if (each.is_number())
            value.parts.push_back({field, each.get<double>()});
    }
    return value;
}

bool isOfAnyType(const Value::Part &part)
{
    return part.field && part.field->type == FieldType::Ref && !part.field->target;
}

/// A subject of no fixed type is an id beside the name of its record type: one record to people.
void nameSubject(const Records &records, Value &value)
{
    std::optional<RecordType> type;
    for (const Value::Part &part : value.parts) {
        const auto *text = std::get_if<std::string>(&part.content);
        if (text && part.field && part.field->type == FieldType::Record)
            type = parseWord<RecordType>(*text);
    }
    const auto subject = std::ranges::find_if(value.parts, isOfAnyType);
    if (!type || subject == value.parts.end())
        return;
    if (const auto *id = std::get_if<std::int64_t>(&subject->content))
        subject->content = readiness::named(records, {*type, *id});
    std::erase_if(value.parts, [](const Value::Part &part) {
        return part.field && part.field->type == FieldType::Record;
    });
}

} // namespace

std::string currencyOf(const Records &records, RecordRef record)
{
    if (record.type == RecordType::PartLine) {
        const PartLine *line = records.find(Id<PartLine>{record.id});
        return line ? line->currency : std::string();
    }
    const Expense *expense =
        record.type == RecordType::Expense ? records.find(Id<Expense>{record.id}) : nullptr;
    return expense ? expense->currency : std::string();
}

Value valueOf(const Records &records, const Field *field, const std::optional<std::string> &json,
              const std::string &currency)
{
    if (!json)
        return {};
    const Json read = Json::parse(*json, nullptr, false);
    if (read.is_discarded())
        return {{{field, *json}}};
    if (read.is_null())
        return {};
    if (read.is_array())
        return numbersIn(field, read);
    return {{{field, contentIn(records, field, read, currency)}}};
}

Value itemOf(const Records &records, const Field &collection, const std::string &json)
{
    const Json row = Json::parse(json, nullptr, false);
    if (!collection.rows || !row.is_object())
        return valueOf(records, &collection, json);
    Value value;
    for (const auto &[name, each] : row.items()) {
        // Where a row stands in its list is no field of it.
        const Field *field = find(collection.rows->fields, name);
        if (field && !each.is_null())
            value.parts.push_back({field, contentIn(records, field, each)});
    }
    nameSubject(records, value);
    return value;
}

} // namespace lastrivet::journal
