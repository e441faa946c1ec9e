// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/DocumentSchema.h"

#include "core/base/Id.h"
#include "core/exchange/DocumentFormat.h"
#include "core/exchange/DocumentWriter.h"
#include "core/records/Description.h"

#include <sstream>

namespace lastrivet::test {

namespace {

using exchange::writeScalar;

class SchemaWriter {
public:
    explicit SchemaWriter(std::ostream &out)
        : m_json(out, JsonWriter::Layout::Indented)
    {
    }

    void write()
    {
        m_json.beginObject();
        m_json.member("$schema", "https://json-schema.org/draft/2020-12/schema");
        m_json.member("title", "Lastrivet records, interchange document");
        m_json.member("type", "object");
        strings("required", {"format", "version", "project"});
        m_json.member("additionalProperties", false);
        m_json.key("properties");
        m_json.beginObject();
        writeDocumentProperties();
        m_json.endObject();
        m_json.key("$defs");
        m_json.beginObject();
        writeCommonDefinitions();
        for (std::size_t i = 0; i < recordTypeCount; ++i) {
            const auto &description = describe(RecordType(i));
            define(description.name(), description.fields, description.defaults);
        }
        m_json.endObject();
        m_json.endObject();
    }

private:
    void strings(std::string_view name, std::span<const std::string_view> texts)
    {
        m_json.key(name);
        m_json.beginArray();
        for (const auto text : texts)
            m_json.value(text);
        m_json.endArray();
    }
    void strings(std::string_view name, std::initializer_list<std::string_view> texts)
    {
        strings(name, std::span(texts.begin(), texts.size()));
    }
    void refer(std::string_view definition)
    {
        m_json.member("$ref", "#/$defs/" + std::string(definition));
    }

    void writeDocumentProperties()
    {
        object("format", [&] { m_json.member("const", exchange::documentFormat); });
        object("version", [&] { m_json.member("const", exchange::documentVersion); });
        object("hold_points_given", [&] { m_json.member("type", "boolean"); });
        object("profile_copy", [&] { strings("type", {"object", "null"}); });
        object("project", [&] { refer("project"); });
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
            object(plural(RecordType(i)), [&] {
                strings("type", {"array", "null"});
                object("items", [&] { refer(word(RecordType(i))); });
            });
        }
    }

    void writeCommonDefinitions()
    {
        object("id", [&] {
            m_json.member("type", "integer");
            m_json.member("minimum", 1);
            m_json.member("maximum", largestId);
        });
        object("moment", [&] {
            m_json.member("type", "string");
            m_json.member("pattern", "^(19|20|21)[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])"
                                     "(T([01][0-9]|2[0-3]):[0-5][0-9])?$");
        });
        object("text", [&] {
            m_json.member("type", "string");
            m_json.member("pattern", "^[^\\u0000]*$");
        });
    }

    /// An object member that `body` fills.
    template <class Body> void object(std::string_view name, Body &&body)
    {
        m_json.key(name);
        m_json.beginObject();
        body();
        m_json.endObject();
    }

    void define(std::string_view name, std::span<const Field> fields, const void *defaults)
    {
        object(name, [&] { describeFields(fields, defaults); });
        for (const Field &field : fields) {
            if (field.rows)
                define(field.rows->name, field.rows->fields, field.rows->defaults);
        }
    }

    void describeFields(std::span<const Field> fields, const void *defaults)
    {
        m_json.member("type", "object");
        std::vector<std::string_view> required;
        for (const Field &field : fields) {
            if (field.required)
                required.push_back(field.name);
        }
        strings("required", required);
        m_json.member("additionalProperties", false);
        object("properties", [&] {
            for (const Field &field : fields)
                object(field.name, [&] { describeField(field, defaults); });
        });
    }

    void describeField(const Field &field, const void *defaults)
    {
        if (field.isCollection()) {
            strings("type", field.required ? std::vector<std::string_view>{"array"}
                                           : std::vector<std::string_view>{"array", "null"});
            if (field.required)
                m_json.member("minItems", 1);
            object("items", [&] { describeValue(field); });
            return;
        }
        if (field.required) {
            describeValue(field);
            if (field.type == FieldType::Text)
                m_json.member("minLength", 1);
            return;
        }
        m_json.key("anyOf");
        m_json.beginArray();
        m_json.beginObject();
        describeValue(field);
        if (field.type == FieldType::Text && !isNull(field.value(defaults)))
            m_json.member("minLength", 1);
        m_json.endObject();
        m_json.beginObject();
        m_json.member("type", "null");
        m_json.endObject();
        m_json.endArray();
        if (const Scalar value = field.value(defaults); !isNull(value)) {
            m_json.key("default");
            writeScalar(m_json, value);
        }
    }

    void describeValue(const Field &field)
    {
        switch (field.type) {
        case FieldType::Id:
        case FieldType::Ref:
        case FieldType::Refs:
            return refer("id");
        case FieldType::Moment:
            return refer("moment");
        case FieldType::Text:
            return refer("text");
        case FieldType::List:
            return refer(field.rows->name);
        case FieldType::Bool:
            return m_json.member("type", "boolean");
        case FieldType::Real:
        case FieldType::Numbers:
            return m_json.member("type", "number");
        case FieldType::Int:
            m_json.member("type", "integer");
            m_json.member("minimum", -largestId);
            return m_json.member("maximum", largestId);
        case FieldType::Enum:
        case FieldType::Set:
            return strings("enum", field.words);
        case FieldType::Record:
            return strings("enum", Words<RecordType>::list);
        }
    }

    JsonWriter m_json;
};

} // namespace

std::string documentSchema()
{
    std::ostringstream out;
    SchemaWriter{out}.write();
    out.put('\n');
    return out.str();
}

} // namespace lastrivet::test
