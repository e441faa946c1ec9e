// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/CreditActs.h"

#include <compare>
#include <set>
#include <vector>

namespace lastrivet::acts {

namespace {

constexpr credit::Tenths untold{.kit = 10};

struct Row {
    std::string section;
    std::string task;

    friend auto operator<=>(const Row &, const Row &) = default;
};

std::vector<Row> missing(const Records &records, const credit::SuggestedTasks &suggested)
{
    std::set<Row> known;
    for (const CreditTask &task : records.credit_tasks) {
        if (!task.withdrawn_on)
            known.insert({task.section, task.task});
    }
    std::vector<Row> rows;
    for (const auto &section : suggested.sections) {
        for (const std::string &title : section.tasks) {
            if (known.insert({section.title, title}).second)
                rows.push_back({section.title, title});
        }
    }
    return rows;
}

} // namespace

std::size_t countMissing(const Records &records, const credit::SuggestedTasks &suggested)
{
    return missing(records, suggested).size();
}

void addTasks(Edit &edit, const credit::SuggestedTasks &suggested)
{
    for (const Row &row : missing(edit.records(), suggested)) {
        CreditTask task;
        task.section = row.section;
        task.task = row.task;
        credit::setTenths(task, untold);
        edit.put(task);
    }
}

Id<CreditTask> addTask(Edit &edit, std::string_view section, std::string_view title)
{
    CreditTask task;
    task.section = section;
    task.task = title;
    task.added = true;
    credit::setTenths(task, untold);
    return edit.put(task);
}

void setTenths(Edit &edit, Id<CreditTask> task, const credit::Tenths &tenths)
{
    edit.update(task, [&](CreditTask &changed) {
        changed.not_applicable = false;
        credit::setTenths(changed, tenths);
    });
}

void setNotApplicable(Edit &edit, Id<CreditTask> task)
{
    edit.update(task, [&](CreditTask &changed) {
        changed.not_applicable = true;
        credit::setTenths(changed, {});
    });
}

} // namespace lastrivet::acts
