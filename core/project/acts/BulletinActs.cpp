// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/BulletinActs.h"

#include "core/base/SortedIds.h"

namespace lastrivet::acts {

Id<Bulletin> addBulletin(Edit &edit, Id<Component> part, std::string_view title)
{
    Bulletin bulletin;
    bulletin.number = nextNumber<Bulletin>(edit.records());
    if (part)
        bulletin.component_ids = {part};
    bulletin.title = title;
    bulletin.received_on = edit.today();
    return edit.put(std::move(bulletin));
}

void setApplies(Edit &edit, Id<Bulletin> bulletin, bool applies, std::string_view basis)
{
    edit.update(bulletin, [&](Bulletin &changed) {
        changed.applies = applies;
        if (!basis.empty())
            changed.basis = basis;
    });
}

void comply(Edit &edit, Id<Bulletin> bulletin, Moment on, std::string_view basis)
{
    edit.update(bulletin, [&](Bulletin &changed) {
        changed.applies = true;
        changed.complied_on = on;
        changed.basis = basis;
    });
}

void attach(Edit &edit, Id<Bulletin> bulletin, Id<Media> paper)
{
    edit.update(bulletin, [&](Bulletin &changed) { insertSorted(changed.media_ids, paper); });
}

} // namespace lastrivet::acts
