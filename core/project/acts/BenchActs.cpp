// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/BenchActs.h"

#include "core/records/LockedByHand.h"

namespace lastrivet::acts {

namespace {

bool isBefore(const std::optional<Moment> &moment, Moment on)
{
    return moment && after(on, *moment);
}

/// What was broken to turn the nut, or was said of another torque, tells nothing about this one.
void forgetTorqueBefore(Fastener &fastener, Moment on)
{
    if (isBefore(fastener.marked_on, on))
        fastener.marked_on.reset();
    if (fastener.torqued_on && isLockedByHand(fastener.locking) && isBefore(fastener.locked_on, on))
        fastener.locked_on.reset();
    if (!isBefore(fastener.accepted_on, on))
        return;
    fastener.accepted_on.reset();
    fastener.accepted_by = {};
    fastener.accepted_basis.clear();
}

} // namespace

std::optional<FastenerAct> nextAct(const Fastener &fastener)
{
    if (fastener.removed_on || fastener.withdrawn_on)
        return std::nullopt;
    if (!fastener.fitted_on)
        return FastenerAct::Fit;
    const bool hasLimit = fastener.torque_min || fastener.torque_max;
    if (hasLimit && !fastener.torqued_on)
        return FastenerAct::Torque;
    if (isLockedByHand(fastener.locking) && !fastener.locked_on)
        return FastenerAct::Lock;
    if (fastener.torqued_on && !fastener.marked_on)
        return FastenerAct::Mark;
    return std::nullopt;
}

void fitFastener(Edit &edit, Id<Fastener> fastener, Moment on)
{
    edit.update(fastener, [on](Fastener &changed) { changed.fitted_on = on; });
}

void torqueFastener(Edit &edit, Id<Fastener> fastener, Moment on, double value)
{
    edit.update(fastener, [on, value](Fastener &changed) {
        forgetTorqueBefore(changed, on);
        changed.torqued_on = on;
        changed.torque_value = value;
    });
}

void lockFastener(Edit &edit, Id<Fastener> fastener, Moment on)
{
    edit.update(fastener, [on](Fastener &changed) { changed.locked_on = on; });
}

void markFastener(Edit &edit, Id<Fastener> fastener, Moment on)
{
    edit.update(fastener, [on](Fastener &changed) { changed.marked_on = on; });
}

void addNote(Edit &edit, Id<Component> part, std::string_view line)
{
    const std::string dated = edit.today().text() + ": " + std::string(line);
    edit.update(part, [&](Component &changed) {
        changed.note += (changed.note.empty() ? "" : "\n") + dated;
    });
}

} // namespace lastrivet::acts
