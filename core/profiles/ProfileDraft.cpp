// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileDraft.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileFields.h"
#include "core/profiles/ProfileLibrary.h"

#include <nlohmann/json.hpp>

namespace lastrivet {

namespace {

using nlohmann::json;

/// Reads the fields of an object that fit, and ignores the rest.
class DraftReader {
public:
    explicit DraftReader(const json &object)
        : m_object(object)
    {
    }

    void key(const char *name, std::string &into) { take(name, into); }
    void text(const char *name, std::string &into) { take(name, into); }
    void optionalText(const char *name, std::string &into) { take(name, into); }
    void source(const char *name, std::string &into) { take(name, into); }
    void day(const char *name, std::string &into) { take(name, into); }
    void optionalDay(const char *name, std::string &into) { take(name, into); }
    void flag(const char *name, bool &into)
    {
        if (const json *value = find(name); value && value->is_boolean())
            into = value->get<bool>();
    }
    void number(const char *name, std::int64_t &into, std::int64_t, std::int64_t)
    {
        if (const json *value = find(name); value && value->is_number_integer())
            into = value->get<std::int64_t>();
    }
    void optionalNumber(const char *name, std::optional<std::int64_t> &into, std::int64_t,
                        std::int64_t)
    {
        if (const json *value = find(name); value && value->is_number_integer())
            into = value->get<std::int64_t>();
    }
    void texts(const char *name, std::vector<std::string> &into, std::size_t)
    {
        each(name, [&](const json &value) {
            if (value.is_string())
                into.push_back(value.get<std::string>());
        });
    }
    template <class Word> void word(const char *name, Word &into)
    {
        if (const json *value = find(name))
            into = wordOf<Word>(*value).value_or(into);
    }
    template <class Word> void words(const char *name, WordSet<Word> &into, std::size_t = 0)
    {
        into.clear();
        each(name, [&](const json &value) {
            if (const auto word = wordOf<Word>(value))
                into.insert(*word);
        });
    }
    template <class Word> void optionalWords(const char *name, WordSet<Word> &into)
    {
        words(name, into);
    }
    template <class Row> void object(const char *name, Row &into)
    {
        if (const json *value = find(name); value && value->is_object()) {
            DraftReader reader(*value);
            profiles::fieldsOf(reader, into);
        }
    }
    template <class Row> void rows(const char *name, std::vector<Row> &into, std::size_t = 0)
    {
        each(name, [&](const json &value) {
            if (!value.is_object())
                return;
            DraftReader reader(value);
            profiles::fieldsOf(reader, into.emplace_back());
        });
    }

private:
    const json *find(const char *name) const
    {
        const auto found = m_object.find(name);
        return found == m_object.end() ? nullptr : &*found;
    }
    void take(const char *name, std::string &into) const
    {
        if (const json *value = find(name); value && value->is_string())
            into = value->get<std::string>();
    }
    template <class Body> void each(const char *name, const Body &body) const
    {
        if (const json *list = find(name); list && list->is_array()) {
            for (const json &value : *list)
                body(value);
        }
    }
    template <class Word> static std::optional<Word> wordOf(const json &value)
    {
        return value.is_string() ? parseWord<Word>(value.get<std::string>()) : std::nullopt;
    }

    const json &m_object;
};

} // namespace

Profile readDraft(std::string_view text)
{
    Profile draft;
    const json whole = json::parse(text, nullptr, false);
    if (whole.is_object()) {
        DraftReader reader(whole);
        profiles::fieldsOf(reader, draft);
    }
    return draft;
}

Profile copyToEdit(const Profile &profile, std::string_view name, std::string_view day)
{
    Profile copy = profile;
    copy.id += "-own";
    copy.name = name;
    copy.edition = day;
    return copy;
}

std::optional<ProfileFault> whyNot(const Profile &draft, const ProfileLibrary &shipped)
{
    const std::string text = profileJson(draft);
    const auto read = readProfile(text);
    if (!read)
        return read.reason();
    try {
        const auto known = shipped.find(draft.id);
        if (known && profileJson(*known) != text)
            return ProfileFault{"/id",
                                {"is that of a profile that came with the program and says "
                                 "otherwise: a copy needs an id of its own",
                                 {}}};
    } catch (const UnreadableInput &) {
        // A profile that cannot be read is nobody's to be mistaken for.
    }
    return std::nullopt;
}

} // namespace lastrivet
