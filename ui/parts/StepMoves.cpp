// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/StepMoves.h"

#include "core/project/acts/WorkActs.h"
#include "core/steps/StepOrder.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <algorithm>
#include <optional>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("StepMoves", text);
}

QString nameOf(const Records &records, Id<Step> step)
{
    return shortName(records, {RecordType::Step, step.value()});
}

std::vector<Id<Step>> idsOf(const std::vector<RecordRef> &steps)
{
    std::vector<Id<Step>> ids;
    for (const RecordRef &step : steps)
        ids.push_back(Id<Step>{step.id});
    return ids;
}

/// The step before which those go that are moved one place up or down, no step at the end; empty
/// where they are at that end already.
std::optional<Id<Step>> goalOf(const Records &records, const std::vector<Id<Step>> &moved, int by)
{
    const Step *front = moved.empty() ? nullptr : records.find(moved.front());
    if (!front)
        return std::nullopt;
    const auto order = steps::stepsOf(records, front->component_id);
    const auto placeOf = [&](Id<Step> step) { return std::ranges::find(order, step); };
    if (by < 0) {
        const auto first = placeOf(moved.front());
        return first != order.begin() && first != order.end() ? std::optional(*(first - 1))
                                                              : std::nullopt;
    }
    const auto last = placeOf(moved.back());
    if (last == order.end() || last + 1 == order.end())
        return std::nullopt;
    return last + 2 == order.end() ? Id<Step>{} : *(last + 2);
}

} // namespace

bool moveStepsByPerson(Session &session, const std::vector<Id<Step>> &steps, Id<Step> before)
{
    const auto records = session.records();
    const auto partOf = [&](Id<Step> step) { return records->find(step)->component_id; };
    if (steps.empty())
        return false;
    const auto part = partOf(steps.front());
    const bool isOnePart =
        std::ranges::all_of(steps, [&](Id<Step> step) { return partOf(step) == part; });
    if (!isOnePart || (before && partOf(before) != part)) {
        session.complain(tr("Steps change places within their part only."));
        return false;
    }
    const QString label =
        QCoreApplication::translate("StepMoves", "%n steps moved", nullptr, int(steps.size()));
    return session.change(steps.size() == 1 ? tr("%1: moved").arg(nameOf(*records, steps.front()))
                                            : label,
                          [&](Edit &edit) { acts::moveSteps(edit, steps, before); });
}

void moveStepsByKey(Session &session, const std::vector<RecordRef> &steps, int by)
{
    const auto moved = idsOf(steps);
    if (const auto goal = goalOf(*session.records(), moved, by))
        moveStepsByPerson(session, moved, *goal);
}

bool canMoveByKey(const Records &records, const std::vector<RecordRef> &steps, int by)
{
    return goalOf(records, idsOf(steps), by).has_value();
}

bool orderByPerson(Session &session, Id<Step> earlier, Id<Step> later)
{
    const auto records = session.records();
    if (earlier == later)
        return false;
    const auto way = steps::wayFrom(*records, later, earlier);
    if (!way.empty()) {
        QStringList names;
        for (const Id<Step> step : way)
            names.append(nameOf(*records, step));
        session.complain(tr("%1 cannot come before %2, because it has to wait for it: %3.")
                             .arg(nameOf(*records, earlier), nameOf(*records, later),
                                  names.join(QStringLiteral(" → "))));
        return false;
    }
    return session.change(
        tr("%1 comes after %2").arg(nameOf(*records, later), nameOf(*records, earlier)),
        [&](Edit &edit) {
            edit.update(later, [&](Step &step) {
                const auto place = std::ranges::lower_bound(step.after, earlier);
                if (place == step.after.end() || *place != earlier)
                    step.after.insert(place, earlier);
            });
        });
}

} // namespace lastrivet::ui
