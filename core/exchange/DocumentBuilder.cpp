// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/DocumentBuilder.h"

#include "core/base/Sha256.h"
#include "core/base/Tongue.h"
#include "core/exchange/DocumentFormat.h"
#include "core/exchange/FieldValue.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/StrictJson.h"
#include "core/records/Designation.h"
#include "core/records/Media.h"

#include <algorithm>
#include <utility>

namespace lastrivet::exchange {

namespace {

constexpr std::size_t deepest = 16;

} // namespace

bool DocumentBuilder::isRecord(const Frame &frame) const
{
    return frame.kind == Kind::Fields && m_record && frame.owner == m_record.get();
}

std::string DocumentBuilder::pointer() const
{
    std::string text;
    for (const Frame &frame : m_frames) {
        if (frame.key)
            text += "/" + profiles::pointerStep(*frame.key);
        else if (frame.index)
            text += "/" + std::to_string(*frame.index);
    }
    return text;
}

bool DocumentBuilder::report(Message what)
{
    m_reading.errors.push_back({pointer(), {}, std::move(what)});
    return m_reading.errors.size() < mostErrors;
}

bool DocumentBuilder::reportAndSkip(Message what)
{
    return report(std::move(what)) && push({.kind = Kind::Skipped});
}

bool DocumentBuilder::push(Frame frame)
{
    if (m_frames.size() == deepest) {
        report({"Brackets are nested more than {0} levels deep.", {std::to_string(deepest)}});
        return false;
    }
    m_frames.push_back(std::move(frame));
    return true;
}

void DocumentBuilder::pop()
{
    m_frames.pop_back();
    nextElement();
}

void DocumentBuilder::nextElement()
{
    if (m_frames.empty())
        return;
    top().key.reset();
    if (top().index)
        ++*top().index;
}

bool DocumentBuilder::beginObject()
{
    if (m_frames.empty())
        return push({.kind = Kind::Document});
    switch (top().kind) {
    case Kind::Document:
        return beginPart();
    case Kind::Profile:
        m_profile->beginObject();
        return push({.kind = Kind::Profile});
    case Kind::Records:
        return beginRecord();
    case Kind::Rows:
        return beginRow();
    case Kind::Fields:
        return top().field ? reportAndSkip(mismatch(*top().field, "An object"))
                           : push({.kind = Kind::Skipped});
    case Kind::Items:
        return reportAndSkip(mismatch(*top().field, "An object"));
    case Kind::Skipped:
        break;
    }
    return push({.kind = Kind::Skipped});
}

bool DocumentBuilder::beginPart()
{
    if (top().key == "project") {
        m_errorsBefore = m_reading.errors.size();
        return push({.kind = Kind::Fields,
                     .fields = describe(RecordType::Project).fields,
                     .owner = &m_reading.document.records.project});
    }
    if (top().key == "profile_copy") {
        m_profile = std::make_unique<JsonWriter>(m_profileText);
        m_profile->beginObject();
        return push({.kind = Kind::Profile});
    }
    return top().key ? reportAndSkip({"This is an object, which does not belong here.", {}})
                     : push({.kind = Kind::Skipped});
}

bool DocumentBuilder::beginRecord()
{
    const auto &description = describe(top().type);
    m_record = description.make();
    m_errorsBefore = m_reading.errors.size();
    return push({.kind = Kind::Fields,
                 .type = description.type,
                 .fields = description.fields,
                 .owner = m_record.get()});
}

bool DocumentBuilder::beginRow()
{
    const Field &list = *top().field;
    return push(
        {.kind = Kind::Fields, .fields = list.rows->fields, .owner = list.addRow(top().owner)});
}

bool DocumentBuilder::beginArray()
{
    if (m_frames.empty()) {
        report({"The document is a list, not an object.", {}});
        return false;
    }
    switch (top().kind) {
    case Kind::Document:
        if (const auto type = top().key ? recordTypeOfPlural(*top().key) : std::nullopt)
            return push({.kind = Kind::Records, .type = *type, .index = 0});
        return top().key ? reportAndSkip({"This is a list, which does not belong here.", {}})
                         : push({.kind = Kind::Skipped});
    case Kind::Profile:
        m_profile->beginArray();
        return push({.kind = Kind::Profile, .index = 0});
    case Kind::Records:
    case Kind::Rows:
        return reportAndSkip({"This is a list, not an object.", {}});
    case Kind::Fields:
        return beginCollection();
    case Kind::Items:
        return reportAndSkip(mismatch(*top().field, "A list"));
    case Kind::Skipped:
        break;
    }
    return push({.kind = Kind::Skipped});
}

bool DocumentBuilder::beginCollection()
{
    const Field *field = top().field;
    if (!field)
        return push({.kind = Kind::Skipped});
    if (!field->isCollection())
        return reportAndSkip(mismatch(*field, "A list"));
    return push({.kind = field->rows ? Kind::Rows : Kind::Items,
                 .owner = top().owner,
                 .field = field,
                 .index = 0});
}

bool DocumentBuilder::endObject()
{
    const Kind kind = top().kind;
    if (kind == Kind::Fields)
        return endFields();
    if (kind == Kind::Profile)
        m_profile->endObject();
    if (kind == Kind::Document)
        endDocument();
    pop();
    return kind != Kind::Profile || top().kind != Kind::Document || endProfile();
}

bool DocumentBuilder::endArray()
{
    if (top().kind == Kind::Profile)
        m_profile->endArray();
    pop();
    return true;
}

bool DocumentBuilder::endFields()
{
    Frame &frame = top();
    frame.key.reset();
    bool goesOn = true;
    for (std::size_t i = 0; i < frame.fields.size() && goesOn; ++i) {
        const Field &field = frame.fields[i];
        if (field.required && !(frame.seen & (std::uint64_t{1} << i)))
            goesOn = report({"The field {0} is missing.", {std::string(field.name)}});
    }
    if (isRecord(frame))
        endRecord();
    else if (frame.owner == &m_reading.document.records.project &&
             m_reading.errors.size() > m_errorsBefore)
        m_reading.faulty.insert({RecordType::Project, 1});
    pop();
    return goesOn;
}

void DocumentBuilder::endRecord()
{
    auto &document = m_reading.document;
    const auto &description = describe(top().type);
    const RecordRef record{top().type, idOf(description, m_record.get())};
    // Some programs write sums in capitals; here they are compared as texts.
    if (auto *media =
            record.type == RecordType::Media ? static_cast<Media *>(m_record.get()) : nullptr)
        media->sha256 = withLowerCaseHex(std::move(media->sha256));
    if (record.id != 0 &&
        !document.positions.emplace(record, m_frames[m_frames.size() - 2].index.value_or(0))
             .second) {
        report({"The id {0} is that of {1} already.",
                {std::to_string(record.id), document.pointerTo(record)}});
    } else if (record.id != 0) {
        document.records.put(record.type, m_record.get());
    }
    if (m_reading.errors.size() > m_errorsBefore) {
        nameErrors(record, document.records);
        m_reading.faulty.insert(record);
    }
    m_record.reset();
}

void DocumentBuilder::nameErrors(RecordRef record, const Records &records)
{
    const auto name =
        record.id != 0 ? designation(records, record) : std::string(noun(record.type));
    for (std::size_t i = m_errorsBefore; i < m_reading.errors.size(); ++i)
        m_reading.errors[i].record = name;
}

void DocumentBuilder::nameUnfinished()
{
    const auto open =
        std::ranges::find_if(m_frames, [this](const Frame &frame) { return isRecord(frame); });
    if (open == m_frames.end())
        return;
    const RecordRef record{open->type, idOf(describe(open->type), m_record.get())};
    Records alone;
    if (record.id != 0)
        alone.put(record.type, m_record.get());
    nameErrors(record, alone);
}

bool DocumentBuilder::endProfile()
{
    m_profile.reset();
    const auto text = m_profileText.str();
    if (auto profile = readProfile(text)) {
        m_reading.document.profile = std::move(*profile);
        return true;
    }
    for (const ProfileFault &fault : profileFaults(text)) {
        if (m_reading.errors.size() < mostErrors)
            m_reading.errors.push_back(
                {"/profile_copy" + fault.pointer, {}, {"{0}.", {nested(fault.what)}}});
    }
    return m_reading.errors.size() < mostErrors;
}

void DocumentBuilder::endDocument()
{
    top().key.reset();
    for (const std::string_view name : {"format", "version"}) {
        if (!m_documentKeys.contains(name)) {
            // Further errors say nothing about what may not be a document at all.
            m_reading.errors.clear();
            report({"This is no document of format {0}: {1} is missing.",
                    {std::string(documentFormat), std::string(name)}});
            return;
        }
    }
    const bool hasProject = m_documentKeys.contains(std::string_view("project"));
    if (!hasProject)
        report({"The project is missing.", {}});
    // What is not there, or no object, is not said to lack its fields as well.
    if (!hasProject || std::ranges::any_of(m_reading.errors, [](const InputError &error) {
            return error.place == "/project";
        }))
        m_reading.faulty.insert({RecordType::Project, 1});
    m_reading.isComplete = true;
}

bool DocumentBuilder::refuse(Message what)
{
    const bool goesOn = report(std::move(what));
    nextElement();
    return goesOn;
}

void DocumentBuilder::stop(Message what)
{
    m_reading.errors.push_back({pointer(), {}, std::move(what)});
    m_reading.isComplete = false;
}

DocumentReading DocumentBuilder::finish()
{
    nameUnfinished();
    auto &document = m_reading.document;
    if (document.profile)
        document.records.profile_copy = document.profile->json;
    return std::move(m_reading);
}

} // namespace lastrivet::exchange
