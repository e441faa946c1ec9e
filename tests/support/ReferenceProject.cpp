// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ReferenceProject.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/records/Description.h"
#include "tests/support/ReferenceLoad.h"

namespace lastrivet::test {

std::unique_ptr<Project> makeEmptyProject(const std::filesystem::path &folder, const Clock &clock)
{
    ProjectFacts facts;
    facts.name = "Load";
    facts.profile = "plain";
    return Project::create(folder, facts, ProfileLibrary::standard().profile("plain"),
                           {&clock, {}, false});
}

void takeIn(Project &project, const Records &records)
{
    const auto taken = project.change(
        "Reference load",
        [&](Edit &edit) {
            for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
                const auto &table = records.table(RecordType(i));
                for (std::int64_t id = 0; const void *record = table.nextAny(id);) {
                    id = idOf(describe(RecordType(i)), record);
                    edit.putAny(RecordType(i), record);
                }
            }
            ProjectFacts facts = edit.records().project;
            facts.builder_id = records.project.builder_id;
            edit.put(facts);
        },
        ChangeKind::Import);
    if (!taken)
        throw Fault(english(taken.reason()));
}

std::unique_ptr<Project> makeReferenceProject(const std::filesystem::path &folder,
                                              const Clock &clock, std::size_t factor)
{
    ProjectBuilder load;
    fillReferenceLoad(load, 1, LoadSize{}.times(factor));
    auto project = makeEmptyProject(folder, clock);
    takeIn(*project, load.records);
    return project;
}

} // namespace lastrivet::test
