// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/CameraClock.h"

#include <catch2/catch.hpp>

namespace lastrivet::evidence {

TEST_CASE("Photos dated ahead, or years before the project, tell of a camera's clock")
{
    Records records;
    records.project.started_on = Moment::parse("2024-04-13");
    std::vector<Id<Media>> taken;
    for (const char *when : {"2026-03-14T16:10", "2026-03-15T09:00", "2026-03-16T09:00",
                             "2023-01-01T00:00", "1980-01-01T00:00", ""}) {
        Media media;
        media.id = Id<Media>{std::int64_t(taken.size()) + 1};
        media.taken_on = Moment::parse(when);
        records.media.put(media);
        taken.push_back(media.id);
    }
    const Moment today = *Moment::parse("2026-03-14");
    // Tomorrow's may be of another zone, and a kit may be years older than the project.
    CHECK(datedWrongly(records, taken, today) == 2);
    CHECK(datedWrongly(records, {taken[0], taken[1], taken[3], taken[5]}, today) == 0);
    records.project.started_on.reset();
    CHECK(datedWrongly(records, taken, today) == 1);
    CHECK(datedWrongly(records, {Id<Media>{99}}, today) == 0);
}

} // namespace lastrivet::evidence
