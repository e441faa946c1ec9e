// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/SessionMatcher.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace lastrivet;
using namespace lastrivet::evidence;

namespace {

Moment moment(std::string_view text)
{
    return Moment::parse(text).value();
}

WorkSession session(int id, std::string_view began, std::optional<int> minutes)
{
    WorkSession session;
    session.id = Id<WorkSession>{id};
    session.began = moment(began);
    if (minutes)
        session.minutes = Minutes{*minutes};
    return session;
}

Records recordsWith(std::initializer_list<WorkSession> sessions)
{
    Records records;
    for (const WorkSession &each : sessions)
        records.work_sessions.put(each);
    return records;
}

/// The ids in order, those that span the moment as negative numbers.
std::vector<std::int64_t> matches(const Records &records, std::string_view taken)
{
    std::vector<std::int64_t> ids;
    for (const SessionMatch &match : SessionMatcher(records).matches(moment(taken)))
        ids.push_back(match.fit == SessionMatch::Fit::WithinSpan ? -match.session.value()
                                                                 : match.session.value());
    return ids;
}

} // namespace

TEST_CASE("A photo taken within a session's span belongs to it, to the minute at both ends")
{
    const Records records = recordsWith({session(1, "2026-03-14T10:00", 90)});
    CHECK(matches(records, "2026-03-14T10:00") == std::vector<std::int64_t>{-1});
    CHECK(matches(records, "2026-03-14T11:30") == std::vector<std::int64_t>{-1});
    CHECK(matches(records, "2026-03-14T11:31") == std::vector<std::int64_t>{1});
    CHECK(matches(records, "2026-03-14T09:59") == std::vector<std::int64_t>{1});
    CHECK(matches(records, "2026-03-15T10:30").empty());
}

TEST_CASE("A session of a day before 1970 is on its own day, too")
{
    const Records records = recordsWith({session(1, "1965-03-14T10:00", 90)});
    CHECK(matches(records, "1965-03-14T11:00") == std::vector<std::int64_t>{-1});
    CHECK(matches(records, "1965-03-15T11:00").empty());
}

TEST_CASE("Outside every span the nearest session of the day comes first")
{
    const Records records =
        recordsWith({session(1, "2026-03-14T08:00", 60), session(2, "2026-03-14T13:00", 60),
                     session(3, "2026-03-14", std::nullopt)});
    CHECK(matches(records, "2026-03-14T09:30") == std::vector<std::int64_t>{1, 2, 3});
    CHECK(matches(records, "2026-03-14T12:30") == std::vector<std::int64_t>{2, 1, 3});
    CHECK(matches(records, "2026-03-14") == std::vector<std::int64_t>{1, 2, 3});
}

TEST_CASE("Of two sessions that span the moment the shorter one comes first")
{
    const Records records =
        recordsWith({session(1, "2026-03-14T08:00", 300), session(2, "2026-03-14T09:00", 30)});
    CHECK(matches(records, "2026-03-14T09:10") == std::vector<std::int64_t>{-2, -1});
}

TEST_CASE("A session over midnight spans the next day's small hours")
{
    const Records records = recordsWith({session(1, "2026-03-14T22:00", 180)});
    CHECK(matches(records, "2026-03-15T00:30") == std::vector<std::int64_t>{-1});
}

TEST_CASE("Without a trustworthy time only the day counts, and withdrawn sessions never do")
{
    WorkSession about = session(1, "2026-03-14T10:00", 90);
    about.approximate = true;
    WorkSession withdrawn = session(2, "2026-03-14T10:00", 90);
    withdrawn.withdrawn_on = moment("2026-03-20");
    WorkSession undated;
    undated.id = Id<WorkSession>{3};
    const Records records = recordsWith({about, withdrawn, undated});
    CHECK(matches(records, "2026-03-14T10:30") == std::vector<std::int64_t>{1});
}

TEST_CASE("Minutes that no entry can have neither hang the search nor hide the session")
{
    WorkSession endless = session(1, "2026-03-14T10:00", 90);
    endless.minutes = Minutes{std::numeric_limits<std::int64_t>::max()};
    WorkSession backwards = session(2, "2026-03-14T10:00", 90);
    backwards.minutes = Minutes{std::numeric_limits<std::int64_t>::min()};
    const Records records = recordsWith({endless, backwards});
    CHECK(matches(records, "2026-03-14T10:30") == std::vector<std::int64_t>{-1, 2});
    CHECK(matches(records, "2036-03-14T10:30").empty());
}
