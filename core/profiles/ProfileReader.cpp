// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Moment.h"
#include "core/profiles/ProfileFields.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/StrictJson.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <set>

namespace lastrivet {

namespace {

using nlohmann::json;
using profiles::inQuotes;
using profiles::pointerStep;
using profiles::refuseAt;

constexpr std::size_t longestText = 2'000;
constexpr std::size_t longestKey = 64;

bool isKey(std::string_view text)
{
    const auto isLetterOrDigit = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    };
    return !text.empty() && text.size() <= longestKey && isLetterOrDigit(text.front()) &&
           std::ranges::all_of(text,
                               [&](char c) { return isLetterOrDigit(c) || c == '_' || c == '-'; });
}

/// Where a rule names its source.
struct Cited {
    std::string pointer;
    std::string source;
};

/// Takes the fields of one object out of JSON, and refuses fields that nobody asked for.
class ObjectReader {
public:
    template <class Row>
    static void read(const json &value, const std::string &pointer, std::vector<Cited> &cited,
                     Row &into)
    {
        if (!value.is_object())
            refuseAt(pointer, {"is no object", {}});
        ObjectReader reader(value, pointer, cited);
        profiles::fieldsOf(reader, into);
        reader.refuseOthers();
    }

    void key(const char *name, std::string &into)
    {
        into = textOf(needed(name), at(name));
        if (!isKey(into))
            refuse(name, {"{0} is no key: lower-case letters, digits, - and _, at most {1} of them",
                          {inQuotes(into), std::to_string(longestKey)}});
    }
    void text(const char *name, std::string &into) { into = textOf(needed(name), at(name)); }
    void optionalText(const char *name, std::string &into)
    {
        if (const json *value = find(name))
            into = textOf(*value, at(name));
    }
    void source(const char *name, std::string &into)
    {
        key(name, into);
        m_cited.push_back({at(name), into});
    }
    void day(const char *name, std::string &into)
    {
        text(name, into);
        const auto moment = Moment::parse(into);
        if (!moment || moment->hasTime())
            refuse(name, {"{0} is no day from 1900 to 2199", {inQuotes(into)}});
    }
    void optionalDay(const char *name, std::string &into)
    {
        if (find(name))
            day(name, into);
    }
    void flag(const char *name, bool &into)
    {
        const json &value = needed(name);
        if (!value.is_boolean())
            refuse(name, {"is neither true nor false", {}});
        into = value.get<bool>();
    }
    void number(const char *name, std::int64_t &into, std::int64_t low, std::int64_t high)
    {
        const json &value = needed(name);
        // Beyond int64 the parser makes it unsigned or a fraction.
        const bool fits = value.is_number_integer() &&
                          !(value.is_number_unsigned() && value.get<std::uint64_t>() > INT64_MAX);
        if (!fits || value.get<std::int64_t>() < low || value.get<std::int64_t>() > high)
            refuse(name, {"is no whole number from {0} to {1}",
                          {std::to_string(low), std::to_string(high)}});
        into = value.get<std::int64_t>();
    }
    void optionalNumber(const char *name, std::optional<std::int64_t> &into, std::int64_t low,
                        std::int64_t high)
    {
        if (find(name))
            number(name, into.emplace(), low, high);
    }
    void texts(const char *name, std::vector<std::string> &into, std::size_t least)
    {
        eachOf(name, least, [&](const json &value, const std::string &pointer) {
            into.push_back(textOf(value, pointer));
        });
    }

    template <class Word> void word(const char *name, Word &into)
    {
        into = wordOf<Word>(needed(name), at(name));
    }
    template <class Word> void words(const char *name, WordSet<Word> &into, std::size_t least = 0)
    {
        into.clear();
        eachOf(name, least, [&](const json &value, const std::string &pointer) {
            const Word word = wordOf<Word>(value, pointer);
            if (into.contains(word))
                refuseAt(pointer, {"{0} is listed twice", {inQuotes(lastrivet::word(word))}});
            into.insert(word);
        });
    }
    template <class Word> void optionalWords(const char *name, WordSet<Word> &into)
    {
        if (find(name))
            words(name, into);
    }

    template <class Row> void object(const char *name, Row &into)
    {
        read(needed(name), at(name), m_cited, into);
    }
    template <class Row> void rows(const char *name, std::vector<Row> &into, std::size_t least = 0)
    {
        eachOf(name, least, [&](const json &value, const std::string &pointer) {
            read(value, pointer, m_cited, into.emplace_back());
        });
    }

private:
    ObjectReader(const json &object, const std::string &pointer, std::vector<Cited> &cited)
        : m_object(object)
        , m_pointer(pointer)
        , m_cited(cited)
    {
    }

    std::string at(std::string_view name) const { return m_pointer + '/' + pointerStep(name); }
    [[noreturn]] void refuse(std::string_view name, Message what) const
    {
        refuseAt(at(name), std::move(what));
    }

    const json *find(const char *name)
    {
        m_asked.insert(name);
        const auto found = m_object.find(name);
        return found == m_object.end() ? nullptr : &*found;
    }
    const json &needed(const char *name)
    {
        const json *value = find(name);
        if (!value)
            refuse(name, {"is missing", {}});
        return *value;
    }
    void refuseOthers() const
    {
        for (const auto &[name, value] : m_object.items()) {
            if (!m_asked.contains(name))
                refuse(name, {"is no field of a profile", {}});
        }
    }

    template <class Body> void eachOf(const char *name, std::size_t least, const Body &body)
    {
        const json &list = needed(name);
        if (!list.is_array())
            refuse(name, {"is no list", {}});
        if (list.size() < least)
            refuse(name, {"has fewer than {0} entries", {std::to_string(least)}});
        for (std::size_t i = 0; i < list.size(); ++i)
            body(list[i], fmt::format("{}/{}", at(name), i));
    }

    static std::string textOf(const json &value, const std::string &pointer)
    {
        if (!value.is_string())
            refuseAt(pointer, {"is no text", {}});
        std::string text = value.get<std::string>();
        if (text.empty())
            refuseAt(pointer, {"is empty", {}});
        if (text.size() > longestText)
            refuseAt(pointer, {"is longer than {0} bytes", {std::to_string(longestText)}});
        if (text.find('\0') != std::string::npos)
            refuseAt(pointer, {"holds the character U+0000", {}});
        return text;
    }
    template <class Word> static Word wordOf(const json &value, const std::string &pointer)
    {
        const std::string text = textOf(value, pointer);
        const auto word = parseWord<Word>(text);
        if (!word) {
            const auto known = fmt::format("{}", fmt::join(Words<Word>::list, ", "));
            refuseAt(pointer, {"{0} is none of {1}", {inQuotes(text), known}});
        }
        return *word;
    }

    const json &m_object;
    const std::string &m_pointer;
    std::vector<Cited> &m_cited;
    std::set<std::string, std::less<>> m_asked;
};

template <class Row>
void refuseDoubles(const std::vector<Row> &rows, std::string Row::*name, std::string_view pointer,
                   std::string_view field)
{
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (seen.insert(rows[i].*name).second)
            continue;
        const auto place = fmt::format("{}/{}/{}", pointer, i, field);
        refuseAt(place, {"{0} is there already", {inQuotes(rows[i].*name)}});
    }
}

/// What the shape of the text cannot say: names that stand once, and sources that are listed.
void checkNames(const Profile &profile, const std::vector<Cited> &cited)
{
    refuseDoubles(profile.checklists, &Profile::Checklist::key, "/checklists", "key");
    refuseDoubles(profile.documents, &Profile::Document::key, "/documents", "key");
    refuseDoubles(profile.cautions, &Profile::Caution::id, "/cautions", "id");
    refuseDoubles(profile.sources, &Profile::Source::id, "/sources", "id");
    for (const Cited &citation : cited) {
        if (!profile.findSource(citation.source))
            refuseAt(citation.pointer,
                     {"{0} is none of the listed sources", {inQuotes(citation.source)}});
    }
}

} // namespace

std::string ProfileFault::sentence(std::string_view place) const
{
    return pointer.empty() ? fmt::format("{} {}.", place, english(what))
                           : fmt::format("{}: {} {}.", place, pointer, english(what));
}

Result<Profile, ProfileFault> readProfile(std::string_view text)
{
    try {
        Profile profile;
        std::vector<Cited> cited;
        ObjectReader::read(profiles::parseStrictly(text), "", cited, profile);
        checkNames(profile, cited);
        profile.json = profileJson(profile);
        return profile;
    } catch (const ProfileFault &fault) {
        return fault;
    }
}

} // namespace lastrivet
