// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/PartTree.h"
#include "core/records/Step.h"

#include <span>
#include <utility>
#include <vector>

namespace lastrivet::readiness {

/// Entries grouped by their part's place in the tree; those of a subtree lie side by side in
/// memory.
template <class Entry> class ByPlace {
public:
    void add(Place place, Entry entry) { m_unsorted.emplace_back(place, std::move(entry)); }

    /// Sorts what was added; to be called once, before the first question.
    void seal(Place places)
    {
        m_starts.assign(places + 1, 0);
        for (const auto &[place, entry] : m_unsorted)
            ++m_starts[place + 1];
        for (Place place = 0; place < places; ++place)
            m_starts[place + 1] += m_starts[place];
        m_entries.resize(m_unsorted.size());
        auto next = m_starts;
        for (auto &[place, entry] : m_unsorted)
            m_entries[next[place]++] = std::move(entry);
        m_unsorted.clear();
    }

    std::span<const Entry> in(Stretch stretch) const
    {
        return std::span(m_entries).subspan(m_starts[stretch.begin],
                                            m_starts[stretch.end] - m_starts[stretch.begin]);
    }
    std::span<const Entry> at(Place place) const { return in({place, place + 1}); }

private:
    std::vector<std::pair<Place, Entry>> m_unsorted;
    std::vector<Entry> m_entries;
    std::vector<std::uint32_t> m_starts;
};

/// A record and the step that it belongs to, if any.
template <class Record> struct OfStep {
    const Record *record = nullptr;
    const Step *step = nullptr;
};

} // namespace lastrivet::readiness
