// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/DatabaseCopies.h"

#include "core/base/Error.h"
#include "core/storage/Integrity.h"
#include "core/storage/Journal.h"
#include "core/storage/Opening.h"

#include <SQLiteCpp/Statement.h>

#include <date/date.h>
#include <date/iso_week.h>
#include <fmt/chrono.h>
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <regex>
#include <set>
#include <sstream>

namespace lastrivet::storage {

namespace fs = std::filesystem;
namespace chr = std::chrono;

namespace {

constexpr std::size_t keptDays = 7;
constexpr std::size_t keptWeeks = 4;
constexpr std::size_t keptMonths = 12;
constexpr std::string_view unfinishedCopy = ".records-new.db";

std::optional<DatabaseCopy> copyAt(const fs::path &file)
{
    static const std::regex pattern(R"(records-(\d{8}T\d{6})Z-([0-9a-f]{8})\.db)");
    const std::string name = file.filename().string();
    std::smatch parts;
    if (!std::regex_match(name, parts, pattern))
        return std::nullopt;
    std::istringstream time(parts[1].str());
    date::sys_seconds made;
    if (!(time >> date::parse("%Y%m%dT%H%M%S", made)))
        return std::nullopt;
    return DatabaseCopy{file, chr::sys_seconds(made.time_since_epoch()), parts[2].str()};
}

date::sys_days dayOf(const DatabaseCopy &copy)
{
    return date::floor<date::days>(date::sys_seconds(copy.made.time_since_epoch()));
}

int weekOf(const DatabaseCopy &copy)
{
    const iso_week::year_weeknum_weekday week{dayOf(copy)};
    return int(week.year()) * 100 + int(unsigned(week.weeknum()));
}

int monthOf(const DatabaseCopy &copy)
{
    const date::year_month_day day{dayOf(copy)};
    return int(day.year()) * 100 + int(unsigned(day.month()));
}

/// Keeps the newest copy of each of the `count` newest spans.
template <class Span>
void keepNewest(const std::vector<DatabaseCopy> &copies, std::size_t count, const Span &spanOf,
                std::set<fs::path> &kept)
{
    std::set<decltype(spanOf(copies.front()))> spans;
    for (const DatabaseCopy &copy : copies) {
        if (spans.size() == count && !spans.contains(spanOf(copy)))
            return;
        if (spans.insert(spanOf(copy)).second)
            kept.insert(copy.file);
    }
}

/// Identifies a state of a database: the number of rows, and the newest change.
struct State {
    std::map<std::string, std::int64_t> rows;
    std::string journal;

    friend bool operator==(const State &, const State &) = default;
};

State stateOf(Database &database)
{
    State state;
    SQLite::Statement table(database.sql(), R"(SELECT replace("name",'"','""') FROM "sqlite_schema"
        WHERE "type"='table' AND "name" NOT LIKE 'sqlite\_%' ESCAPE '\'
        AND "sql" NOT LIKE 'CREATE VIRTUAL%' ORDER BY "name")");
    while (table.executeStep()) {
        const std::string name = table.getColumn(0).getString();
        state.rows[name] = database.number(fmt::format(R"(SELECT count(*) FROM "{}")", name));
    }
    state.journal = Journal(database).newestHash();
    return state;
}

void requireState(const fs::path &copied, const State &state)
{
    Database copy(copied, Database::Access::Immutable, Database::Safety::RollbackJournal);
    if (!damagesOf(copy).empty() || stateOf(copy) != state)
        throw NotSaved(Message{"The copy {0} does not read back as it was written; it was removed.",
                               {copied.string()}});
}

/// Copies, and compares the copy unless another program wrote in between.
bool copyUndisturbed(Database &database, const fs::path &to)
{
    const auto before = database.number("PRAGMA data_version");
    const State state = stateOf(database);
    copyDatabase(database, to);
    if (database.number("PRAGMA data_version") != before)
        return false;
    requireState(to, state);
    return true;
}

/// The name of a copy made at this time.
std::string copyName(Database &database, chr::sys_seconds made)
{
    return fmt::format("records-{:%Y%m%dT%H%M%S}Z-{}.db",
                       fmt::gmtime(chr::system_clock::to_time_t(made)),
                       Journal(database).newestHash().substr(0, 8));
}

/// The second of a new copy. Copies made within a second have to keep their order, so it is behind
/// the newest, unless a clock that went wrong dated that far ahead.
chr::sys_seconds timeFor(const std::vector<DatabaseCopy> &known,
                         chr::sys_time<chr::milliseconds> now)
{
    constexpr auto wrongClock = chr::minutes(1);
    auto at = chr::floor<chr::seconds>(now);
    if (!known.empty() && known.front().made >= at && known.front().made - at < wrongClock)
        at = known.front().made + chr::seconds(1);
    while (std::any_of(known.begin(), known.end(),
                       [&](const DatabaseCopy &copy) { return copy.made == at; }))
        at += chr::seconds(1);
    return at;
}

} // namespace

std::vector<DatabaseCopy> databaseCopies(const fs::path &folder)
{
    std::vector<DatabaseCopy> copies;
    std::error_code failure;
    for (fs::directory_iterator at(folder, failure), end; !failure && at != end;
         at.increment(failure)) {
        if (auto copy = copyAt(at->path()))
            copies.push_back(std::move(*copy));
    }
    std::sort(copies.begin(), copies.end(), [](const DatabaseCopy &a, const DatabaseCopy &b) {
        return std::pair(a.made, a.file) > std::pair(b.made, b.file);
    });
    return copies;
}

std::vector<DatabaseCopy> superfluousCopies(const std::vector<DatabaseCopy> &copies)
{
    std::set<fs::path> kept;
    keepNewest(copies, keptDays, dayOf, kept);
    keepNewest(copies, keptWeeks, weekOf, kept);
    keepNewest(copies, keptMonths, monthOf, kept);
    std::vector<DatabaseCopy> dropped;
    std::copy_if(copies.begin(), copies.end(), std::back_inserter(dropped),
                 [&](const DatabaseCopy &copy) { return !kept.contains(copy.file); });
    return dropped;
}

void copyVerified(Database &database, const fs::path &to)
{
    constexpr int tries = 20;
    try {
        for (int i = 0; i < tries; ++i) {
            if (copyUndisturbed(database, to))
                return;
            fs::remove(to);
        }
        throw NotSaved("Another program keeps writing to the project; try again later.");
    } catch (...) {
        std::error_code none;
        fs::remove(to, none);
        throw;
    }
}

std::optional<DatabaseCopy> addDatabaseCopy(Database &database, const fs::path &folder,
                                            chr::sys_time<chr::milliseconds> now)
{
    return withFaults([&]() -> std::optional<DatabaseCopy> {
        const auto known = databaseCopies(folder);
        if (!known.empty() && known.front().journal == Journal(database).newestHash().substr(0, 8))
            return std::nullopt;
        fs::create_directories(folder);
        const fs::path file = folder / copyName(database, timeFor(known, now));
        const fs::path unfinished = folder / unfinishedCopy;
        fs::remove(unfinished);
        copyVerified(database, unfinished);
        fs::rename(unfinished, file);
        syncFolder(folder);
        // After the clock was set back the new copy is older than others of its day.
        for (const DatabaseCopy &copy : superfluousCopies(databaseCopies(folder))) {
            if (copy.file != file)
                fs::remove(copy.file);
        }
        return copyAt(file);
    });
}

} // namespace lastrivet::storage
