// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rules/RulesOutline.h"

#include "core/profiles/ProfileFields.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/rules/RulesForm.h"
#include "ui/rules/RulesWords.h"

#include <type_traits>
#include <utility>

namespace lastrivet::ui {

namespace {

/// Goes through fields without doing anything with them.
class Passing {
public:
    void key(const char *, std::string &) {}
    void text(const char *, std::string &) {}
    void optionalText(const char *, std::string &) {}
    void source(const char *, std::string &) {}
    void day(const char *, std::string &) {}
    void optionalDay(const char *, std::string &) {}
    void flag(const char *, bool &) {}
    void number(const char *, std::int64_t &, std::int64_t, std::int64_t) {}
    void optionalNumber(const char *, std::optional<std::int64_t> &, std::int64_t, std::int64_t) {}
    void texts(const char *, std::vector<std::string> &, std::size_t) {}
    template <class Word> void word(const char *, Word &) {}
    template <class Word> void words(const char *, WordSet<Word> &, std::size_t = 0) {}
    template <class Word> void optionalWords(const char *, WordSet<Word> &) {}
    template <class Row> void object(const char *, Row &) {}
    template <class Row> void rows(const char *, std::vector<Row> &, std::size_t = 0) {}
};

/// Finds what a line of a list is best called.
class Naming : public Passing {
public:
    void key(const char *, std::string &value) { m_key = toQt(value); }
    void text(const char *name, std::string &value)
    {
        (std::string_view(name) == "text" ? m_text : m_title) = toQt(value);
    }
    template <class Word> void word(const char *name, Word &value)
    {
        if (std::string_view(name) == "kind" || std::string_view(name) == "rule")
            m_word = plainWord(lastrivet::word(value));
    }

    QString name() const
    {
        for (const QString &name : {m_title, m_word, m_text, m_key}) {
            if (!name.isEmpty())
                return name;
        }
        return QStringLiteral("…");
    }

private:
    QString m_title;
    QString m_text;
    QString m_word;
    QString m_key;
};

/// A new line of a list names the first source there is, as remembered only.
class Beginning : public Passing {
public:
    explicit Beginning(const Profile &profile)
        : m_source(profile.sources.empty() ? std::string() : profile.sources.front().id)
    {
    }
    void source(const char *, std::string &value) { value = m_source; }
    template <class Word> void word(const char *, Word &value)
    {
        if constexpr (std::is_same_v<Word, Mark>)
            value = Mark::Memory;
    }

private:
    std::string m_source;
};

class Outlining : public Passing {
public:
    Outlining(Profile &profile, std::vector<RulesNode> &nodes, std::string pointer, int depth)
        : m_profile(profile)
        , m_nodes(nodes)
        , m_pointer(std::move(pointer))
        , m_depth(depth)
    {
    }

    template <class Row> void object(const char *name, Row &row)
    {
        const std::string pointer = m_pointer + '/' + name;
        m_nodes.push_back({pointer,
                           ruleFieldWords(name),
                           m_depth + 1,
                           [&row](RulesForm &form) { profiles::fieldsOf(form, row); },
                           {},
                           {},
                           {}});
        goInto(row, pointer, m_depth + 1);
    }
    template <class Row> void rows(const char *name, std::vector<Row> &list, std::size_t = 0)
    {
        const std::string pointer = m_pointer + '/' + name;
        RulesNode node{pointer, ruleFieldWords(name), m_depth + 1, {}, {}, {}, {}};
        node.add = [&list, &profile = m_profile] {
            Beginning beginning(profile);
            profiles::fieldsOf(beginning, list.emplace_back());
        };
        m_nodes.push_back(std::move(node));
        for (std::size_t i = 0; i < list.size(); ++i)
            addLine(list, i, pointer + '/' + std::to_string(i));
    }

private:
    template <class Row>
    void addLine(std::vector<Row> &list, std::size_t i, const std::string &pointer)
    {
        Naming naming;
        profiles::fieldsOf(naming, list[i]);
        RulesNode node{pointer, naming.name(), m_depth + 2, {}, {}, {}, {}};
        node.show = [&list, i](RulesForm &form) { profiles::fieldsOf(form, list[i]); };
        node.remove = [&list, i] { list.erase(list.begin() + std::ptrdiff_t(i)); };
        node.move = [&list, i](int by) {
            const auto to = std::ptrdiff_t(i) + by;
            if (to >= 0 && to < std::ptrdiff_t(list.size()))
                std::swap(list[i], list[std::size_t(to)]);
        };
        m_nodes.push_back(std::move(node));
        goInto(list[i], pointer, m_depth + 2);
    }
    template <class Row> void goInto(Row &row, const std::string &pointer, int depth)
    {
        Outlining below(m_profile, m_nodes, pointer, depth);
        profiles::fieldsOf(below, row);
    }

    Profile &m_profile;
    std::vector<RulesNode> &m_nodes;
    std::string m_pointer;
    int m_depth;
};

} // namespace

std::vector<RulesNode> outlineOf(Profile &profile)
{
    std::vector<RulesNode> nodes;
    nodes.push_back({{},
                     profile.name.empty() ? QStringLiteral("…") : toQt(profile.name),
                     0,
                     [&profile](RulesForm &form) { profiles::fieldsOf(form, profile); },
                     {},
                     {},
                     {}});
    Outlining outlining(profile, nodes, {}, 0);
    profiles::fieldsOf(outlining, profile);
    return nodes;
}

std::size_t nodeAt(const std::vector<RulesNode> &outline, std::string_view pointer)
{
    std::size_t best = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const std::string &known = outline[i].pointer;
        const bool leadsThere = pointer.starts_with(known) &&
                                (pointer.size() == known.size() || pointer[known.size()] == '/');
        if (leadsThere && known.size() >= outline[best].pointer.size())
            best = i;
    }
    return best;
}

} // namespace lastrivet::ui
