// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/Site.h"
#include "tests/faults/disk/Disk.h"
#include "tests/faults/disk/Medium.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::faults {

/// What became of a project in power cuts.
struct CutCounts {
    int cuts = 0;
    /// A change that was shown as saved is gone.
    int lost = 0;
    /// The records are those of no moment.
    int half = 0;
    /// It cannot be opened, `verify` complains, or it cannot go on.
    int damaged = 0;
    /// The first of each, for whoever has to mend it.
    std::string examples;

    bool areHarmless() const { return lost + half + damaged == 0; }
    std::string text() const;
    /// Adds one to a count of these, `marked` changes having been shown as saved.
    void tell(int &count, std::size_t marked, const std::string &what);
};

/// A stretch of work on a site, recorded operation by operation, in which the power is then cut
/// over and over.
class PowerCuts {
public:
    /// Begins to record.
    explicit PowerCuts(Site &site);

    Disk &disk() { return m_disk; }
    /// Everything until here is shown as saved; `onShelf`: there is a backup of it, too.
    void mark(bool onShelf = false);
    /// Stops recording; then cuts `count` times at random moments and looks at what is left.
    CutCounts cut(int count, unsigned seed);

private:
    void check(const std::filesystem::path &site, std::size_t marked, CutCounts &counts) const;
    void checkProject(const std::filesystem::path &site, std::size_t marked,
                      CutCounts &counts) const;
    void checkShelf(const std::filesystem::path &site, std::size_t marked, CutCounts &counts) const;
    bool isOneOf(const Records &records, std::size_t first, std::size_t last) const;

    Site &m_site;
    Disk m_disk;
    std::vector<Snapshot> m_states;
    /// The newest state of which there is a backup, at each of the states.
    std::vector<std::optional<std::size_t>> m_onShelf;
};

} // namespace lastrivet::faults
