// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RandomBuild.h"

#include <fmt/format.h>

namespace lastrivet::test {

RandomBuild::RandomBuild(unsigned seed)
    : m_random(seed)
{
    profile.interior_photos = 1;
    addParts();
    addClosings();
    addWork();
    addPapers();
}

Moment RandomBuild::anyMoment()
{
    const auto day = fmt::format("2026-03-{:02}", 1 + m_random() % 14);
    return on(chance(40) ? day + fmt::format("T{:02}:00", 8 + m_random() % 12) : day);
}

void RandomBuild::addParts()
{
    for (int i = 0; i < 12; ++i)
        parts.push_back(part("Part", parts.empty() || chance(20) ? Id<Component>{} : any(parts)));
}

void RandomBuild::addClosings()
{
    for (int i = 0; i < 6; ++i) {
        const auto box = closing(any(parts), {any(parts)});
        closings.push_back(box);
        if (chance(40))
            change(box, [&](Closing &c) { c.events = {{anyMoment(), {}, {}, "Riveted", false}}; });
        const auto tools = holdPoint(box, HoldPointKind::ToolAndDebrisCheck, SignerRole::Builder);
        const auto cover = holdPoint(box, HoldPointKind::PreCover, SignerRole::Inspector);
        for (const auto point : {tools, cover}) {
            if (chance(60))
                signOff(point, builder, anyMoment().text());
        }
    }
}

void RandomBuild::addWork()
{
    for (int i = 0; i < 16; ++i) {
        const auto made =
            step(any(parts), "Step", steps.empty() ? IdSet<Step>{} : IdSet<Step>{any(steps)});
        steps.push_back(made);
        change(made, [&](Step &s) {
            if (chance(50))
                s.done_on = anyMoment();
            if (chance(15))
                s.closes = any(closings);
            if (chance(15))
                s.may_follow = {any(closings)};
        });
        session(any(parts), anyMoment().text(), 30);
        const auto bolt = fastener(any(parts), "Row");
        change(bolt, [&](Fastener &f) {
            f.torque_min = 20;
            if (chance(70))
                f.fitted_on = anyMoment();
        });
    }
    for (int i = 0; i < 8; ++i)
        photo(anyMoment().text(), {{RecordType::Component, any(parts).value()}});
}

void RandomBuild::addPapers()
{
    for (int i = 0; i < 8; ++i) {
        const auto found = squawk(any(parts), anyMoment().text());
        change(found, [&](Squawk &s) {
            if (chance(30))
                s.needs_access_to = {any(parts)};
            if (chance(30))
                s.fixed_on = anyMoment();
        });
        if (chance(30))
            deviation(any(parts), anyMoment().text());
    }
}

} // namespace lastrivet::test
