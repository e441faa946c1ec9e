// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/DocumentWriter.h"

#include "core/exchange/DocumentFormat.h"
#include "core/exchange/WholeFile.h"

#include <ostream>
#include <type_traits>

namespace lastrivet::exchange {

namespace {

/// A text that is JSON over several lines, moved one level in: strings hold no line ends.
std::string indented(std::string_view json)
{
    while (!json.empty() && json.back() == '\n')
        json.remove_suffix(1);
    std::string text;
    for (const char c : json) {
        text += c;
        if (c == '\n')
            text += ' ';
    }
    return text;
}

void writeTable(JsonWriter &json, const Records &records, RecordType type)
{
    const auto &description = describe(type);
    const AnyTable &table = records.table(type);
    json.key(plural(type));
    json.beginArray();
    for (const void *row = table.nextAny(0); row; row = table.nextAny(idOf(description, row)))
        writeFields(json, description.fields, row);
    json.endArray();
}

} // namespace

void writeScalar(JsonWriter &json, const Scalar &value)
{
    std::visit(
        [&json](const auto &given) {
            using Given = std::decay_t<decltype(given)>;
            if constexpr (std::is_same_v<Given, std::monostate>)
                json.null();
            else if constexpr (std::is_same_v<Given, Moment>)
                json.value(given.text());
            else
                json.value(given);
        },
        value);
}

void writeCollection(JsonWriter &json, const Field &field, const void *owner)
{
    json.beginArray();
    for (std::size_t i = 0; i < field.size(owner); ++i) {
        if (field.rows)
            writeFields(json, field.rows->fields, field.row(owner, i));
        else
            writeScalar(json, field.item(owner, i));
    }
    json.endArray();
}

void writeFields(JsonWriter &json, std::span<const Field> fields, const void *owner)
{
    json.beginObject();
    for (const Field &field : fields) {
        if (field.isCollection()) {
            if (field.size(owner) == 0)
                continue;
            json.key(field.name);
            writeCollection(json, field, owner);
        } else if (const Scalar value = field.value(owner); !isNull(value)) {
            json.key(field.name);
            writeScalar(json, value);
        }
    }
    json.endObject();
}

void writeDocument(const Records &records, std::ostream &out)
{
    {
        JsonWriter json{out, JsonWriter::Layout::Indented};
        json.beginObject();
        json.member("format", documentFormat);
        json.member("version", documentVersion);
        json.member("hold_points_given", true);
        if (!records.profile_copy.empty()) {
            json.key("profile_copy");
            json.raw(indented(records.profile_copy));
        }
        json.key("project");
        writeFields(json, describe(RecordType::Project).fields, &records.project);
        for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i)
            writeTable(json, records, RecordType(i));
        json.endObject();
    }
    out.put('\n');
}

void writeDocumentFile(const Records &records, const std::filesystem::path &file)
{
    writeWholeFile(file, [&](std::ostream &out) { writeDocument(records, out); });
}

} // namespace lastrivet::exchange
