// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/SearchIndex.h"

#include "core/base/Utf8.h"
#include "core/records/Description.h"
#include "core/records/RecordPointer.h"

#include <algorithm>
#include <array>
#include <deque>
#include <fmt/format.h>
#include <map>
#include <span>
#include <unordered_set>
#include <utility>

namespace lastrivet::storage {

namespace {

// A row's number is made of the rank of the record's type, its id and its type, so that newer
// records of one rank have greater numbers.
constexpr std::int64_t typesPerId = 32;
constexpr std::int64_t rowsPerRank = std::int64_t{1} << 58;
static_assert(recordTypeCount <= typesPerId);
static_assert(largestId < rowsPerRank / typesPerId);

/// Types whose hits in the title come first, the higher the earlier. All others have rank 0, and
/// are found by any of their texts.
std::int64_t rankOf(RecordType type)
{
    static constexpr std::array order{RecordType::Component, RecordType::Closing,
                                      RecordType::Squawk, RecordType::Step};
    static_assert(order.size() + 1 == searchRanks);
    return order.end() - std::ranges::find(order, type);
}

/// The number without its rank: greater for newer records of all types.
std::int64_t ageOf(std::int64_t rowNumber)
{
    return rowNumber % rowsPerRank;
}

std::int64_t rowNumber(RecordRef ref)
{
    return rankOf(ref.type) * rowsPerRank + ref.id * typesPerId + std::int64_t(ref.type);
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

/// Empty for a number that `rowNumber` would not give.
std::optional<RecordRef> refOf(std::int64_t number)
{
    const auto type = std::size_t(number % typesPerId);
    if (number < typesPerId || type >= recordTypeCount)
        return std::nullopt;
    const RecordRef ref{RecordType(type), ageOf(number) / typesPerId};
    return rowNumber(ref) == number ? std::optional(ref) : std::nullopt;
}

/// Texts that nobody would look for.
bool isSearched(const Field &field)
{
    static constexpr std::array<std::string_view, 2> others{"sha256", "currency"};
    return field.type == FieldType::Text &&
           std::find(others.begin(), others.end(), field.name) == others.end();
}

/// The text of a field; nothing when it has none.
std::optional<std::string_view> textOf(const Field &field, const void *record)
{
    const auto value = field.value(record);
    const auto *text = std::get_if<std::string_view>(&value);
    return text ? std::optional(*text) : std::nullopt;
}

/// `leftOut` is a field of the record, or null.
void addTexts(std::string &words, std::span<const Field> fields, const void *from,
              const Field *leftOut = nullptr)
{
    for (const auto &field : fields) {
        if (field.rows) {
            for (std::size_t i = 0; i < field.size(from); ++i)
                addTexts(words, field.rows->fields, field.row(from, i));
        } else if (isSearched(field) && &field != leftOut) {
            if (const auto text = textOf(field, from))
                words.append(words.empty() ? "" : "\n").append(*text);
        }
    }
}

std::string wordsOf(RecordType type, const void *record, const Field *leftOut = nullptr)
{
    std::string words;
    addTexts(words, describe(type).fields, record, leftOut);
    return words;
}

/// The field that a record is called by; null when it has no name.
const Field *titleFieldOf(RecordType type, const void *record)
{
    static constexpr std::array<std::string_view, 8> names{"title", "name",    "item", "what",
                                                           "task",  "caption", "file", "key"};
    for (const auto name : names) {
        const Field *field = describe(type).find(name);
        if (field && textOf(*field, record))
            return field;
    }
    return nullptr;
}

std::string firstLine(std::string text)
{
    constexpr std::size_t longest = 80;
    text.resize(std::min(text.size(), text.find('\n')));
    if (text.size() <= longest)
        return text;
    return std::string(prefixOf(text, longest)) + "…";
}

/// The FTS5 query: each word in quotes, so that nothing in it is an operator, the last one as a
/// prefix.
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

/// What the index holds of a record: each word once, unless the title is cut short.
struct Texts {
    std::string title;
    std::string body;

    friend bool operator==(const Texts &, const Texts &) = default;
};

Texts textsOf(RecordType type, const void *record)
{
    const Field *field = titleFieldOf(type, record);
    const std::string name = field ? std::string(*textOf(*field, record)) : wordsOf(type, record);
    const std::string title = firstLine(name);
    if (title != name)
        return {title, wordsOf(type, record)};
    return {title, field ? wordsOf(type, record, field) : std::string()};
}

} // namespace

std::string titleOf(RecordType type, const void *record)
{
    return textsOf(type, record).title;
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
    const Texts texts = textsOf(ref.type, record);
    insert->bind(1, rowNumber(ref));
    insert->bind(2, texts.title);
    insert->bind(3, texts.body);
    insert->exec();
}

void SearchIndex::forget()
{
    for (KeptStatement *kept : {&m_erase, &m_insert, &m_called, &m_titled})
        kept->reset();
    for (KeptStatement &kept : m_anywhere)
        kept.reset();
}

void SearchIndex::rebuild(const Records &records)
{
    // Deleting row by row would not repair a damaged index.
    const auto made = m_database.text(R"(SELECT "sql" FROM sqlite_schema WHERE "name"='search')");
    forget();
    m_database.run(R"(DROP TABLE "search")");
    m_database.run(made);
    forEachRecord(records, [this](RecordRef ref, const void *record) { put(ref, record); });
}

std::vector<RecordRef> SearchIndex::outOfStep(const Records &records) const
{
    std::map<std::int64_t, Texts> said;
    SQLite::Statement row(m_database.sql(), R"(SELECT rowid,"title","body" FROM "search")");
    while (row.executeStep())
        said[row.getColumn(0).getInt64()] = {row.getColumn(1).getString(),
                                             row.getColumn(2).getString()};
    std::vector<RecordRef> wrong;
    forEachRecord(records, [&](RecordRef ref, const void *record) {
        const auto found = said.find(rowNumber(ref));
        if (found == said.end() || found->second != textsOf(ref.type, record))
            wrong.push_back(ref);
        if (found != said.end())
            said.erase(found);
    });
    for (const auto &[number, texts] : said)
        wrong.push_back(refOf(number).value_or(RecordRef{RecordType::Project, 1}));
    return wrong;
}

std::vector<SearchHit> SearchIndex::at(RecordRef record) const
{
    SQLite::Statement row(m_database.sql(), R"(SELECT "title" FROM "search" WHERE rowid=?)");
    row.bind(1, rowNumber(record));
    if (!row.executeStep())
        return {};
    return {{record, row.getColumn(0).getString(), {}}};
}

std::vector<SearchHit> SearchIndex::called(const std::string &terms, std::string_view title,
                                           std::size_t limit) const
{
    std::vector<SearchHit> hits;
    const StatementUse row(m_called, m_database.sql(),
                           R"(SELECT rowid,"title" FROM "search"
                              WHERE "search" MATCH ? AND rowid>=? AND "title"=? COLLATE NOCASE
                              ORDER BY rowid DESC LIMIT ?)");
    row->bind(1, fmt::format("title : ({})", terms));
    row->bind(2, rowsPerRank);
    row->bind(3, std::string(title));
    row->bind(4, std::int64_t(limit));
    while (row->executeStep()) {
        if (const auto ref = refOf(row->getColumn(0).getInt64()))
            hits.push_back({*ref, row->getColumn(1).getString(), {}});
    }
    return hits;
}

void SearchIndex::addTitled(std::vector<SearchHit> &hits, const std::string &terms,
                            std::size_t limit) const
{
    const std::vector<SearchHit> exact = hits;
    for (SearchHit &hit : titled(terms, limit)) {
        const bool isThere =
            std::ranges::find(exact, hit.record, &SearchHit::record) != exact.end();
        if (!isThere && hits.size() < limit)
            hits.push_back(std::move(hit));
    }
}

std::vector<SearchHit> SearchIndex::titled(const std::string &terms, std::size_t limit) const
{
    std::vector<SearchHit> hits;
    const StatementUse row(m_titled, m_database.sql(),
                           R"(SELECT rowid,"title" FROM "search"
                              WHERE "search" MATCH ? AND rowid>=? ORDER BY rowid DESC LIMIT ?)");
    row->bind(1, fmt::format("title : ({})", terms));
    row->bind(2, rowsPerRank);
    row->bind(3, std::int64_t(limit));
    while (row->executeStep()) {
        if (const auto ref = refOf(row->getColumn(0).getInt64()))
            hits.push_back({*ref, row->getColumn(1).getString(), {}});
    }
    return hits;
}

void SearchIndex::addOthers(std::vector<SearchHit> &hits, const std::string &terms,
                            std::size_t limit) const
{
    if (hits.size() >= limit)
        return;
    std::unordered_set<std::int64_t> isThere;
    for (const auto &hit : hits)
        isThere.insert(rowNumber(hit.record));
    // Rows of one rank come newest first; the newest of all is always that of one of the ranks.
    std::deque<StatementUse> ranks;
    for (std::size_t rank = 0; rank < searchRanks; ++rank) {
        auto &row = ranks.emplace_back(
            m_anywhere[rank], m_database.sql(),
            R"(SELECT rowid,"title",snippet("search",-1,'','','…',12) FROM "search"
               WHERE "search" MATCH ? AND rowid>=? AND rowid<? ORDER BY rowid DESC)");
        row->bind(1, terms);
        row->bind(2, std::int64_t(rank) * rowsPerRank);
        row->bind(3, std::int64_t(rank + 1) * rowsPerRank);
        row->executeStep();
    }
    while (hits.size() < limit) {
        const auto newest = std::ranges::max_element(ranks, {}, [](const StatementUse &row) {
            return row->hasRow() ? ageOf(row->getColumn(0).getInt64()) : -1;
        });
        if (!(*newest)->hasRow())
            return;
        const auto number = (*newest)->getColumn(0).getInt64();
        if (const auto ref = refOf(number); ref && !isThere.contains(number))
            hits.push_back(
                {*ref, (*newest)->getColumn(1).getString(), (*newest)->getColumn(2).getString()});
        (*newest)->executeStep();
    }
}

std::vector<SearchHit> SearchIndex::search(std::string_view text, std::size_t limit) const
{
    const auto words = text.substr(std::min(text.size(), text.find_first_not_of(" \t\r\n")));
    const auto typed = words.substr(0, words.find_last_not_of(" \t\r\n") + 1);
    if (const auto pointed = readPointer(typed))
        return at(*pointed);
    const auto terms = expression(text);
    if (terms.empty())
        return {};
    limit = std::min<std::size_t>(limit, 100'000);
    // Without the star by which its last word is only a beginning.
    auto hits = called(terms.substr(0, terms.size() - 1), typed, limit);
    addTitled(hits, terms, limit);
    addOthers(hits, terms, limit);
    return hits;
}

} // namespace lastrivet::storage
