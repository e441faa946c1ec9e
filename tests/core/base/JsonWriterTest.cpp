// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/JsonWriter.h"

#include <catch2/catch.hpp>

#include <limits>
#include <sstream>

using namespace lastrivet;

namespace {

template <class Body> std::string written(JsonWriter::Layout layout, Body &&body)
{
    std::ostringstream out;
    {
        JsonWriter json{out, layout};
        body(json);
    }
    return out.str();
}

template <class Value> std::string compact(const Value &value)
{
    return written(JsonWriter::Layout::Compact, [&](JsonWriter &json) { json.value(value); });
}

} // namespace

TEST_CASE("Objects and arrays nest, in one line or indented by one space a level")
{
    const auto body = [](JsonWriter &json) {
        json.beginObject();
        json.member("a", 1);
        json.key("b");
        json.beginArray();
        json.value("x");
        json.beginObject();
        json.endObject();
        json.beginArray();
        json.endArray();
        json.null();
        json.endArray();
        json.member("c", std::optional<std::int64_t>{});
        json.endObject();
    };
    CHECK(written(JsonWriter::Layout::Compact, body) == R"({"a":1,"b":["x",{},[],null],"c":null})");
    CHECK(written(JsonWriter::Layout::Indented, body) ==
          "{\n \"a\": 1,\n \"b\": [\n  \"x\",\n  {},\n  [],\n  null\n ],\n \"c\": null\n}");
}

TEST_CASE("Texts are escaped where RFC 8259 asks for it, and nowhere else")
{
    CHECK(compact("\"\\/\b\f\n\r\t") == R"("\"\\/\b\f\n\r\t")");
    CHECK(compact(std::string_view("\0\x01\x1f\x7f", 4)) == "\"\\u0000\\u0001\\u001f\x7f\"");
    CHECK(compact("½ “é” 🛩") == "\"½ “é” 🛩\"");
}

TEST_CASE("What is no UTF-8, as the name of a file may be, never makes the text invalid")
{
    CHECK(compact("a\xff"
                  "b") == "\"a\uFFFDb\"");
    CHECK(compact("\xc3") == "\"\uFFFD\"");
    CHECK(compact("\xff\n") == "\"\uFFFD\\n\"");
}

TEST_CASE("Numbers are written shortest, and read back the same")
{
    CHECK(compact(std::numeric_limits<std::int64_t>::min()) == "-9223372036854775808");
    CHECK(compact(0.1) == "0.1");
    CHECK(compact(5.0) == "5");
    CHECK(compact(-0.0) == "-0.0");
    CHECK(compact(1e300) == "1e+300");
    CHECK(compact(true) == "true");
}

TEST_CASE("What JSON has no number for is null")
{
    CHECK(compact(std::numeric_limits<double>::infinity()) == "null");
    CHECK(compact(-std::numeric_limits<double>::infinity()) == "null");
    CHECK(compact(std::numeric_limits<double>::quiet_NaN()) == "null");
    CHECK(written(JsonWriter::Layout::Compact, [](JsonWriter &json) {
              json.beginObject();
              json.member("a", std::numeric_limits<double>::infinity());
              json.member("b", 1);
              json.endObject();
          }) == R"({"a":null,"b":1})");
}

TEST_CASE("A long text reaches the stream whole")
{
    const std::string longText(1'000'000, 'x');
    const auto text = written(JsonWriter::Layout::Compact, [&](JsonWriter &json) {
        json.beginArray();
        for (int i = 0; i < 3; ++i)
            json.value(longText);
        json.endArray();
    });
    CHECK(text.size() == 3 * longText.size() + 3 * 2 + 2 + 2);
}
