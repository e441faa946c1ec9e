// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ProjectBuilder.h"

#include <stdexcept>
#include <string>

namespace lastrivet::test {

Moment on(std::string_view text)
{
    const auto moment = Moment::parse(text);
    if (!moment)
        throw std::invalid_argument("no moment: " + std::string(text));
    return *moment;
}

ProjectBuilder::ProjectBuilder()
{
    profile.id = "plain";
    profile.late_acceptance_by = {SignerRole::Builder, SignerRole::Adviser, SignerRole::Inspector};
    records.project.name = "Two-seater";
    records.project.profile = "plain";
    builder = person("Ada Plank", {Role::Builder});
    records.project.builder_id = builder;
}

Id<Person> ProjectBuilder::person(std::string_view name, WordSet<Role> roles)
{
    return add(Person{.name = std::string(name), .roles = roles});
}

Id<Component> ProjectBuilder::part(std::string_view name, Id<Component> inside)
{
    return add(Component{.parent_id = inside, .name = std::string(name)});
}

Id<Step> ProjectBuilder::step(Id<Component> part, std::string_view title, IdSet<Step> after)
{
    return add(Step{.component_id = part, .title = std::string(title), .after = std::move(after)});
}

Id<WorkSession> ProjectBuilder::session(Id<Component> part, std::string_view began,
                                        std::int64_t minutes)
{
    return add(WorkSession{.began = on(began),
                           .minutes = Minutes{minutes},
                           .component_id = part,
                           .workers = {{builder}}});
}

Id<Closing> ProjectBuilder::closing(Id<Component> part, IdSet<Component> encloses)
{
    if (encloses.empty())
        encloses = {part};
    return add(Closing{.component_id = part,
                       .title = "Skin on " + records.find(part)->name,
                       .encloses = std::move(encloses)});
}

Id<HoldPoint> ProjectBuilder::holdPoint(Id<Closing> closing, HoldPointKind kind, SignerRole signer)
{
    return add(HoldPoint{.closing_id = closing, .kind = kind, .signer_role = signer});
}

Id<SignOff> ProjectBuilder::signOff(Id<HoldPoint> point, Id<Person> person,
                                    std::string_view signedOn)
{
    return add(SignOff{.hold_point_id = point, .person_id = person, .signed_on = on(signedOn)});
}

Id<Squawk> ProjectBuilder::squawk(Id<Component> part, std::string_view foundOn)
{
    return add(Squawk{.number = std::to_string(records.squawks.size() + 1),
                      .component_id = part,
                      .title = "Overdriven rivet",
                      .found_on = on(foundOn)});
}

Id<Deviation> ProjectBuilder::deviation(Id<Component> part, std::string_view raisedOn)
{
    return add(Deviation{.number = std::to_string(records.deviations.size() + 1),
                         .component_ids = {part},
                         .title = "Longer bolt",
                         .raised_on = on(raisedOn)});
}

Id<Bulletin> ProjectBuilder::bulletin(Id<Component> part, std::string_view receivedOn)
{
    return add(Bulletin{.number = std::to_string(records.bulletins.size() + 1),
                        .title = "Look at the hinge",
                        .received_on = on(receivedOn),
                        .component_ids = {part}});
}

Id<Fastener> ProjectBuilder::fastener(Id<Component> part, std::string_view place)
{
    return add(Fastener{.component_id = part, .place = std::string(place)});
}

Id<Measurement> ProjectBuilder::measurement(Id<Component> part, std::string_view what)
{
    return add(Measurement{.component_id = part, .what = std::string(what)});
}

Id<MaterialUse> ProjectBuilder::materialUse(Id<Component> part, Id<MaterialLot> lot,
                                            std::string_view usedOn)
{
    return add(MaterialUse{.lot_ids = {lot}, .component_id = part, .used_on = on(usedOn)});
}

Id<MaterialLot> ProjectBuilder::lot(std::string_view name)
{
    return add(MaterialLot{.name = std::string(name)});
}

Id<PartLine> ProjectBuilder::partLine(Id<Component> part, std::string_view name,
                                      std::int64_t quantity)
{
    return add(PartLine{.component_id = part, .name = std::string(name), .quantity = quantity});
}

Id<Media> ProjectBuilder::photo(std::string_view takenOn, std::initializer_list<Media::Link> links)
{
    const Moment taken = on(takenOn);
    return add(Media{.kind = MediaKind::Photo,
                     .file = "photos/" + std::to_string(m_lastId + 1) + ".jpg",
                     .taken_on = taken,
                     .links = links});
}

} // namespace lastrivet::test
