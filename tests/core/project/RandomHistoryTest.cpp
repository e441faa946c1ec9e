// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Verification.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <map>
#include <random>

using namespace lastrivet;

namespace {

/// Does what people do, at random: most of it sensible, some of it refused.
class RandomBuilder {
public:
    explicit RandomBuilder(unsigned seed)
        : m_random(seed)
    {
    }

    void act(test::TestProject &project)
    {
        const auto choice = below(20);
        if (choice < 5)
            count(project->undo() ? "undone" : "not undone");
        else if (choice < 8)
            count(project->redo() ? "redone" : "not redone");
        else if (choice == 8 && below(8) == 0)
            project->notePrinted("Packet");
        else if (choice == 9)
            reverse(project);
        else
            change(project, below(10) == 0 ? ChangeKind::Automatic : ChangeKind::Change);
    }

    std::map<std::string, int> counts;

private:
    void change(test::TestProject &project, ChangeKind kind)
    {
        const auto result = project->change(
            "Change",
            [this](Edit &edit) {
                for (auto edits = 1 + below(3); edits > 0; --edits)
                    edit_(edit);
            },
            kind);
        count(!result ? "refused" : result->touched.empty() ? "nothing" : "changed");
    }

    void reverse(test::TestProject &project)
    {
        const auto rows = std::int64_t(project->journalLines().size());
        count(project->reverse(1 + below(rows), "Taken back") ? "reversed" : "not reversed");
    }

    void edit_(Edit &edit)
    {
        switch (below(7)) {
        case 0:
            return putPart(edit);
        case 1:
            return putPerson(edit);
        case 2:
            return putStep(edit);
        case 3:
            return putSession(edit);
        case 4:
            return putSquawk(edit);
        case 5:
            return putMedia(edit);
        default:
            return withdrawSomething(edit);
        }
    }

    void putPart(Edit &edit)
    {
        Component part = some(edit.records().components);
        part.name = word();
        part.parent_id = below(2) ? pick(edit.records().components) : Id<Component>{};
        part.zone = below(2) ? word() : "";
        edit.put(part);
    }
    void putPerson(Edit &edit)
    {
        Person person = some(edit.records().people);
        person.name = word();
        person.roles =
            below(2) ? WordSet<Role>{Role::Builder, Role::Helper} : WordSet<Role>{Role::Inspector};
        edit.put(person);
    }
    void putStep(Edit &edit)
    {
        Step step = some(edit.records().steps);
        step.title = word();
        step.component_id = pick(edit.records().components);
        step.after = picks(edit.records().steps);
        step.estimate_minutes = below(2) ? std::optional(Minutes{below(500)}) : std::nullopt;
        edit.put(step);
    }
    void putSession(Edit &edit)
    {
        WorkSession session = some(edit.records().work_sessions);
        session.began = edit.now();
        session.minutes = Minutes{1 + below(300)};
        session.component_id = pick(edit.records().components);
        session.workers.clear();
        for (const auto id : picks(edit.records().people))
            session.workers.insert(session.workers.begin(), {id, {}, below(2) == 0});
        edit.put(session);
    }
    void putSquawk(Edit &edit)
    {
        Squawk squawk = some(edit.records().squawks);
        if (squawk.number.empty())
            squawk.number = nextNumber<Squawk>(edit.records());
        squawk.title = word();
        squawk.found_on = edit.today();
        squawk.needs_access_to = picks(edit.records().components);
        squawk.repair_options.resize(std::size_t(below(4)));
        for (auto &option : squawk.repair_options)
            option = {word(), below(2) ? word() : "", "", below(2) == 0};
        edit.put(squawk);
    }
    void putMedia(Edit &edit)
    {
        Media media = some(edit.records().media);
        media.file = "photos/" + word() + ".jpg";
        media.shows = below(2) ? WordSet<Shows>{Shows::Interior} : WordSet<Shows>{};
        media.annotations.resize(std::size_t(below(3)));
        for (auto &annotation : media.annotations)
            annotation = {AnnotationShape::Circle, {0.1 * double(below(10)), 0.25}, word()};
        media.links.clear();
        for (const auto id : picks(edit.records().components))
            media.links.push_back({RecordType::Component, id.value()});
        edit.put(media);
    }
    void withdrawSomething(Edit &edit)
    {
        if (const auto id = pick(edit.records().components))
            edit.withdraw(id, word());
    }

    /// A record of the table, or a new one.
    template <class Record> Record some(const Table<Record> &table)
    {
        const auto id = below(3) ? Id<Record>{} : pick(table);
        return id ? *table.find(id) : Record{};
    }
    template <class Record> Id<Record> pick(const Table<Record> &table)
    {
        if (table.isEmpty())
            return {};
        return std::next(table.begin(), std::ptrdiff_t(below(std::int64_t(table.size()))))->id;
    }
    template <class Record> IdSet<Record> picks(const Table<Record> &table)
    {
        IdSet<Record> ids;
        for (auto count = below(4); count > 0 && !table.isEmpty(); --count)
            ids.push_back(pick(table));
        std::sort(ids.begin(), ids.end());
        ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
        return ids;
    }
    std::string word() { return "w" + std::to_string(below(40)); }
    std::int64_t below(std::int64_t bound)
    {
        return std::uniform_int_distribution<std::int64_t>(0, bound - 1)(m_random);
    }
    void count(const std::string &what) { ++counts[what]; }

    std::mt19937 m_random;
};

} // namespace

TEST_CASE("After a thousand random changes, undos and redos the snapshot equals a fresh load, and "
          "the journal played from its beginning equals the tables")
{
    test::TestProject project;
    RandomBuilder builder(20260314);
    for (int i = 0; i < 1000; ++i) {
        project.clock().advance(std::chrono::seconds{37});
        builder.act(project);
    }
    // The history must be worth the name.
    CHECK(builder.counts["changed"] > 200);
    CHECK(builder.counts["refused"] > 10);
    CHECK(builder.counts["undone"] > 50);
    CHECK(builder.counts["redone"] > 20);
    CHECK(builder.counts["reversed"] > 5);
    const auto records = project->records();
    CHECK(*project.openAgain()->records() == *records);
    project.reopen();
    CHECK(*project->records() == *records);
    for (const auto &finding : verify(project.folder()).findings) {
        // Nobody took these photos.
        if (finding.what != "file")
            FAIL_CHECK(finding.text);
    }
}
