// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Packet.h"

#include <algorithm>
#include <array>

namespace lastrivet::packet {

namespace {

using readiness::State;

Message titleOf(const std::vector<Standing> &standings)
{
    if (standings.size() == 1)
        return {"Inspection packet: {0}", {standings.front().title}};
    return {"Inspection packet: {0} closings", {std::to_string(standings.size())}};
}

/// The state that most asks for attention, as on the badge of a part.
State worstOf(const std::vector<Standing> &standings)
{
    constexpr std::array worstFirst{State::ClosedEarly,    State::Hold,  State::ReadyToInspect,
                                    State::ReadyToSign, State::Clear, State::Closed};
    for (const State state : worstFirst) {
        if (std::any_of(standings.begin(), standings.end(),
                        [state](const Standing &standing) { return standing.state == state; }))
            return state;
    }
    return State::Hold;
}

} // namespace

Packet packetFor(const Records &records, const Profile &profile, const readiness::Answer &answer,
                 const IdSet<Closing> &chosen)
{
    const Region region(records, answer, chosen);
    std::vector<Standing> standings = packet::standings(region, profile);
    std::vector<Photo> photos = packet::photos(region);
    const int sheetsFrom = int(photos.size()) + 1;
    return {.title = titleOf(standings),
            .state = worstOf(standings),
            .as_of = answer.as_of,
            .front = frontPages(region, profile, answer),
            .standings = standings,
            .photos = photos,
            .videos = videos(region),
            .squawks = squawks(region, photos),
            .deviations = deviations(region, photos),
            .bulletins = bulletins(region),
            .fasteners = fasteners(region),
            .measurements = measurements(region),
            .materials = materials(region),
            .tools = tools(region),
            .work = workLog(region),
            .check_lists = checkLists(region, profile),
            .sheets = sheetsToSign(region, standings),
            .signed_sheets = signedSheets(region, sheetsFrom),
            .cautions = profile.cautions};
}

} // namespace lastrivet::packet
