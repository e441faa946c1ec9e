// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"

#include <QFormLayout>
#include <QStringList>
#include <QWidget>

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lastrivet::ui {

/// The fields of one object of a rule profile, written into it as they are typed.
///
/// Shows an object by going through its fields as the reader and the writer of profiles do; the
/// object outlives what is shown. Lists below it are no business of the form.
class RulesForm final : public QWidget {
    Q_OBJECT

public:
    explicit RulesForm(QWidget *parent = nullptr);

    /// Takes every field away. `sources` are the ids that a rule may name.
    void begin(const QStringList &sources);

    void key(const char *name, std::string &into) { addLine(name, into); }
    void text(const char *name, std::string &into) { addText(name, into); }
    void optionalText(const char *name, std::string &into) { addText(name, into); }
    void source(const char *name, std::string &into);
    void day(const char *name, std::string &into) { addLine(name, into); }
    void optionalDay(const char *name, std::string &into) { addLine(name, into); }
    void flag(const char *name, bool &into);
    void number(const char *name, std::int64_t &into, std::int64_t low, std::int64_t high);
    void optionalNumber(const char *name, std::optional<std::int64_t> &into, std::int64_t low,
                        std::int64_t high);
    void texts(const char *name, std::vector<std::string> &into, std::size_t);
    template <class Word> void word(const char *name, Word &into)
    {
        addChoice(name, Words<Word>::list, std::size_t(into),
                  [&into](std::size_t chosen) { into = Word(chosen); });
    }
    template <class Word> void words(const char *name, WordSet<Word> &into, std::size_t = 0)
    {
        addTicks(
            name, Words<Word>::list,
            [&into](std::size_t word) { return into.contains(Word(word)); },
            [&into](std::size_t word, bool isIn) {
                isIn ? into.insert(Word(word)) : into.remove(Word(word));
            });
    }
    template <class Word> void optionalWords(const char *name, WordSet<Word> &into)
    {
        words(name, into);
    }
    template <class Row> void object(const char *, Row &) {}
    template <class Row> void rows(const char *, std::vector<Row> &, std::size_t = 0) {}

Q_SIGNALS:
    /// Something was written into the object.
    void edited();
    /// What was typed cannot stand in its field.
    void refused(const QString &why);

private:
    using WordList = std::span<const std::string_view>;

    void addRow(const char *name, QWidget *field);
    void addLine(const char *name, std::string &into);
    void addText(const char *name, std::string &into);
    void addLong(const char *name, std::string &into);
    void addChoice(const char *name, WordList list, std::size_t chosen,
                   const std::function<void(std::size_t)> &choose);
    void addTicks(const char *name, WordList list, const std::function<bool(std::size_t)> &isIn,
                  const std::function<void(std::size_t, bool)> &tick);

    QFormLayout *m_fields;
    QStringList m_sources;
};

} // namespace lastrivet::ui
