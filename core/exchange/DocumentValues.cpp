// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/DocumentBuilder.h"
#include "core/exchange/DocumentFormat.h"
#include "core/exchange/FieldValue.h"

#include <algorithm>
#include <type_traits>

// The keys and values between the brackets.
namespace lastrivet::exchange {

namespace {

bool hasNull(std::string_view text)
{
    return text.find('\0') != std::string_view::npos;
}

Message holdsNull()
{
    return {"The character U+0000 is not allowed in a text.", {}};
}

} // namespace

bool DocumentBuilder::key(std::string_view name)
{
    switch (top().kind) {
    case Kind::Document:
        return documentKey(name);
    case Kind::Fields:
        return fieldKey(name);
    case Kind::Profile:
        top().key = std::string(name);
        m_profile->key(name);
        return true;
    default:
        return true;
    }
}

bool DocumentBuilder::documentKey(std::string_view name)
{
    top().key = std::string(name);
    const bool isKnown = name == "format" || name == "version" || name == "hold_points_given" ||
                         name == "profile_copy" || name == "project" || recordTypeOfPlural(name);
    Message wrong{"There is nothing of this name in a document.", {}};
    if (isKnown && m_documentKeys.emplace(name).second)
        return true;
    if (isKnown)
        wrong.pattern = "This stands twice in the document.";
    const bool goesOn = report(std::move(wrong));
    top().key.reset();
    return goesOn;
}

bool DocumentBuilder::fieldKey(std::string_view name)
{
    Frame &frame = top();
    frame.key = std::string(name);
    const auto found = std::find_if(frame.fields.begin(), frame.fields.end(),
                                    [name](const Field &field) { return field.name == name; });
    frame.field = nullptr;
    if (found == frame.fields.end())
        return report({"There is no field of this name.", {}});
    const auto bit = std::uint64_t{1} << (found - frame.fields.begin());
    if (frame.seen & bit)
        return report({"This field stands twice.", {}});
    frame.seen |= bit;
    frame.field = &*found;
    return true;
}

bool DocumentBuilder::scalar(const Scalar &value, std::string_view literal)
{
    m_literal = literal;
    if (m_frames.empty()) {
        report({"The document is {0}, not an object.", {shownAsGiven(value)}});
        return false;
    }
    bool goesOn = true;
    const auto *text = std::get_if<std::string_view>(&value);
    if (top().kind == Kind::Profile)
        profileScalar(value);
    else if (text && hasNull(*text) && top().kind != Kind::Skipped)
        goesOn = report(holdsNull());
    else if (top().kind == Kind::Document)
        goesOn = documentScalar(value);
    else if (top().kind == Kind::Fields)
        goesOn = fieldScalar(value);
    else if (top().kind == Kind::Items && !addValue(*top().field, top().owner, value))
        goesOn = report(mismatch(*top().field, shownAsGiven(value)));
    else if (top().kind == Kind::Records || top().kind == Kind::Rows)
        goesOn = report({"{0} is no object.", {shownAsGiven(value)}});
    nextElement();
    return goesOn;
}

bool DocumentBuilder::documentScalar(const Scalar &value)
{
    const auto &key = top().key;
    if (key == "format" && value != Scalar{documentFormat}) {
        report({"{0} is another format than {1}.",
                {shownAsGiven(value), std::string(documentFormat)}});
        return false;
    }
    if (key == "version" && value != Scalar{documentVersion}) {
        report({"{0} is another version than {1}, the only one that is read here.",
                {shownAsGiven(value), std::to_string(documentVersion)}});
        return false;
    }
    if (key == "hold_points_given") {
        const auto *flag = std::get_if<bool>(&value);
        m_reading.document.hold_points_given = flag && *flag;
        return flag || report({"{0} is neither true nor false.", {shownAsGiven(value)}});
    }
    const bool isOptional = key == "profile_copy" || (key && recordTypeOfPlural(*key));
    if (!key || key == "format" || key == "version" || (isOptional && isNull(value)))
        return true;
    return report({isOptional && key != "profile_copy" ? "{0} is no list." : "{0} is no object.",
                   {shownAsGiven(value)}});
}

bool DocumentBuilder::fieldScalar(const Scalar &value)
{
    Frame &frame = top();
    if (!frame.field)
        return true;
    const Field &field = *frame.field;
    if (isNull(value))
        return !field.required || report({"This field must not be null.", {}});
    if (field.isCollection())
        return report({"{0} is no list.", {shownAsGiven(value)}});
    return assignValue(field, frame.owner, value) || report(mismatch(field, shownAsGiven(value)));
}

std::string DocumentBuilder::shownAsGiven(const Scalar &value) const
{
    constexpr std::size_t longest = 40;
    return m_literal.empty() || m_literal.size() > longest ? shown(value) : std::string(m_literal);
}

void DocumentBuilder::profileScalar(const Scalar &value)
{
    const auto *text = std::get_if<std::string_view>(&value);
    if (text && top().key == "id" && m_frames[m_frames.size() - 2].kind == Kind::Document)
        m_reading.document.profile_id = *text;
    // Written as a double, 1.0 would be read back as a whole number.
    if (!m_literal.empty())
        return m_profile->raw(m_literal);
    std::visit(
        [this](const auto &given) {
            using Given = std::decay_t<decltype(given)>;
            if constexpr (std::is_same_v<Given, std::monostate>)
                m_profile->null();
            else if constexpr (!std::is_same_v<Given, Moment>)
                m_profile->value(given);
        },
        value);
}

} // namespace lastrivet::exchange
