// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/WholeReading.h"

#include "core/base/InParallel.h"
#include "core/storage/RecordReader.h"
#include "core/storage/Transaction.h"

#include <SQLiteCpp/Exception.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <optional>
#include <spdlog/spdlog.h>
#include <string>

namespace lastrivet::storage {

namespace {

/// The record types, those with the most records first, so that no thread is left with one at the
/// end.
std::array<RecordType, recordTypeCount> byExpectedSize()
{
    static constexpr std::array many{RecordType::Media, RecordType::WorkSession, RecordType::Step,
                                     RecordType::Squawk};
    std::array<RecordType, recordTypeCount> types{};
    for (std::size_t i = 0; i < recordTypeCount; ++i)
        types[i] = RecordType(i);
    std::ranges::stable_sort(
        types, {}, [](RecordType type) { return std::ranges::find(many, type) - many.begin(); });
    return types;
}

/// Hands out the types, each to one thread.
class Share {
public:
    explicit Share(Records &records)
        : m_records(records)
    {
    }

    /// Reads types until none is left; threads write into different tables.
    void readSome(const Database &database)
    {
        RecordReader reader(database.sql());
        for (std::size_t i = m_next++; i < m_types.size(); i = m_next++)
            reader.read(m_records, m_types[i]);
    }

private:
    Records &m_records;
    const std::array<RecordType, recordTypeCount> m_types = byExpectedSize();
    std::atomic<std::size_t> m_next = 0;
};

std::string newestChange(const Database &database)
{
    return database.text(R"(SELECT "change_id" FROM "journal" ORDER BY "seq" DESC LIMIT 1)");
}

std::int64_t sizeOf(const Database &database)
{
    return database.number("PRAGMA page_count") * database.number("PRAGMA page_size");
}

void help(const Database &own, const std::string &newest, Share &share)
{
    std::optional<Database> second;
    std::optional<ReadTransaction> reading;
    try {
        second.emplace(own.another());
        reading.emplace(*second);
        if (newestChange(*second) != newest)
            return;
    } catch (const SQLite::Exception &exception) {
        spdlog::debug("reading with a second connection: {}", exception.what());
        return;
    }
    share.readSome(*second);
}

} // namespace

Records readWhole(const Database &database, std::int64_t worth)
{
    if (sizeOf(database) < worth)
        return RecordReader(database.sql()).readAll();
    Records records;
    Share share(records);
    const std::string newest = newestChange(database);
    inParallel([&] { help(database, newest, share); }, [&] { share.readSome(database); });
    records.profile_copy = RecordReader(database.sql()).readProfile();
    return records;
}

} // namespace lastrivet::storage
