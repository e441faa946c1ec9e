// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/MajorPortion.h"

#include "core/credit/TaskEvidence.h"

#include <algorithm>
#include <map>

namespace lastrivet::packet {

namespace {

class Gathering {
public:
    Gathering(const Records &records, MajorPortion &form)
        : m_records(records)
        , m_evidence(records)
        , m_form(form)
    {
    }

    void add(const CreditTask &task)
    {
        MajorPortion::Task row{.section = task.section,
                               .title = task.task,
                               .is_added = task.added,
                               .is_not_applicable = task.not_applicable,
                               .tenths = credit::tenthsOf(task),
                               .ticks = credit::halfTicksOf(task),
                               .note = task.note};
        const credit::TaskEvidence evidence = m_evidence.of(task);
        for (const Id<Media> id : evidence.pictures)
            row.pictures.push_back(numberOf(id));
        row.sessions = std::int64_t(evidence.sessions.size());
        row.minutes = evidence.minutes;
        if (!evidence.sessions.empty()) {
            row.first_work = m_records.find(evidence.sessions.front())->began;
            row.last_work = m_records.find(evidence.sessions.back())->began;
        }
        std::ranges::sort(row.pictures);
        m_form.tasks.push_back(std::move(row));
    }

private:
    int numberOf(Id<Media> id)
    {
        const auto [known, isNew] = m_numbers.try_emplace(id, int(m_numbers.size()) + 1);
        if (isNew) {
            const Media &media = *m_records.find(id);
            m_form.pictures.push_back(
                {photoOf(m_records, media, known->second), media.kind == MediaKind::Video});
        }
        return known->second;
    }

    const Records &m_records;
    credit::EvidenceFinder m_evidence;
    MajorPortion &m_form;
    std::map<Id<Media>, int> m_numbers;
};

} // namespace

MajorPortion majorPortion(const Records &records, const Profile &profile, Moment asOf)
{
    MajorPortion form{.as_of = asOf};
    form.aircraft = aircraftOf(records, profile);
    form.account = credit::account(records, profile);
    form.cautions = profile.cautions;
    for (const Profile::CreditRule &rule : profile.credit.rules)
        form.rules.push_back({rule.text, profile.citation(rule.source, rule.mark)});
    std::map<std::string, int> order;
    std::vector<const CreditTask *> tasks;
    for (const CreditTask &task : records.credit_tasks) {
        if (task.withdrawn_on)
            continue;
        order.try_emplace(task.section, int(order.size()));
        tasks.push_back(&task);
    }
    std::ranges::stable_sort(tasks, {},
                             [&](const CreditTask *task) { return order.at(task->section); });
    Gathering gathering(records, form);
    for (const CreditTask *task : tasks)
        gathering.add(*task);
    return form;
}

} // namespace lastrivet::packet
