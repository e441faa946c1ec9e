// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/FailingDisk.h"

#include "core/base/Error.h"
#include "tests/faults/Contents.h"
#include "tests/faults/Copies.h"
#include "tests/faults/Report.h"
#include "tests/faults/Site.h"
#include "tests/faults/disk/Disk.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <cerrno>

namespace lastrivet::faults {

namespace {

using Sentences = std::vector<std::string>;

/// Why an act was not done; nothing when it was. What is no `Fault` passes through: nobody
/// would catch it.
Sentences attempt(const Act &act, Site &site)
{
    try {
        return act.perform(site.project(), site.supplies());
    } catch (const Fault &fault) {
        return {fault.what()};
    }
}

void requireOneSentenceEach(const Sentences &sentences)
{
    for (const auto &sentence : sentences) {
        CAPTURE(sentence);
        REQUIRE(sentence.size() > 10);
        REQUIRE(sentence.ends_with('.'));
        REQUIRE(sentence.find('\n') == std::string::npos);
    }
}

/// What the project shows is what lies on the disk, whole; and work goes on.
void requireSound(Site &site)
{
    auto onlyLooking = site.options();
    onlyLooking.readOnly = true;
    REQUIRE(*Project::open(site.folder(), onlyLooking)->records() == *site.project().records());
    REQUIRE(damageIn(site.folder()) == "");
    addPart(site.project());
}

struct FailureCounts {
    int failures = 0;
    int refused = 0;
    int done = 0;
};

class Trial {
public:
    explicit Trial(const Act &act)
        : m_act(act)
        , m_disk(m_site.root())
    {
        // Something to take back and to write over.
        m_act.prepare(m_site.project(), m_site.supplies());
        REQUIRE(m_act.perform(m_site.project(), m_site.supplies()).empty());
    }

    /// Lets the operation after `more` others fail; false when the act has no more of them.
    bool fail(int more, int error, Disk::Failing failing)
    {
        CAPTURE(m_act.name, more, error, int(failing));
        m_act.prepare(m_site.project(), m_site.supplies());
        const auto before = m_site.project().records();
        const auto written = contentsOf(m_site.root(), Site::projectName);
        m_disk.failAfter(more, error, failing);
        const auto why = attempt(m_act, m_site);
        const bool hasFailed = m_disk.hasFailed();
        m_disk.failNever();
        requireOneSentenceEach(why);
        CAPTURE(why);
        if (m_act.effect == Effect::OnRecords)
            REQUIRE((*m_site.project().records() == *before) == !why.empty());
        if (m_act.effect == Effect::OnFiles)
            requireWholeFiles(written, !why.empty());
        REQUIRE(damageInCopies(m_site.root()) == "");
        if (failing == Disk::Failing::Once)
            REQUIRE(unfinishedIn(m_site.root()).empty());
        requireSound(m_site);
        count(hasFailed, !why.empty());
        return hasFailed;
    }

    const FailureCounts &counts() const { return m_counts; }

private:
    /// Every file written beside the project is the one of before, or the one that was to be; and
    /// a refusal leaves no new one.
    void requireWholeFiles(const Contents &before, bool isRefused)
    {
        const auto after = contentsOf(m_site.root(), Site::projectName);
        REQUIRE(attempt(m_act, m_site).empty());
        const auto wanted = contentsOf(m_site.root(), Site::projectName);
        for (const auto &[name, bytes] : after) {
            CAPTURE(name);
            if (isUnfinished(name))
                continue;
            const auto old = before.find(name);
            REQUIRE((old != before.end() || !isRefused));
            REQUIRE(((old != before.end() && old->second == bytes) || wanted.at(name) == bytes));
        }
    }

    void count(bool hasFailed, bool isRefused)
    {
        m_counts.failures += hasFailed;
        m_counts.refused += hasFailed && isRefused;
        m_counts.done += hasFailed && !isRefused;
    }

    const Act &m_act;
    Site m_site;
    Disk m_disk;
    FailureCounts m_counts;
};

} // namespace

void failEachOperation(const Act &act)
{
    FailureCounts sum;
    for (const int error : {EIO, ENOSPC}) {
        for (const auto failing : {Disk::Failing::Once, Disk::Failing::FromThenOn}) {
            // Each operation once; that a disk stays broken or full is told by some of them.
            const int step = failing == Disk::Failing::Once ? times(11, 1) : times(29, 5);
            Trial trial(act);
            for (int more = 0; trial.fail(more, error, failing); more += step) {
            }
            sum.failures += trial.counts().failures;
            sum.refused += trial.counts().refused;
            sum.done += trial.counts().done;
        }
    }
    report(fmt::format("one failure: {}", act.name), sum.failures,
           fmt::format("{} refused in a sentence, {} done all the same", sum.refused, sum.done));
    CHECK(sum.failures > 0);
    CHECK(sum.refused > 0);
}

} // namespace lastrivet::faults
