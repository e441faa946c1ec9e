// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ReferenceLoad.h"

#include <fmt/format.h>

#include <random>

namespace lastrivet::test {

namespace {

class Loader {
public:
    Loader(ProjectBuilder &project, unsigned seed)
        : m_project(project)
        , m_random(seed)
    {
    }

    /// In forests that are alike: ten times the parts are no deeper, and their boxes no fuller.
    void addParts(std::size_t count, std::size_t perForest)
    {
        m_inspector = m_project.person("Inspector", {Role::Inspector});
        for (std::size_t first = 0; first < count; first += perForest)
            addForest(first, std::min(count, first + perForest));
    }

    void addForest(std::size_t first, std::size_t end)
    {
        static constexpr std::size_t perLevel[] = {1, 12, 8, 6, 9};
        for (std::size_t i = first; i < end; ++i) {
            const std::size_t level = i % 9 == 0 ? 1 : 2 + i % 3;
            const std::size_t span = std::max<std::size_t>(1, (i - first) / perLevel[level]);
            Component part;
            part.name = fmt::format("Part {}", i + 1);
            part.code = fmt::format("P{}", i + 1);
            part.kind = level == 1 ? ComponentKind::LiftingSurface : ComponentKind::Part;
            if (i > first && level > 1)
                part.parent_id = m_parts[first + m_random() % span];
            m_parts.push_back(m_project.add(part));
        }
    }

    void addClosings(std::size_t count)
    {
        for (std::size_t i = 0; i < count; ++i) {
            Closing closing;
            closing.component_id = m_parts[2 * i % m_parts.size()];
            closing.encloses = {closing.component_id};
            closing.title = fmt::format("Close box {}", i + 1);
            const bool isClosed = percent(66);
            if (isClosed)
                closing.events = {{lateDay(), {}, m_project.builder, {}, false}};
            const auto id = m_project.add(closing);
            m_closings.push_back(id);
            for (const auto kind : {HoldPointKind::ToolAndDebrisCheck, HoldPointKind::PreCover}) {
                const bool isOwn = kind == HoldPointKind::ToolAndDebrisCheck;
                const auto point = m_project.holdPoint(
                    id, kind, isOwn ? SignerRole::Builder : SignerRole::Inspector);
                if (isClosed || percent(30))
                    m_project.signOff(point, isOwn ? m_project.builder : m_inspector,
                                      middleDay().text());
            }
        }
    }

    void addSteps(std::size_t count)
    {
        Id<Step> previous;
        for (std::size_t i = 0; i < count; ++i) {
            Step step;
            step.component_id = m_parts[i / 4 % m_parts.size()];
            step.position = std::int64_t(i);
            step.title = fmt::format("Step {}: deburr, prime and rivet", i + 1);
            step.estimate_minutes = Minutes{15 + std::int64_t(m_random() % 180)};
            if (i % 4 != 0)
                step.after = {previous};
            if (percent(80))
                step.done_on = earlyDay();
            previous = m_project.add(step);
            m_steps.push_back(previous);
        }
    }

    void addSessions(std::size_t count)
    {
        for (std::size_t i = 0; i < count; ++i) {
            WorkSession session;
            const auto step = m_steps[m_random() % m_steps.size()];
            session.began = *Moment::parse(fmt::format("{}T{:02}:{:02}", earlyDay().text(),
                                                       17 + m_random() % 4, m_random() % 60));
            session.minutes = Minutes{10 + std::int64_t(m_random() % 170)};
            session.step_id = step;
            session.component_id = m_project.records.find(step)->component_id;
            session.kind = percent(70) ? WorkKind::Assembly : WorkKind::Fabrication;
            session.workers = {{m_project.builder, {}, false}};
            session.note = "Fitted, drilled to size and deburred; one hole touched up";
            m_project.add(session);
        }
    }

    void addSquawks(std::size_t count)
    {
        for (std::size_t i = 0; i < count; ++i) {
            Squawk squawk;
            squawk.number = std::to_string(i + 1);
            squawk.component_id = anyPart();
            squawk.title = "Overdriven rivet";
            squawk.found_on = earlyDay();
            squawk.severity = Severity(m_random() % 3);
            squawk.estimate_minutes = Minutes{20};
            if (percent(10))
                squawk.needs_access_to = {anyPart()};
            if (percent(85)) {
                squawk.correction = "Drilled out and replaced";
                squawk.fixed_on = squawk.verified_on = middleDay();
                squawk.verified_by = m_project.builder;
            }
            m_project.add(squawk);
        }
    }

    void addMedia(std::size_t count)
    {
        for (std::size_t i = 0; i < count; ++i) {
            Media media;
            media.file = fmt::format("photos/2025/2025-01-01_0000_part_{:08x}.jpg", i);
            media.sha256 = fmt::format("{:064x}", i);
            media.taken_on = middleDay();
            media.imported_on = media.taken_on;
            media.shows = {Shows::Interior};
            media.links = {{RecordType::Component, anyPart().value()}};
            m_project.add(media);
        }
    }

private:
    bool percent(unsigned of100) { return m_random() % 100 < of100; }
    Id<Component> anyPart() { return m_parts[m_random() % m_parts.size()]; }
    Moment day(int year, unsigned days)
    {
        const auto first = *Moment::ofDay(std::chrono::year{year} / 1 / 1);
        return *first.plusDays(std::int64_t(m_random() % days));
    }
    Moment earlyDay() { return day(2019, 2000); }
    Moment middleDay() { return day(2025, 200); }
    Moment lateDay() { return day(2026, 150); }

    ProjectBuilder &m_project;
    std::mt19937 m_random;
    Id<Person> m_inspector;
    std::vector<Id<Component>> m_parts;
    std::vector<Id<Closing>> m_closings;
    std::vector<Id<Step>> m_steps;
};

} // namespace

LoadSize LoadSize::times(std::size_t factor) const
{
    return {components * factor, closings * factor, steps * factor,
            sessions * factor,   squawks * factor,  media * factor};
}

void fillReferenceLoad(ProjectBuilder &project, unsigned seed, const LoadSize &size)
{
    Loader loader(project, seed);
    loader.addParts(size.components, LoadSize{}.components);
    loader.addClosings(size.closings);
    loader.addSteps(size.steps);
    loader.addSessions(size.sessions);
    loader.addSquawks(size.squawks);
    loader.addMedia(size.media);
}

} // namespace lastrivet::test
