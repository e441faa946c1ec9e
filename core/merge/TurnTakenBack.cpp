// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Turn.h"

#include "core/records/EachReference.h"

#include <algorithm>

namespace lastrivet::merge {

using storage::RecordRows;

void Turn::decideWhatStays()
{
    std::set<RecordRef> goes;
    for (const auto &edits : m_content.records) {
        if (!edits.takesBack() || !m_after.records.find(edits.record.type, edits.record.id))
            continue;
        const auto makers = m_memory.makers.find(edits.record);
        const bool isOthersToo = makers != m_memory.makers.end() && makers->second > 1;
        if (isOthersToo) {
            m_stays.insert(edits.record);
            later([this, record = edits.record] { --m_memory.makers[record]; });
        } else if (!isAsItWasLeft(edits)) {
            m_stays.insert(edits.record);
        } else {
            goes.insert(edits.record);
        }
    }
    keepWhatIsNamed(goes);
    for (const auto &record : m_stays) {
        const auto makers = m_memory.makers.find(record);
        if (makers == m_memory.makers.end() || makers->second <= 1)
            addConflict({0,
                         ConflictKind::Existence,
                         record,
                         {},
                         {},
                         {},
                         {},
                         m_memory.writerOf(record, {}),
                         m_change,
                         {},
                         {}});
    }
}

bool Turn::isAsItWasLeft(const RecordEdits &edits) const
{
    RecordRows rows(m_after.records, edits.record);
    std::size_t expected = 0;
    std::size_t there = 0;
    for (const auto &list : rows.collections)
        there += list.size();
    for (const auto &edit : edits.rows) {
        const Row *row = nullptr;
        if (!edit.isOfList()) {
            row = &*rows.main;
        } else {
            auto &list = rows.rowsOf(*edit.table);
            const auto at = list.find(edit.key(1));
            row = at == list.end() ? nullptr : &at->second;
            ++expected;
        }
        for (std::size_t i = 0; i < edit.before.size(); ++i) {
            if (!row || edit.before[i].value_or(Cell{}) != (*row)[i])
                return false;
        }
    }
    return expected == there;
}

void Turn::keepWhatIsNamed(std::set<RecordRef> &goes)
{
    if (goes.empty())
        return;
    const std::vector<RecordRef> going(goes.begin(), goes.end());
    // Who names whom among those that go, to keep what a kept one names.
    std::vector<RecordRef> kept;
    const auto keep = [&](const Field &, RecordRef named) {
        if (goes.erase(named) > 0) {
            m_stays.insert(named);
            kept.push_back(named);
        }
    };
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto &description = describe(RecordType(i));
        if (!canName(description.fields, going))
            continue;
        if (description.type == RecordType::Project) {
            eachReference(description, &m_after.records.project, keep);
            continue;
        }
        const auto &table = m_after.records.table(description.type);
        for (const void *record = table.nextAny(0); record;
             record = table.nextAny(idOf(description, record))) {
            if (!std::binary_search(going.begin(), going.end(),
                                    RecordRef{description.type, idOf(description, record)}))
                eachReference(description, record, keep);
        }
    }
    for (std::size_t i = 0; i < kept.size(); ++i) {
        const auto ref = kept[i];
        if (const auto *record = m_after.records.find(ref.type, ref.id))
            eachReference(describe(ref.type), record, keep);
    }
}

} // namespace lastrivet::merge
