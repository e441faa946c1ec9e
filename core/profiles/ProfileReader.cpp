// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Moment.h"
#include "core/base/Tongue.h"
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
constexpr std::size_t mostFaults = 100;

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

/// What is collected while a profile is read.
struct Findings {
    std::vector<Cited> cited;
    std::vector<ProfileFault> faults;

    /// Carries `body` out; where it ends at a fault, that is noted and reading goes on behind it.
    template <class Body> void guard(Body &&body)
    {
        try {
            body();
        } catch (const ProfileFault &fault) {
            note(fault);
        }
    }
    bool isFull() const { return faults.size() >= mostFaults; }
    void note(ProfileFault fault)
    {
        if (!isFull())
            faults.push_back(std::move(fault));
    }
};

/// Takes the fields of one object out of JSON, and refuses fields that nobody asked for.
class ObjectReader {
public:
    template <class Row>
    static void read(const json &value, const std::string &pointer, Findings &findings, Row &into)
    {
        if (!value.is_object())
            refuseAt(pointer, {"is no object", {}});
        ObjectReader reader(value, pointer, findings);
        profiles::fieldsOf(reader, into);
        reader.refuseOthers();
    }

    void key(const char *name, std::string &into)
    {
        guard([&] { into = keyOf(name); });
    }
    void text(const char *name, std::string &into)
    {
        guard([&] { into = textOf(needed(name), at(name)); });
    }
    void optionalText(const char *name, std::string &into)
    {
        if (find(name))
            text(name, into);
    }
    void source(const char *name, std::string &into)
    {
        guard([&] {
            into = keyOf(name);
            m_findings.cited.push_back({at(name), into});
        });
    }
    void day(const char *name, std::string &into)
    {
        guard([&] {
            into = textOf(needed(name), at(name));
            const auto moment = Moment::parse(into);
            if (!moment || moment->hasTime())
                refuse(name, {"{0} is no day from 1900 to 2199", {inQuotes(into)}});
        });
    }
    void optionalDay(const char *name, std::string &into)
    {
        if (find(name))
            day(name, into);
    }
    void flag(const char *name, bool &into)
    {
        guard([&] {
            const json &value = needed(name);
            if (!value.is_boolean())
                refuse(name, {"is neither true nor false", {}});
            into = value.get<bool>();
        });
    }
    void number(const char *name, std::int64_t &into, std::int64_t low, std::int64_t high)
    {
        guard([&] {
            const json &value = needed(name);
            // Beyond int64 the parser makes it unsigned or a fraction.
            const bool fits =
                value.is_number_integer() &&
                !(value.is_number_unsigned() && value.get<std::uint64_t>() > INT64_MAX);
            if (!fits || value.get<std::int64_t>() < low || value.get<std::int64_t>() > high)
                refuse(name, {"is no whole number from {0} to {1}",
                              {std::to_string(low), std::to_string(high)}});
            into = value.get<std::int64_t>();
        });
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
        guard([&] { into = wordOf<Word>(needed(name), at(name)); });
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
        guard([&] { read(needed(name), at(name), m_findings, into); });
    }
    template <class Row> void rows(const char *name, std::vector<Row> &into, std::size_t least = 0)
    {
        eachOf(name, least, [&](const json &value, const std::string &pointer) {
            read(value, pointer, m_findings, into.emplace_back());
        });
    }

private:
    ObjectReader(const json &object, const std::string &pointer, Findings &findings)
        : m_object(object)
        , m_pointer(pointer)
        , m_findings(findings)
    {
    }

    template <class Body> void guard(Body &&body) { m_findings.guard(body); }

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
    void refuseOthers()
    {
        for (const auto &[name, value] : m_object.items()) {
            if (m_asked.contains(name))
                continue;
            if (name.find('\0') == std::string::npos)
                m_findings.note({at(name), {"is no field of a profile", {}}});
            else
                m_findings.note({at(name), {"holds the character U+0000", {}}});
        }
    }

    template <class Body> void eachOf(const char *name, std::size_t least, const Body &body)
    {
        guard([&] {
            const json &list = needed(name);
            if (!list.is_array())
                refuse(name, {"is no list", {}});
            if (list.size() < least)
                m_findings.note(
                    {at(name), {"has fewer than {0} entries", {std::to_string(least)}}});
            for (std::size_t i = 0; i < list.size() && !m_findings.isFull(); ++i)
                guard([&] { body(list[i], fmt::format("{}/{}", at(name), i)); });
        });
    }

    std::string keyOf(const char *name)
    {
        std::string text = textOf(needed(name), at(name));
        if (!isKey(text))
            refuse(name, {"{0} is no key: lower-case letters, digits, - and _, at most {1} of them",
                          {inQuotes(text), std::to_string(longestKey)}});
        return text;
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
    Findings &m_findings;
    std::set<std::string, std::less<>> m_asked;
};

template <class Row>
void refuseDoubles(Findings &findings, const std::vector<Row> &rows, std::string Row::*name,
                   std::string_view pointer, std::string_view field)
{
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        // Empty where it could not be read.
        if ((rows[i].*name).empty() || seen.insert(rows[i].*name).second)
            continue;
        findings.note({fmt::format("{}/{}/{}", pointer, i, field),
                       {"{0} is there already", {inQuotes(rows[i].*name)}}});
    }
}

/// What the shape of the text cannot say: names that stand once, and sources that are listed.
void checkNames(const Profile &profile, Findings &findings)
{
    refuseDoubles(findings, profile.checklists, &Profile::Checklist::key, "/checklists", "key");
    refuseDoubles(findings, profile.documents, &Profile::Document::key, "/documents", "key");
    refuseDoubles(findings, profile.cautions, &Profile::Caution::id, "/cautions", "id");
    refuseDoubles(findings, profile.sources, &Profile::Source::id, "/sources", "id");
    const bool areSourcesKnown = std::ranges::none_of(
        findings.faults, [](const auto &fault) { return fault.pointer.starts_with("/sources"); });
    for (const Cited &citation : findings.cited) {
        if (areSourcesKnown && !profile.findSource(citation.source))
            findings.note({citation.pointer,
                           {"{0} is none of the listed sources", {inQuotes(citation.source)}}});
    }
}

/// The profile as far as it could be read.
Profile readAll(std::string_view text, Findings &findings)
{
    Profile profile;
    findings.guard([&] {
        ObjectReader::read(profiles::parseStrictly(text), "", findings, profile);
        checkNames(profile, findings);
    });
    return profile;
}

} // namespace

Message ProfileFault::sentence(const std::string &place) const
{
    return pointer.empty() ? Message{"{0} {1}.", {place, nested(what)}}
                           : Message{"{0}: {1} {2}.", {place, pointer, nested(what)}};
}

Message ProfileFault::sentenceOfCopy() const
{
    if (pointer.empty())
        return {"The project's copy of its rule profile {0}.", {nested(what)}};
    return {"The project's copy of its rule profile: {0} {1}.", {pointer, nested(what)}};
}

Result<Profile, ProfileFault> readProfile(std::string_view text)
{
    Findings findings;
    Profile profile = readAll(text, findings);
    if (!findings.faults.empty())
        return findings.faults.front();
    profile.json = profileJson(profile);
    return profile;
}

std::vector<ProfileFault> profileFaults(std::string_view text)
{
    Findings findings;
    readAll(text, findings);
    return findings.faults;
}

} // namespace lastrivet
