// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/IfClosed.h"

#include "core/readiness/Readiness.h"

#include <optional>
#include <utility>

namespace lastrivet::readiness {

ClosingAnswer ifClosed(const Records &records, const Profile &profile, Id<Closing> id, Moment on,
                       Moment asOf)
{
    Records closed = records;
    Closing closing = *records.find(id);
    closing.events.push_back({on, std::nullopt, {}, {}, false});
    closed.closings.put(std::move(closing));
    const Answer answer = readiness(closed, profile, asOf);
    return *answer.closing(id);
}

} // namespace lastrivet::readiness
