// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Cell.h"

#include <sqlite3.h>

namespace lastrivet::storage {

namespace {

template <class... Cases> struct Overloaded : Cases... {
    using Cases::operator()...;
};
template <class... Cases> Overloaded(Cases...) -> Overloaded<Cases...>;

std::string_view textOf(const SQLite::Column &column)
{
    const char *text = column.getText();
    return {text, std::size_t(column.getBytes())};
}

std::string_view textOf(sqlite3_value *value)
{
    const auto *text = static_cast<const char *>(sqlite3_value_blob(value));
    return {text ? text : "", text ? std::size_t(sqlite3_value_bytes(value)) : 0};
}

Scalar momentOf(std::string_view text)
{
    const auto moment = Moment::parse(text);
    return moment ? Scalar{*moment} : Scalar{};
}

Scalar flagOf(std::int64_t number)
{
    return number == 0 || number == 1 ? Scalar{number == 1} : Scalar{};
}

} // namespace

Cell cellOf(const Scalar &value)
{
    return std::visit(Overloaded{[](std::monostate) { return Cell{}; },
                                 [](bool flag) { return Cell{std::int64_t(flag)}; },
                                 [](std::int64_t number) { return Cell{number}; },
                                 [](double number) { return Cell{number}; },
                                 [](std::string_view text) { return Cell{std::string(text)}; },
                                 [](Moment moment) { return Cell{moment.text()}; }},
                      value);
}

Cell cellOf(const SQLite::Column &column)
{
    switch (column.getType()) {
    case SQLITE_INTEGER:
        return column.getInt64();
    case SQLITE_FLOAT:
        return column.getDouble();
    case SQLITE_NULL:
        return {};
    default:
        return std::string(textOf(column));
    }
}

Cell cellOf(sqlite3_value *value)
{
    switch (sqlite3_value_type(value)) {
    case SQLITE_INTEGER:
        return std::int64_t{sqlite3_value_int64(value)};
    case SQLITE_FLOAT:
        return sqlite3_value_double(value);
    case SQLITE_NULL:
        return {};
    default:
        return std::string(textOf(value));
    }
}

void bind(SQLite::Statement &statement, int index, const Cell &cell)
{
    std::visit(Overloaded{[&](std::monostate) { statement.bind(index); },
                          [&](std::int64_t number) { statement.bind(index, number); },
                          [&](double number) { statement.bind(index, number); },
                          [&](const std::string &text) { statement.bindNoCopy(index, text); }},
               cell);
}

Scalar scalarOf(const Field &field, sqlite3_value *value, int type)
{
    switch (field.type) {
    case FieldType::Bool:
        return type == SQLITE_INTEGER ? flagOf(sqlite3_value_int64(value)) : Scalar{};
    case FieldType::Real:
        return type == SQLITE_FLOAT ? Scalar{sqlite3_value_double(value)} : Scalar{};
    case FieldType::Moment:
        return type == SQLITE_TEXT ? momentOf(textOf(value)) : Scalar{};
    case FieldType::Id:
    case FieldType::Ref:
    case FieldType::Refs:
    case FieldType::Int:
        return type == SQLITE_INTEGER ? Scalar{std::int64_t{sqlite3_value_int64(value)}} : Scalar{};
    default:
        return type == SQLITE_TEXT ? Scalar{textOf(value)} : Scalar{};
    }
}

Scalar scalarOf(const Field &field, const Cell &cell)
{
    const auto *number = std::get_if<std::int64_t>(&cell);
    const auto *text = std::get_if<std::string>(&cell);
    switch (field.type) {
    case FieldType::Bool:
        return number ? flagOf(*number) : Scalar{};
    case FieldType::Real: {
        const auto *real = std::get_if<double>(&cell);
        return real ? Scalar{*real} : Scalar{};
    }
    case FieldType::Moment:
        return text ? momentOf(*text) : Scalar{};
    case FieldType::Id:
    case FieldType::Ref:
    case FieldType::Refs:
    case FieldType::Int:
        return number ? Scalar{*number} : Scalar{};
    default:
        return text ? Scalar{std::string_view(*text)} : Scalar{};
    }
}

} // namespace lastrivet::storage
