// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/verify/Verification.h"
#include "tests/faults/Acts.h"
#include "tests/faults/Report.h"
#include "tests/faults/Site.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <fstream>
#include <random>

using namespace lastrivet;
using namespace lastrivet::faults;

namespace {

namespace fs = std::filesystem;

void flip(const fs::path &file, std::uintmax_t byte, unsigned bit)
{
    std::fstream stream(file, std::ios::binary | std::ios::in | std::ios::out);
    stream.seekg(std::streamoff(byte));
    const char before = char(stream.get());
    stream.seekp(std::streamoff(byte));
    stream.put(char(before ^ (1 << bit)));
}

/// A project with something of everything, closed.
class ClosedSite {
public:
    ClosedSite()
    {
        // A large import would leave all pages but a few to rows of one kind.
        for (const auto *name : {"logging", "squawk", "photo intake", "undo", "redo", "import"}) {
            for (int i = 0; i < 3; ++i) {
                act(name).prepare(m_site.project(), m_site.supplies());
                REQUIRE(act(name).perform(m_site.project(), m_site.supplies()).empty());
            }
        }
        m_records = m_site.project().records();
        m_found = found(m_site.project());
        m_site.close();
        REQUIRE(verify(folder()).isFaultless());
    }

    fs::path folder() const { return m_site.folder(); }
    fs::path database() const { return folder() / "records.db"; }
    const Records &records() const { return *m_records; }
    Project::Options options() const { return m_site.options(); }
    /// Whether a search finds what it found before.
    bool isFoundIn(const Project &project) const { return found(project) == m_found; }

private:
    static std::vector<RecordRef> found(const Project &project)
    {
        std::vector<RecordRef> records;
        for (const auto &hit : project.search("deburred", 1000))
            records.push_back(hit.record);
        return records;
    }

    Site m_site;
    Snapshot m_records;
    std::vector<RecordRef> m_found;
};

struct FlipCounts {
    int refused = 0;
    int found = 0;
    /// In bytes that hold nothing, or nothing that is a record.
    int idle = 0;
};

/// What a person meets who opens the damaged project: a sentence, or records that are right, or
/// records of which `verify` says what is wrong.
void look(const ClosedSite &site, FlipCounts &counts)
{
    try {
        const auto project = Project::open(site.folder(), site.options());
        const bool isAsItWas = *project->records() == site.records();
        const bool isComplete = site.isFoundIn(*project);
        const auto findings = verify(site.folder()).findings;
        REQUIRE((isAsItWas || !findings.empty()));
        CHECK((isComplete || !findings.empty()));
        ++(findings.empty() ? counts.idle : counts.found);
    } catch (const Fault &fault) {
        CAPTURE(fault.what());
        REQUIRE(std::string(fault.what()).ends_with('.'));
        ++counts.refused;
    }
}

std::vector<std::size_t> placesOf(const std::string &words, const fs::path &file)
{
    const auto text = test::readText(file);
    std::vector<std::size_t> places;
    for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1))
        places.push_back(at);
    return places;
}

} // namespace

TEST_CASE("One bit that turned in any page of the database never gives wrong records silently",
          "[flip]")
{
    const ClosedSite site;
    const auto whole = test::readText(site.database());
    constexpr std::size_t page = 4096;
    constexpr std::size_t headOfPage = 8;
    std::mt19937 random(7);
    FlipCounts counts;
    int flips = 0;
    for (int round = 0; round < times(1, 6); ++round) {
        for (std::size_t at = 0; at < whole.size(); at += page * std::size_t(times(3, 1))) {
            // Every second time in its head, which no page leaves unused.
            const auto byte = at + random() % (flips % 2 ? page : headOfPage);
            const auto bit = unsigned(random() % 8);
            CAPTURE(byte, bit);
            flip(site.database(), byte, bit);
            look(site, counts);
            test::writeText(site.database(), whole);
            ++flips;
        }
    }
    report("one bit in every page", flips,
           fmt::format("{} refused, {} named by verify, {} in bytes that hold no record",
                       counts.refused, counts.found, counts.idle));
    CHECK(counts.refused + counts.found > 0);
}

TEST_CASE("One bit that turned in a photo is found, and the photo is named", "[flip]")
{
    const ClosedSite site;
    std::mt19937 random(8);
    int flips = 0;
    for (const Media &media : site.records().media) {
        for (int i = 0; i < times(1, 10); ++i, ++flips) {
            const auto byte = random() % fs::file_size(site.folder() / media.file);
            flip(site.folder() / media.file, byte, 3);
            const auto findings = verify(site.folder()).findings;
            REQUIRE(findings.size() == 1);
            CHECK(findings.front().record == "media");
            CHECK(findings.front().id == media.id.value());
            flip(site.folder() / media.file, byte, 3);
        }
    }
    report("one bit in a photo", flips, "all found and named");
    CHECK(flips > 0);
}

TEST_CASE("One bit that turned in a row of the journal is found", "[flip]")
{
    const ClosedSite site;
    const auto whole = test::readText(site.database());
    std::mt19937 random(9);
    int flips = 0;
    const auto journal = Project::open(site.folder(), site.options())->journal();
    for (std::size_t i = 0; i < journal.size(); i += std::size_t(times(5, 1))) {
        for (const auto &words : {journal[i].change_id, journal[i].label}) {
            for (const auto at : placesOf(words, site.database())) {
                flip(site.database(), at + random() % words.size(), unsigned(random() % 3));
                CAPTURE(words, at);
                try {
                    CHECK(!verify(site.folder()).isFaultless());
                } catch (const Fault &) {
                    // Refused, which is as good.
                }
                test::writeText(site.database(), whole);
                ++flips;
            }
        }
    }
    report("one bit in a row of the journal", flips, "all found");
    CHECK(flips > 0);
}
