// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartMoves.h"

#include "core/project/acts/PartActs.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <algorithm>

namespace lastrivet::ui {

namespace {

struct Place {
    Id<Component> parent;
    std::vector<Id<Component>> neighbours;
    std::ptrdiff_t row = 0;
};

Place placeOf(const Records &records, Id<Component> part)
{
    Place place;
    place.parent = records.find(part)->parent_id;
    place.neighbours = acts::partsInside(records, place.parent);
    place.row = std::ranges::find(place.neighbours, part) - place.neighbours.begin();
    return place;
}

QString labelFor(const Records &records, const std::vector<Id<Component>> &parts,
                 Id<Component> parent)
{
    const QString name =
        parts.size() == 1
            ? partName(records, parts.front())
            : QCoreApplication::translate("PartMoves", "%n parts", nullptr, int(parts.size()));
    return parent ? QCoreApplication::translate("PartMoves", "%1 moved to %2")
                        .arg(name, partName(records, parent))
                  : QCoreApplication::translate("PartMoves", "%1 moved to the top").arg(name);
}

} // namespace

void moveByPerson(Session &session, Id<Component> part, Id<Component> parent, std::size_t row)
{
    session.change(labelFor(*session.records(), {part}, parent),
                   [&](Edit &edit) { acts::movePart(edit, part, parent, row); });
}

bool moveSeveral(Session &session, const std::vector<Id<Component>> &parts, Id<Component> parent,
                 Id<Component> before)
{
    return session.change(labelFor(*session.records(), parts, parent),
                          [&](Edit &edit) { acts::moveParts(edit, parts, parent, before); });
}

bool canMoveAmong(const Session &session, Id<Component> part, int by)
{
    const Place place = placeOf(*session.records(), part);
    const std::ptrdiff_t row = place.row + by;
    return row >= 0 && row < std::ssize(place.neighbours);
}

bool canMoveInto(const Session &session, Id<Component> part)
{
    return placeOf(*session.records(), part).row > 0;
}

bool canMoveOut(const Session &session, Id<Component> part)
{
    return bool(placeOf(*session.records(), part).parent);
}

void moveAmong(Session &session, Id<Component> part, int by)
{
    const Place place = placeOf(*session.records(), part);
    if (canMoveAmong(session, part, by))
        moveByPerson(session, part, place.parent, std::size_t(place.row + by));
}

void moveInto(Session &session, Id<Component> part)
{
    const Place place = placeOf(*session.records(), part);
    if (canMoveInto(session, part))
        moveByPerson(session, part, place.neighbours[std::size_t(place.row) - 1], std::size_t(-1));
}

void moveOut(Session &session, Id<Component> part)
{
    const Place place = placeOf(*session.records(), part);
    if (!canMoveOut(session, part))
        return;
    const Place above = placeOf(*session.records(), place.parent);
    moveByPerson(session, part, above.parent, std::size_t(above.row) + 1);
}

} // namespace lastrivet::ui
