// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <concepts>
#include <cstdint>
#include <fmt/format.h>
#include <iosfwd>
#include <optional>
#include <string_view>
#include <type_traits>

namespace lastrivet {

/// Writes JSON (RFC 8259) piece by piece as it is told, so that no tree of it is ever in memory.
///
/// The caller sees to it that objects get keys and that what begins ends. What is not UTF-8 in a
/// text is written as U+FFFD. Numbers are written shortest so that they read back the same.
class JsonWriter {
public:
    enum class Layout {
        Compact,  ///< one line
        Indented, ///< a line per value, one space per level
    };

    explicit JsonWriter(std::ostream &out, Layout layout = Layout::Compact);
    JsonWriter(const JsonWriter &) = delete;
    JsonWriter &operator=(const JsonWriter &) = delete;
    /// Hands what is left to the stream.
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
    /// What is no finite number, which JSON cannot say, is written as null.
    void value(double number);
    template <std::integral Whole> void value(Whole number)
    {
        separate();
        fmt::format_to(std::back_inserter(m_buffer), "{}", number);
    }
    template <class Value> void value(const std::optional<Value> &given)
    {
        given ? value(*given) : null();
    }
    /// A value that is JSON text already.
    void raw(std::string_view json);

    template <class Value> void member(std::string_view name, const Value &given)
    {
        key(name);
        value(given);
    }

private:
    void begin(char bracket);
    void end(char bracket);
    /// What has to stand between the last value and the next.
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
