// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Designation.h"

#include "core/base/Tongue.h"
#include "core/base/Utf8.h"
#include "core/profiles/ProfileJson.h"
#include "core/records/Description.h"
#include "core/records/KindNames.h"

#include <algorithm>
#include <initializer_list>
#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet {

namespace {

std::string textOf(const RecordDescription &description, const void *record, std::string_view name)
{
    const Field *field = description.find(name);
    if (!field || field->isCollection())
        return {};
    const Scalar value = field->value(record);
    if (const auto *text = std::get_if<std::string_view>(&value))
        return std::string(*text);
    return {};
}

std::string firstText(const RecordDescription &description, const void *record,
                      std::initializer_list<std::string_view> names)
{
    for (const auto name : names) {
        if (auto text = textOf(description, record, name); !text.empty())
            return text;
    }
    return {};
}

std::string firstMoment(const RecordDescription &description, const void *record)
{
    for (const Field &field : description.fields) {
        if (field.type != FieldType::Moment)
            continue;
        const Scalar value = field.value(record);
        const auto *moment = std::get_if<Moment>(&value);
        return moment ? moment->text() : std::string();
    }
    return {};
}

/// Long titles are cut, so that a sentence stays one line.
std::string shortened(std::string title)
{
    constexpr std::size_t longest = 60;
    if (title.size() <= longest)
        return title;
    return std::string(prefixOf(title, longest)) + "…";
}

/// The name that a profile gives a paper, "bill_of_sale", as people read it, in every language; one
/// that the builder gave it, as it is.
std::string readable(std::string key)
{
    const bool isOfProfile = !key.empty() && std::all_of(key.begin(), key.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || c == '_';
    });
    std::replace(key.begin(), key.end(), '_', ' ');
    key = shortened(std::move(key));
    return isOfProfile ? nested({key, {}}) : key;
}

/// The title that the rules of the project's country give a paper; empty for a paper of the
/// builder's own, and without rules.
std::string titleByRules(const Records &records, std::string_view key)
{
    // Read once for a whole list of papers: the rules are some ten thousand letters.
    thread_local std::string read;
    thread_local std::vector<Profile::Document> papers;
    if (read != records.profile_copy) {
        const auto profile = readProfile(records.profile_copy);
        papers = profile ? profile->documents : std::vector<Profile::Document>();
        read = records.profile_copy;
    }
    const auto paper = std::ranges::find(papers, key, &Profile::Document::key);
    return paper == papers.end() || key.empty() ? std::string() : paper->title;
}

std::string titleOfPaper(const Records &records, const CertificateDocument &paper)
{
    auto title = titleByRules(records, paper.key);
    return title.empty() ? readable(paper.key) : nested({title, {}});
}

/// What tells a record from others of its type; of one without a title, of which kind it is.
std::string titleOf(const Records &records, const RecordDescription &description,
                    const void *record)
{
    if (description.type == RecordType::CertificateDocument)
        return titleOfPaper(records, *static_cast<const CertificateDocument *>(record));
    if (description.type == RecordType::HoldPoint)
        return nested(kindName(static_cast<const HoldPoint *>(record)->kind));
    if (description.type == RecordType::Inspection)
        return nested(kindName(static_cast<const Inspection *>(record)->kind));
    auto title =
        firstText(description, record, {"title", "name", "task", "item", "place", "what", "file"});
    if (!title.empty())
        return shortened(std::move(title));
    return readable(textOf(description, record, "key"));
}

std::string spokenNumber(const RecordDescription &description, const void *record)
{
    const bool isNumbered = description.type == RecordType::Squawk ||
                            description.type == RecordType::Deviation ||
                            description.type == RecordType::Bulletin;
    return textOf(description, record, isNumbered ? "number" : "code");
}

/// True of what people point at by its day.
bool isDated(RecordType type, std::string_view title)
{
    return type == RecordType::WorkSession || type == RecordType::SignOff ||
           type == RecordType::Weighing || title.empty();
}

} // namespace

Message designated(const Records &records, RecordRef record)
{
    const auto &description = describe(record.type);
    const std::string kind = nested({noun(record.type), {}});
    const void *found = records.find(record.type, record.id);
    if (!found)
        return {"{0} {1}", {kind, std::to_string(record.id)}};
    const auto title = titleOf(records, description, found);
    if (record.type == RecordType::Project)
        return {"{0} “{1}”", {kind, title}};
    auto number = spokenNumber(description, found);
    if (number.empty())
        number = std::to_string(record.id);
    const bool hasDay = isDated(record.type, title);
    const auto moment = hasDay ? firstMoment(description, found) : std::string();
    if (!moment.empty())
        return {"{0} {1} of {2}", {kind, number, moment}};
    if (title.empty() || hasDay)
        return {"{0} {1}", {kind, number}};
    return {"{0} {1} “{2}”", {kind, number, title}};
}

Message spoken(const Records &records, RecordRef record)
{
    const auto &description = describe(record.type);
    const void *found = records.find(record.type, record.id);
    if (!found || !spokenNumber(description, found).empty())
        return designated(records, record);
    const std::string kind = nested({noun(record.type), {}});
    const auto title = titleOf(records, description, found);
    const auto moment =
        isDated(record.type, title) ? firstMoment(description, found) : std::string();
    if (!moment.empty())
        return {"{0} of {1}", {kind, moment}};
    if (title.empty())
        return designated(records, record);
    const Closing *closing = record.type == RecordType::HoldPoint
                                 ? records.find(static_cast<const HoldPoint *>(found)->closing_id)
                                 : nullptr;
    if (closing)
        return {"{0} “{1}” for “{2}”", {kind, title, closing->title}};
    return {"{0} “{1}”", {kind, title}};
}

std::string designation(const Records &records, RecordRef record)
{
    return english(designated(records, record));
}

} // namespace lastrivet
