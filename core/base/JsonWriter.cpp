// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/JsonWriter.h"

#include "core/base/Utf8.h"

#include <cmath>
#include <ostream>

namespace lastrivet {

namespace {

constexpr std::size_t flushAt = 64 * 1024;

/// The two-character escape of RFC 8259, or 0.
char shortEscape(char c)
{
    switch (c) {
    case '"':
    case '\\':
        return c;
    case '\b':
        return 'b';
    case '\f':
        return 'f';
    case '\n':
        return 'n';
    case '\r':
        return 'r';
    case '\t':
        return 't';
    default:
        return 0;
    }
}

} // namespace

JsonWriter::JsonWriter(std::ostream &out, Layout layout)
    : m_out(out)
    , m_layout(layout)
{
}

JsonWriter::~JsonWriter()
{
    flush();
}

void JsonWriter::begin(char bracket)
{
    separate();
    m_buffer.push_back(bracket);
    ++m_depth;
    m_isFirst = true;
}

void JsonWriter::end(char bracket)
{
    --m_depth;
    if (!m_isFirst)
        newLine();
    m_buffer.push_back(bracket);
    m_isFirst = false;
    if (m_buffer.size() > flushAt)
        flush();
}

void JsonWriter::separate()
{
    if (m_hasKey) {
        m_hasKey = false;
        return;
    }
    if (!m_isFirst)
        m_buffer.push_back(',');
    if (m_depth > 0)
        newLine();
    m_isFirst = false;
}

void JsonWriter::newLine()
{
    if (m_layout == Layout::Compact)
        return;
    m_buffer.push_back('\n');
    for (int i = 0; i < m_depth; ++i)
        m_buffer.push_back(' ');
}

void JsonWriter::key(std::string_view name)
{
    separate();
    appendQuoted(name);
    append(m_layout == Layout::Compact ? ":" : ": ");
    m_hasKey = true;
}

void JsonWriter::value(std::string_view text)
{
    separate();
    appendQuoted(text);
}

void JsonWriter::value(double number)
{
    if (!std::isfinite(number))
        return null();
    separate();
    // Without the fraction, readers take minus nought for a whole nought.
    if (number == 0 && std::signbit(number))
        append("-0.0");
    else
        fmt::format_to(std::back_inserter(m_buffer), "{}", number);
}

void JsonWriter::raw(std::string_view json)
{
    separate();
    append(json);
}

void JsonWriter::append(std::string_view text)
{
    m_buffer.append(text.data(), text.data() + text.size());
}

void JsonWriter::appendQuoted(std::string_view given)
{
    // The name of a file is any bytes; a JSON text is UTF-8.
    const std::string mended = firstNotUtf8(given) ? wellFormed(given) : std::string();
    const std::string_view text = mended.empty() ? given : std::string_view(mended);
    m_buffer.push_back('"');
    std::size_t plain = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char escape = shortEscape(text[i]);
        const auto code = static_cast<unsigned char>(text[i]);
        if (!escape && code >= 0x20)
            continue;
        append(text.substr(plain, i - plain));
        plain = i + 1;
        if (escape) {
            m_buffer.push_back('\\');
            m_buffer.push_back(escape);
        } else {
            fmt::format_to(std::back_inserter(m_buffer), "\\u{:04x}", code);
        }
    }
    append(text.substr(plain));
    m_buffer.push_back('"');
}

void JsonWriter::flush()
{
    m_out.write(m_buffer.data(), std::streamsize(m_buffer.size()));
    m_buffer.clear();
}

} // namespace lastrivet
