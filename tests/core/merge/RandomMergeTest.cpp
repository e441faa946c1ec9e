// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Verification.h"
#include "tests/support/ProjectCopies.h"
#include "tests/support/RandomBuild.h"
#include "tests/support/RandomEdits.h"

#include <catch2/catch.hpp>

#include <array>
#include <algorithm>

using namespace lastrivet;

namespace {

/// What of a made-up project keeps the rules.
void plant(test::ProjectCopy &project, unsigned seed)
{
    const test::RandomBuild build(seed);
    for (std::size_t type = std::size_t(RecordType::Person); type < recordTypeCount; ++type) {
        const auto &table = build.records.table(RecordType(type));
        const auto &description = describe(RecordType(type));
        for (const void *record = table.nextAny(0); record;
             record = table.nextAny(idOf(description, record)))
            project->change("A beginning",
                            [&](Edit &edit) { edit.putAny(RecordType(type), record); });
    }
    REQUIRE(project->records()->components.size() > 3);
}

void requireSound(test::ProjectCopy &copy)
{
    for (const auto &finding : verify(copy.folder()).findings) {
        // Nobody took these photos.
        if (finding.what != "file")
            FAIL("" << finding.text);
    }
}

void requireSame(test::ProjectCopy &a, test::ProjectCopy &b)
{
    REQUIRE(*a->records() == *b->records());
    const auto of = [](test::ProjectCopy &copy) {
        std::vector<std::tuple<std::int64_t, ConflictKind, bool, std::string>> all;
        for (const auto &conflict : copy->conflicts())
            all.emplace_back(conflict.id, conflict.kind, conflict.decision.has_value(),
                             conflict.lost.value_or(""));
        return all;
    };
    REQUIRE(of(a) == of(b));
}

class Workshop {
public:
    explicit Workshop(unsigned seed)
        : m_random(seed)
        , m_edits{test::RandomEdits(seed), test::RandomEdits(seed + 1000),
                  test::RandomEdits(seed + 2000)}
    {
    }

    /// Everybody works for a while at his own computer, with clocks that do not quite agree.
    template <class... Copies> void work(int acts, Copies &...copies)
    {
        const std::array<test::ProjectCopy *, sizeof...(copies)> all{&copies...};
        for (int i = 0; i < acts; ++i) {
            const auto who = std::size_t(m_random() % all.size());
            all[who]->clock().advance(std::chrono::seconds(m_random() % 400));
            m_edits[who].act(**all[who]);
        }
    }

    int count(const std::string &what) const
    {
        int sum = 0;
        for (const auto &edits : m_edits) {
            const auto found = edits.counts.find(what);
            sum += found == edits.counts.end() ? 0 : found->second;
        }
        return sum;
    }

private:
    std::mt19937 m_random;
    std::array<test::RandomEdits, 3> m_edits;
};

} // namespace

TEST_CASE("Two people work apart and merge three times: the result is the same whoever merges first")
{
    const auto seed = GENERATE(range(1U, 13U));
    CAPTURE(seed);
    test::ProjectCopy robin("Robin");
    plant(robin, seed);
    Workshop workshop(seed);
    workshop.work(20, robin);
    test::ProjectCopy kim(robin, "Kim");
    for (int round = 0; round < 3; ++round) {
        CAPTURE(round);
        workshop.work(60, robin, kim);
        // A third copy of Kim's takes Robin's in first; then Robin takes Kim's.
        test::ProjectCopy first(kim, "Kim");
        first.merge(robin);
        robin.merge(kim);
        requireSame(robin, first);
        kim.merge(robin);
        requireSame(robin, kim);
        CHECK(kim->merge(robin.folder())->changes == 0);
    }
    requireSound(robin);
    requireSound(kim);
}

TEST_CASE("Three copies merged in different orders come to the same")
{
    const auto seed = GENERATE(range(101U, 109U));
    CAPTURE(seed);
    test::ProjectCopy robin("Robin");
    plant(robin, seed);
    Workshop workshop(seed);
    test::ProjectCopy kim(robin, "Kim");
    workshop.work(20, robin, kim);
    test::ProjectCopy sascha(kim, "Sascha");
    workshop.work(60, robin, kim, sascha);
    test::ProjectCopy other(sascha, "Sascha");
    robin.merge(kim);
    workshop.work(10, robin);
    other.merge(kim);
    other.merge(robin);
    robin.merge(sascha);
    requireSame(robin, other);
    kim.merge(sascha);
    workshop.work(20, robin, kim, sascha);
    test::ProjectCopy last(kim, "Kim");
    kim.merge(robin);
    kim.merge(sascha);
    robin.merge(sascha);
    robin.merge(last);
    sascha.merge(last);
    sascha.merge(robin);
    requireSame(robin, kim);
    requireSame(robin, sascha);
    requireSound(kim);
}

TEST_CASE("Random edits reach every record type, and are refused, taken back and decided")
{
    test::ProjectCopy robin("Robin");
    plant(robin, 7);
    Workshop workshop(7);
    test::ProjectCopy kim(robin, "Kim");
    for (int round = 0; round < 8; ++round) {
        workshop.work(250, robin, kim);
        robin.merge(kim);
        kim.merge(robin);
    }
    for (std::size_t type = 0; type < recordTypeCount; ++type) {
        CAPTURE(word(RecordType(type)));
        CHECK(workshop.count("changed " + std::string(word(RecordType(type)))) > 3);
    }
    CHECK(workshop.count("refused") > 50);
    CHECK(workshop.count("undone") > 50);
    CHECK(workshop.count("redone") > 10);
    CHECK(workshop.count("decided") > 5);
    const auto conflicts = robin->conflicts();
    for (const auto kind : {ConflictKind::Value, ConflictKind::Existence, ConflictKind::SetAside}) {
        CAPTURE(word(kind));
        CHECK(std::any_of(conflicts.begin(), conflicts.end(),
                          [&](const MergeConflict &conflict) { return conflict.kind == kind; }));
    }
    requireSame(robin, kim);
}
