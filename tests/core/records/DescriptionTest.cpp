// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Description.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <fstream>
#include <sstream>

using namespace lastrivet;

namespace {

std::string typeName(FieldType type)
{
    static constexpr const char *names[] = {"id",   "ref",     "refs",  "set",  "list",
                                            "int",  "real",    "bool",  "text", "moment",
                                            "enum", "numbers", "record"};
    return names[std::size_t(type)];
}

std::string target(const Field &field)
{
    if (field.type == FieldType::List)
        return std::string(field.rows->name);
    if (field.type == FieldType::Ref && !field.target)
        return "subject";
    if (field.target)
        return std::string(word(*field.target));
    if (field.type == FieldType::Enum || field.type == FieldType::Set)
        return fmt::format("{}", fmt::join(field.words, "|"));
    return {};
}

std::string scalarText(const Scalar &value)
{
    if (const auto *flag = std::get_if<bool>(&value))
        return *flag ? "true" : "false";
    if (const auto *whole = std::get_if<std::int64_t>(&value))
        return std::to_string(*whole);
    if (const auto *real = std::get_if<double>(&value))
        return fmt::format("{}", *real);
    if (const auto *text = std::get_if<std::string_view>(&value))
        return std::string(*text);
    return {};
}

void list(std::string &out, std::string_view record, std::span<const Field> fields,
          const void *defaults)
{
    for (const auto &field : fields) {
        const bool hasDefault = !field.required && !field.isCollection();
        out += fmt::format("{},{},{},{},{},{}\n", record, field.name, typeName(field.type),
                           target(field), field.required ? "yes" : "no",
                           hasDefault ? scalarText(field.value(defaults)) : "");
    }
    for (const auto &field : fields) {
        if (field.rows)
            list(out, field.rows->name, field.rows->fields, field.rows->defaults);
    }
}

} // namespace

TEST_CASE("The descriptions list every field of the published list, in its order")
{
    std::string described = "record,field,type,target,required,default\n";
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto &description = describe(RecordType(i));
        list(described, description.name(), description.fields, description.defaults);
    }
    std::ifstream published(LASTRIVET_SOURCE "/tests/reference/fields.csv");
    std::istringstream ours(described);
    std::string expected;
    std::string line;
    while (std::getline(published, expected)) {
        std::getline(ours, line);
        REQUIRE(line == expected);
    }
    CHECK_FALSE(std::getline(ours, line));
}
