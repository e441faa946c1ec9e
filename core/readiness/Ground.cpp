// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Ground.h"

#include "core/base/InParallel.h"

#include <algorithm>
#include <unordered_set>

namespace lastrivet::readiness {

namespace {

/// Files every live record that names a live part, with its step.
template <class Record>
void fileByStep(const Ground &ground, const Table<Record> &table, ByPlace<OfStep<Record>> &filed)
{
    for (const Record &record : table) {
        if (!isLive(record))
            continue;
        if (const auto place = ground.tree.placeOf(record.component_id))
            filed.add(*place, {&record, ground.records.findLive(record.step_id)});
    }
    filed.seal(ground.tree.size());
}

/// Files deviations or bulletins under each of their parts.
template <class Paper>
void filePaper(const PartTree &tree, const Table<Paper> &table, ByPlace<const Paper *> &filed,
               std::vector<const Paper *> &withoutPlace)
{
    for (const Paper &paper : table) {
        if (!isLive(paper))
            continue;
        if (paper.component_ids.empty())
            withoutPlace.push_back(&paper);
        for (const auto id : paper.component_ids) {
            if (const auto place = tree.placeOf(id))
                filed.add(*place, &paper);
        }
    }
    filed.seal(tree.size());
}

} // namespace

Ground::Ground(const Records &all)
    : records(all)
    , tree(all.components)
{
    fileClosings();
    inParallel(
        [this] {
            filePictures();
            fileWork();
        },
        [this] {
            fileSteps();
            fileSessions();
            fileSquawks();
            filePapers();
            fileHoldPoints();
            findInner();
        });
}

void Ground::fileClosings()
{
    for (const Closing &closing : records.closings) {
        if (!isLive(closing))
            continue;
        ClosingGround ground;
        ground.closing = &closing;
        ground.isAircraft = closing.scope == ClosingScope::Aircraft;
        ground.above = tree.above(closing.encloses);
        if (!ground.isAircraft)
            ground.reach = tree.subtrees(closing.encloses);
        else if (tree.size() > 0)
            ground.reach = {tree.everything()};
        closings.push_back(std::move(ground));
    }
}

void Ground::fileSteps()
{
    for (const Step &step : records.steps) {
        if (!isLive(step))
            continue;
        if (const auto place = tree.placeOf(step.component_id))
            steps.add(*place, &step);
        if (const auto closing = closingIndex(step.closes))
            closings[*closing].closing_steps.push_back(&step);
    }
    steps.seal(tree.size());
}

void Ground::fileSquawks()
{
    for (const Squawk &squawk : records.squawks) {
        if (!isLive(squawk))
            continue;
        if (squawk.inspection_id)
            m_hasFindings[squawk.inspection_id.value()] = true;
        if (const auto place = tree.placeOf(squawk.component_id))
            squawks.add(*place, &squawk);
        else if (!squawk.component_id)
            squawks_without_place.push_back(&squawk);
        for (const auto part : squawk.needs_access_to) {
            if (const auto place = tree.placeOf(part))
                access.add(*place, &squawk);
        }
    }
    squawks.seal(tree.size());
    access.seal(tree.size());
}

void Ground::filePapers()
{
    filePaper(tree, records.deviations, deviations, deviations_without_place);
    filePaper(tree, records.bulletins, bulletins, bulletins_without_place);
}

void Ground::fileSessions()
{
    std::unordered_set<std::int64_t> closingSteps;
    for (const ClosingGround &closing : closings) {
        for (const Step *step : closing.closing_steps)
            closingSteps.insert(step->id.value());
    }
    for (const WorkSession &session : records.work_sessions) {
        if (!isLive(session))
            continue;
        if (closingSteps.contains(session.step_id.value()))
            m_closingWork.add(session.step_id, &session);
        const auto place = tree.placeOf(session.component_id);
        if (place && session.began)
            sessions.add(*place, {&session, session.began, endOf(session)});
    }
    sessions.seal(tree.size());
    m_closingWork.seal();
}

void Ground::fileWork()
{
    fileByStep(*this, records.fasteners, fasteners);
    fileByStep(*this, records.measurements, measurements);
    fileByStep(*this, records.part_lines, part_lines);
    fileByStep(*this, records.material_uses, material_uses);
    for (const Measurement &measurement : records.measurements) {
        if (isLive(measurement))
            m_repeats[{measurement.component_id.value(), measurement.what}].push_back(
                {&measurement, records.findLive(measurement.step_id)});
    }
}

void Ground::fileHoldPoints()
{
    for (const HoldPoint &point : records.hold_points) {
        if (const auto closing = closingIndex(point.closing_id); closing && isLive(point))
            closings[*closing].hold_points.push_back(&point);
    }
    for (const Check &check : records.checks) {
        if (const auto closing = closingIndex(check.closing_id); closing && isLive(check))
            closings[*closing].checks.push_back(&check);
    }
    for (const SignOff &signOff : records.sign_offs) {
        if (isLive(signOff) && signOff.hold_point_id)
            m_signOffs.add(signOff.hold_point_id, &signOff);
    }
    m_signOffs.seal();
}

void Ground::findInner()
{
    ByPlace<std::size_t> boxes;
    for (std::size_t i = 0; i < closings.size(); ++i) {
        const Closing &closing = *closings[i].closing;
        const auto place = tree.placeOf(closing.component_id);
        if (place && closing.permanent && closing.scope == ClosingScope::Region)
            boxes.add(*place, i);
    }
    boxes.seal(tree.size());
    for (std::size_t i = 0; i < closings.size(); ++i) {
        ClosingGround &outer = closings[i];
        for (const Stretch &stretch : outer.reach) {
            for (const std::size_t k : boxes.in(stretch)) {
                if (k != i && closings[k].closing->component_id != outer.closing->component_id)
                    outer.inner.push_back(k);
            }
        }
        std::sort(outer.inner.begin(), outer.inner.end());
    }
}

std::optional<std::size_t> Ground::closingIndex(Id<Closing> id) const
{
    const auto found = firstNotBelow(closings.size(), id.value(), [this](std::size_t i) {
        return closings[i].closing->id.value();
    });
    if (found == closings.size() || closings[found].closing->id != id)
        return std::nullopt;
    return found;
}

std::span<const SignOff *const> Ground::signOffs(Id<HoldPoint> id) const
{
    return m_signOffs.of(id);
}

std::span<const WorkSession *const> Ground::closingWork(Id<Step> id) const
{
    return m_closingWork.of(id);
}

const std::vector<OfStep<Measurement>> &Ground::repeats(const Measurement &measurement) const
{
    return m_repeats.at({measurement.component_id.value(), measurement.what});
}

bool Ground::hasFindings(Id<Inspection> id) const
{
    return m_hasFindings.contains(id.value());
}

Moment endOf(const WorkSession &session)
{
    if (!session.began->hasTime() || !session.minutes)
        return *session.began;
    return session.began->plusMinutes(session.minutes->count()).value_or(*session.began);
}

} // namespace lastrivet::readiness
