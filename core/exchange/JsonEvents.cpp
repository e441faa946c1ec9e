// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/JsonEvents.h"

#include "core/base/Utf8.h"

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>

namespace lastrivet::exchange {

namespace {

/// Hands the events of the JSON reader on.
class Events final : public nlohmann::json_sax<nlohmann::json> {
public:
    Events(DocumentBuilder &builder, std::string_view text)
        : m_builder(builder)
        , m_text(text)
    {
    }

    bool null() override { return m_builder.scalar({}); }
    bool boolean(bool flag) override { return m_builder.scalar(flag); }
    bool number_integer(std::int64_t number) override { return m_builder.scalar(number); }
    bool number_unsigned(std::uint64_t number) override
    {
        if (number <= std::uint64_t(std::numeric_limits<std::int64_t>::max()))
            return m_builder.scalar(std::int64_t(number));
        return m_builder.scalar(double(number), std::to_string(number));
    }
    bool number_float(double number, const std::string &text) override
    {
        // The library puts the decimal point of the locale there.
        std::string literal = text;
        std::replace_if(
            literal.begin(), literal.end(),
            [](char c) {
                return std::string_view("0123456789+-eE").find(c) == std::string_view::npos;
            },
            '.');
        return m_builder.scalar(number, literal);
    }
    bool string(std::string &text) override { return m_builder.scalar(std::string_view(text)); }
    bool binary(nlohmann::json::binary_t &) override { return false; }
    bool start_object(std::size_t) override { return m_builder.beginObject(); }
    bool key(std::string &name) override { return m_builder.key(name); }
    bool end_object() override { return m_builder.endObject(); }
    bool start_array(std::size_t) override { return m_builder.beginArray(); }
    bool end_array() override { return m_builder.endArray(); }

    bool parse_error(std::size_t position, const std::string &,
                     const nlohmann::json::exception &fault) override
    {
        // The library says what it met in the text of its exception only.
        const std::string_view words = fault.what();
        const bool isTooLarge = words.find("number overflow") != std::string_view::npos;
        const bool isCutShort = words.find("unexpected end of input") != std::string_view::npos;
        std::string_view pattern = "This is no JSON at line {0}, column {1}.";
        if (const auto place = firstNotUtf8(m_text); place && *place <= position)
            pattern = "The text is no UTF-8 at line {0}, column {1}.";
        else if (m_text.find('\0') < position)
            pattern = holdsNull;
        else if (isTooLarge)
            pattern = "The number at line {0}, column {1} is too large.";
        else if (isCutShort)
            pattern = "The text ends too early, at line {0}, column {1}.";
        return stopAt(position, pattern);
    }

    /// After a whole document: the library takes U+0000 for the end of the text.
    bool checkRest()
    {
        const auto null = m_text.find('\0');
        return null == std::string_view::npos || stopAt(null + 1, holdsNull);
    }

private:
    static constexpr std::string_view holdsNull =
        "The character U+0000 is not allowed, but stands at line {0}, column {1}.";

    /// `position` counts the bytes up to and with the wrong one.
    bool stopAt(std::size_t position, std::string_view pattern)
    {
        const auto before = m_text.substr(0, std::min(position, m_text.size()));
        const auto line = std::count(before.begin(), before.end(), '\n');
        const auto lineStart = before.rfind('\n');
        const auto column =
            lineStart == std::string_view::npos ? before.size() : before.size() - lineStart - 1;
        m_builder.stop({pattern, {std::to_string(line + 1), std::to_string(column)}});
        return false;
    }

    DocumentBuilder &m_builder;
    std::string_view m_text;
};

} // namespace

bool feedJson(DocumentBuilder &builder, std::string_view json)
{
    Events events{builder, json};
    return nlohmann::json::sax_parse(json, &events) && events.checkRest();
}

bool isJson(std::string_view text)
{
    return text.find('\0') == std::string_view::npos && nlohmann::json::accept(text);
}

} // namespace lastrivet::exchange
