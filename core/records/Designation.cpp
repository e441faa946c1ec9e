// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Designation.h"

#include "core/records/Description.h"

#include <fmt/format.h>

#include <array>
#include <initializer_list>

namespace lastrivet {

namespace {

std::string textOf(const RecordDescription &description, const void *record, std::string_view name)
{
    const Field *field = description.find(name);
    if (!field || field->isCollection())
        return {};
    const Scalar value = field->value(record);
    if (const auto *text = std::get_if<std::string_view>(&value))
        return std::string(*text);
    return {};
}

std::string firstText(const RecordDescription &description, const void *record,
                      std::initializer_list<std::string_view> names)
{
    for (const auto name : names) {
        if (auto text = textOf(description, record, name); !text.empty())
            return text;
    }
    return {};
}

std::string firstMoment(const RecordDescription &description, const void *record)
{
    for (const Field &field : description.fields) {
        if (field.type != FieldType::Moment)
            continue;
        const Scalar value = field.value(record);
        const auto *moment = std::get_if<Moment>(&value);
        return moment ? moment->text() : std::string();
    }
    return {};
}

/// Long titles are cut between characters, so that a sentence stays one line.
std::string shortened(std::string title)
{
    constexpr std::size_t longest = 60;
    if (title.size() <= longest)
        return title;
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(title[end]) & 0xC0) == 0x80)
        --end;
    return title.substr(0, end) + "…";
}

std::string spokenNumber(const RecordDescription &description, const void *record)
{
    const bool isNumbered = description.type == RecordType::Squawk ||
                            description.type == RecordType::Deviation ||
                            description.type == RecordType::Bulletin;
    return textOf(description, record, isNumbered ? "number" : "code");
}

} // namespace

std::string_view noun(RecordType type)
{
    constexpr std::array<std::string_view, recordTypeCount> nouns{
        "project",      "person",       "part",
        "step",         "log entry",    "closing",
        "hold point",   "check",        "inspection",
        "sign-off",     "squawk",       "deviation",
        "bulletin",     "fastener",     "measurement",
        "tool",         "packing line", "material lot",
        "material use", "file",         "expense",
        "credit task",  "equipment",    "weighing",
        "loading case", "envelope",     "certificate document",
        "flight"};
    return nouns[std::size_t(type)];
}

std::string designation(const Records &records, RecordRef record)
{
    const auto &description = describe(record.type);
    const void *found = records.find(record.type, record.id);
    if (!found)
        return fmt::format("{} {}", noun(record.type), record.id);
    const auto title =
        firstText(description, found,
                  {"title", "name", "task", "item", "place", "what", "file", "key", "kind"});
    if (record.type == RecordType::Project)
        return fmt::format("project “{}”", shortened(title));
    auto number = spokenNumber(description, found);
    if (number.empty())
        number = std::to_string(record.id);
    const bool isDated = record.type == RecordType::WorkSession ||
                         record.type == RecordType::SignOff || title.empty();
    const auto moment = isDated ? firstMoment(description, found) : std::string();
    if (!moment.empty())
        return fmt::format("{} {} of {}", noun(record.type), number, moment);
    if (title.empty() || isDated)
        return fmt::format("{} {}", noun(record.type), number);
    return fmt::format("{} {} “{}”", noun(record.type), number, shortened(title));
}

std::string sentenceStart(const Records &records, RecordRef record)
{
    auto words = designation(records, record);
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = char(words.front() - 'a' + 'A');
    return words;
}

} // namespace lastrivet
