// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileFields.h"
#include "core/profiles/ProfileJson.h"

#include <nlohmann/json.hpp>

namespace lastrivet {

namespace {

using nlohmann::ordered_json;

/// Puts the fields of one object into JSON.
class ObjectWriter {
public:
    template <class Row> static ordered_json objectOf(Row &row)
    {
        ObjectWriter writer;
        profiles::fieldsOf(writer, row);
        return std::move(writer.m_object);
    }

    void key(const char *name, const std::string &value) { m_object[name] = value; }
    void text(const char *name, const std::string &value) { m_object[name] = value; }
    void source(const char *name, const std::string &value) { m_object[name] = value; }
    void day(const char *name, const std::string &value) { m_object[name] = value; }
    void flag(const char *name, bool value) { m_object[name] = value; }
    void texts(const char *name, const std::vector<std::string> &values, std::size_t)
    {
        m_object[name] = values;
    }

    void optionalText(const char *name, const std::string &value)
    {
        if (!value.empty())
            m_object[name] = value;
    }
    void optionalDay(const char *name, const std::string &value) { optionalText(name, value); }

    void number(const char *name, std::int64_t value, std::int64_t, std::int64_t)
    {
        m_object[name] = value;
    }
    void optionalNumber(const char *name, const std::optional<std::int64_t> &value, std::int64_t,
                        std::int64_t)
    {
        if (value)
            m_object[name] = *value;
    }

    template <class Word> void word(const char *name, Word value)
    {
        m_object[name] = lastrivet::word(value);
    }
    template <class Word> void words(const char *name, WordSet<Word> values, std::size_t = 0)
    {
        ordered_json &list = m_object[name] = ordered_json::array();
        for (std::size_t i = 0; i < Words<Word>::list.size(); ++i) {
            if (values.contains(Word(i)))
                list.push_back(Words<Word>::list[i]);
        }
    }
    template <class Word> void optionalWords(const char *name, WordSet<Word> values)
    {
        if (!values.isEmpty())
            words(name, values);
    }

    template <class Row> void object(const char *name, Row &row) { m_object[name] = objectOf(row); }
    template <class Row> void rows(const char *name, std::vector<Row> &rowsOfList, std::size_t = 0)
    {
        ordered_json &list = m_object[name] = ordered_json::array();
        for (Row &row : rowsOfList)
            list.push_back(objectOf(row));
    }

private:
    ordered_json m_object = ordered_json::object();
};

} // namespace

std::string profileJson(const Profile &profile)
{
    Profile copy = profile; // the fields are described for reading, so as changeable
    return ObjectWriter::objectOf(copy).dump(1, ' ', false,
                                             ordered_json::error_handler_t::replace) +
           '\n';
}

} // namespace lastrivet
