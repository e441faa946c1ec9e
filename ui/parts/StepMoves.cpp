// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/StepMoves.h"

#include "core/project/acts/WorkActs.h"
#include "core/steps/StepOrder.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <algorithm>

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
    std::vector<Id<Step>> moved;
    for (const RecordRef &step : steps)
        moved.push_back(Id<Step>{step.id});
    if (moved.empty())
        return;
    const auto records = session.records();
    const auto order = steps::stepsOf(*records, records->find(moved.front())->component_id);
    const auto placeOf = [&](Id<Step> step) { return std::ranges::find(order, step); };
    if (by < 0) {
        const auto first = placeOf(moved.front());
        if (first != order.begin() && first != order.end())
            moveStepsByPerson(session, moved, *(first - 1));
        return;
    }
    const auto last = placeOf(moved.back());
    if (last == order.end() || last + 1 == order.end())
        return;
    moveStepsByPerson(session, moved, last + 2 == order.end() ? Id<Step>{} : *(last + 2));
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
