// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <concepts>
#include <cstdint>
#include <fmt/format.h>
#include <iosfwd>
#include <iterator>
#include <optional>
#include <string_view>
#include <type_traits>

namespace lastrivet {

/// Writes JSON (RFC 8259) piece by piece, without ever holding a document tree in memory.
///
/// The caller gives every member of an object its key and ends what it begins. Bytes of a text that
/// are not UTF-8 are written as U+FFFD. Numbers have the fewest digits that read back the same.
class JsonWriter {
public:
    enum class Layout {
        Compact,  ///< one line
        Indented, ///< a line per value, one space per level
    };

    explicit JsonWriter(std::ostream &out, Layout layout = Layout::Compact);
    JsonWriter(const JsonWriter &) = delete;
    JsonWriter &operator=(const JsonWriter &) = delete;
    /// Writes what is still buffered to the stream.
    ~JsonWriter();

    void beginObject() { begin('{'); }
    void endObject() { end('}'); }
    void beginArray() { begin('['); }
    void endArray() { end(']'); }
    void key(std::string_view name);

    void null() { raw("null"); }
    void value(bool flag) { raw(flag ? "true" : "false"); }
    void value(std::string_view text);
    void value(const char *text) { value(std::string_view(text)); }
    /// Infinities and NaN, which JSON does not have, are written as null.
    void value(double number);
    template <std::integral Whole> void value(Whole number)
    {
        separate();
        fmt::format_to(std::back_inserter(m_buffer), "{}", number);
    }
    template <class Value> void value(const std::optional<Value> &given)
    {
        if (given)
            value(*given);
        else
            null();
    }
    /// A value that is JSON text already; written unchanged.
    void raw(std::string_view json);

    template <class Value> void member(std::string_view name, const Value &given)
    {
        key(name);
        value(given);
    }

private:
    void begin(char bracket);
    void end(char bracket);
    /// Writes the comma and the line break between the last value and the next, where they belong.
    void separate();
    void newLine();
    void append(std::string_view text);
    void appendQuoted(std::string_view given);
    void flush();

    std::ostream &m_out;
    Layout m_layout;
    fmt::memory_buffer m_buffer;
    int m_depth = 0;
    bool m_isFirst = true;
    bool m_hasKey = false;
};

} // namespace lastrivet
