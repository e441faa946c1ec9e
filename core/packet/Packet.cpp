// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Packet.h"

#include <algorithm>
#include <array>
#include <optional>

namespace lastrivet::packet {

namespace {

using readiness::State;

Message titleOf(const std::vector<Standing> &standings)
{
    if (standings.size() == 1)
        return {"Inspection packet: {0}", {standings.front().title}};
    return {"Inspection packet: {0} closings", {std::to_string(standings.size())}};
}

/// Where it stands among those that ask for attention, as on the badge of a part: what was not
/// begun must stay open, but calls for nothing yet.
int urgencyOf(const Standing &standing)
{
    constexpr std::array<std::optional<State>, 7> worstFirst{
        State::ClosedEarly, State::Hold,  State::ReadyToInspect, State::ReadyToSign,
        std::nullopt,       State::Clear, State::Closed};
    const std::optional<State> state =
        standing.begun ? std::optional(standing.state) : std::nullopt;
    return int(std::find(worstFirst.begin(), worstFirst.end(), state) - worstFirst.begin());
}
} // namespace

Packet packetFor(const Records &records, const Profile &profile, const readiness::Answer &answer,
                 const IdSet<Closing> &chosen)
{
    const Region region(records, answer, chosen);
    std::vector<Standing> standings = packet::standings(region, profile);
    std::vector<Photo> photos = packet::photos(region);
    const auto worst = std::ranges::min_element(standings, {}, urgencyOf);
    const int sheetsFrom = int(photos.size()) + 1;
    return {.title = titleOf(standings),
            .state = worst == standings.end() ? State::Hold : worst->state,
            .begun = worst == standings.end() || worst->begun,
            .as_of = answer.as_of,
            .front = frontPages(region, profile, answer),
            .standings = standings,
            .within = standingsWithin(region, answer),
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
