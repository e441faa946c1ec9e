// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/SearchIndex.h"

#include "core/records/Description.h"
#include "core/records/RecordPointer.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <iterator>
#include <map>
#include <unordered_set>
#include <utility>

namespace lastrivet::storage {

namespace {

// A row's number holds both the id and the type, so that newer records have greater numbers.
constexpr std::int64_t typesPerId = 32;
static_assert(recordTypeCount <= typesPerId);

std::int64_t rowNumber(RecordRef ref)
{
    return ref.id * typesPerId + std::int64_t(ref.type);
}

/// All but the project, which nobody looks for.
template <class Each> void forEachRecord(const Records &records, Each &&each)
{
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
        const auto &table = records.table(RecordType(i));
        const auto &description = describe(RecordType(i));
        for (const void *record = table.nextAny(0); record;
             record = table.nextAny(idOf(description, record)))
            each(RecordRef{RecordType(i), idOf(description, record)}, record);
    }
}

std::optional<RecordRef> refOf(std::int64_t rowNumber)
{
    const auto type = std::size_t(rowNumber % typesPerId);
    if (rowNumber < typesPerId || type >= recordTypeCount)
        return std::nullopt;
    return RecordRef{RecordType(type), rowNumber / typesPerId};
}

/// Texts that nobody would look for.
bool isSearched(const Field &field)
{
    static constexpr std::array<std::string_view, 2> others{"sha256", "currency"};
    return field.type == FieldType::Text &&
           std::find(others.begin(), others.end(), field.name) == others.end();
}

void addTexts(std::string &words, std::span<const Field> fields, const void *from)
{
    for (const auto &field : fields) {
        if (field.rows) {
            for (std::size_t i = 0; i < field.size(from); ++i)
                addTexts(words, field.rows->fields, field.row(from, i));
        } else if (isSearched(field)) {
            const auto value = field.value(from);
            if (const auto *text = std::get_if<std::string_view>(&value))
                words.append(words.empty() ? "" : "\n").append(*text);
        }
    }
}

std::string wordsOf(RecordType type, const void *record)
{
    std::string words;
    addTexts(words, describe(type).fields, record);
    return words;
}

std::string firstLine(std::string text)
{
    constexpr std::size_t longest = 80;
    text.resize(std::min(text.size(), text.find('\n')));
    if (text.size() <= longest)
        return text;
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80)
        --end;
    text.resize(end);
    return text + "…";
}

/// Each word in quotes, so that nothing in it is an operator; the last one as a beginning.
std::string expression(std::string_view text)
{
    std::string terms;
    std::string term;
    const auto finish = [&] {
        if (!term.empty())
            terms += fmt::format("{}\"{}\"", terms.empty() ? "" : " ", term);
        term.clear();
    };
    for (const char c : text) {
        if (c == ' ' || (c >= '\t' && c <= '\r') || c == '\0')
            finish();
        else
            term.append(c == '"' ? 2 : 1, c);
    }
    finish();
    return terms.empty() ? terms : terms + "*";
}

/// How early a record stands whose title has the words; others are found by any of their texts.
std::optional<int> rankOf(RecordType type)
{
    static constexpr std::array order{RecordType::Component, RecordType::Closing,
                                      RecordType::Squawk, RecordType::Step};
    const auto *found = std::ranges::find(order, type);
    return found == order.end() ? std::nullopt : std::optional(int(found - order.begin()));
}

} // namespace

std::string titleOf(RecordType type, const void *record)
{
    static constexpr std::array<std::string_view, 8> names{"title", "name",    "item", "what",
                                                           "task",  "caption", "file", "key"};
    const auto &description = describe(type);
    for (const auto name : names) {
        const Field *field = description.find(name);
        const auto value = field ? field->value(record) : Scalar{};
        if (const auto *text = std::get_if<std::string_view>(&value))
            return firstLine(std::string(*text));
    }
    return firstLine(wordsOf(type, record));
}

SearchIndex::SearchIndex(Database &database)
    : m_database(database)
{
}

void SearchIndex::put(RecordRef ref, const void *record)
{
    if (ref.type == RecordType::Project)
        return;
    {
        const StatementUse erase(m_erase, m_database.sql(),
                                 R"(DELETE FROM "search" WHERE rowid=?)");
        erase->bind(1, rowNumber(ref));
        erase->exec();
    }
    if (!record)
        return;
    const StatementUse insert(m_insert, m_database.sql(),
                              R"(INSERT INTO "search" (rowid,"title","body") VALUES (?,?,?))");
    insert->bind(1, rowNumber(ref));
    insert->bind(2, titleOf(ref.type, record));
    insert->bind(3, wordsOf(ref.type, record));
    insert->exec();
}

void SearchIndex::rebuild(const Records &records)
{
    // Emptied row by row, a damaged index would stay one.
    const auto made = m_database.text(R"(SELECT "sql" FROM sqlite_schema WHERE "name"='search')");
    m_erase.reset();
    m_insert.reset();
    m_database.run(R"(DROP TABLE "search")");
    m_database.run(made);
    forEachRecord(records, [this](RecordRef ref, const void *record) { put(ref, record); });
}

std::vector<RecordRef> SearchIndex::outOfStep(const Records &records) const
{
    std::map<std::int64_t, std::pair<std::string, std::string>> said;
    SQLite::Statement row(m_database.sql(), R"(SELECT rowid,"title","body" FROM "search")");
    while (row.executeStep())
        said[row.getColumn(0).getInt64()] = {row.getColumn(1).getString(),
                                             row.getColumn(2).getString()};
    std::vector<RecordRef> wrong;
    forEachRecord(records, [&](RecordRef ref, const void *record) {
        const auto found = said.find(rowNumber(ref));
        if (found == said.end() || found->second.first != titleOf(ref.type, record) ||
            found->second.second != wordsOf(ref.type, record))
            wrong.push_back(ref);
        if (found != said.end())
            said.erase(found);
    });
    for (const auto &[number, texts] : said)
        wrong.push_back(refOf(number).value_or(RecordRef{RecordType::Project, 1}));
    return wrong;
}

std::vector<SearchHit> SearchIndex::at(std::span<const RecordRef> records) const
{
    std::vector<SearchHit> hits;
    SQLite::Statement row(m_database.sql(), R"(SELECT "title" FROM "search" WHERE rowid=?)");
    for (const RecordRef record : records) {
        const StatementUse use(row);
        row.bind(1, rowNumber(record));
        if (row.executeStep())
            hits.push_back({record, row.getColumn(0).getString(), {}});
    }
    return hits;
}

std::vector<SearchHit> SearchIndex::titled(const std::string &terms, std::size_t limit) const
{
    constexpr std::int64_t mostLookedAt = 2'000;
    std::vector<std::pair<int, RecordRef>> found;
    SQLite::Statement row(m_database.sql(),
                          R"(SELECT rowid FROM "search" WHERE "search" MATCH ?
                             ORDER BY rowid DESC LIMIT ?)");
    row.bind(1, fmt::format("title : ({})", terms));
    row.bind(2, mostLookedAt);
    while (row.executeStep()) {
        const auto ref = refOf(row.getColumn(0).getInt64());
        if (const auto rank = ref ? rankOf(ref->type) : std::nullopt)
            found.emplace_back(*rank, *ref);
    }
    std::ranges::stable_sort(found, {}, &std::pair<int, RecordRef>::first);
    found.resize(std::min(limit, found.size()));
    std::vector<RecordRef> first;
    std::ranges::transform(found, std::back_inserter(first), &std::pair<int, RecordRef>::second);
    return at(first);
}

std::vector<SearchHit> SearchIndex::search(std::string_view text, std::size_t limit) const
{
    std::vector<SearchHit> hits;
    const auto words = text.substr(std::min(text.size(), text.find_first_not_of(" \t\r\n")));
    if (const auto pointed = readPointer(words.substr(0, words.find_last_not_of(" \t\r\n") + 1)))
        return at({&*pointed, 1});
    const auto terms = expression(text);
    if (terms.empty())
        return hits;
    limit = std::min<std::size_t>(limit, 100'000);
    hits = titled(terms, limit);
    std::unordered_set<std::int64_t> titles;
    for (const auto &hit : hits)
        titles.insert(rowNumber(hit.record));
    SQLite::Statement row(m_database.sql(),
                          R"(SELECT rowid,"title",snippet("search",-1,'','','…',12) FROM "search"
                             WHERE "search" MATCH ? ORDER BY rowid DESC LIMIT ?)");
    row.bind(1, terms);
    row.bind(2, std::int64_t(limit));
    while (hits.size() < limit && row.executeStep()) {
        const auto number = row.getColumn(0).getInt64();
        if (const auto ref = refOf(number); ref && !titles.contains(number))
            hits.push_back({*ref, row.getColumn(1).getString(), row.getColumn(2).getString()});
    }
    return hits;
}

} // namespace lastrivet::storage
