// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Decision.h"
#include "core/merge/Turn.h"

// What a change decides of that which earlier merges left to decide.
namespace lastrivet::merge {

using storage::ConflictRow;
using storage::RecordRows;

void Turn::playConflicts()
{
    for (const auto &edit : m_content.conflicts) {
        const auto id = std::get<std::int64_t>(edit.key(0));
        const auto known = m_after.conflicts.find(id);
        if (edit.kind == RowChange::Delete) {
            m_after.conflicts.erase(id);
        } else if (edit.kind == RowChange::Insert) {
            Row row(storage::conflictColumnCount);
            for (std::size_t i = 0; i < edit.after.size(); ++i)
                row[i] = edit.after[i].value_or(Cell{});
            m_after.conflicts.insert_or_assign(id, storage::conflictOf(row));
        } else if (known != m_after.conflicts.end()) {
            playDecision(known->second, edit);
        }
    }
}

void Turn::playDecision(const ConflictRow &known, const RowEdit &edit)
{
    const Row was = storage::rowOf(known);
    Row row = was;
    for (std::size_t i = 0; i < edit.after.size(); ++i)
        row[i] = edit.after[i].value_or(row[i]);
    ConflictRow decided = storage::conflictOf(row);
    if (!decided.decision) {
        if (settleOverruled(known))
            return;
        // Of two decisions the other one stands, or both are told as something to decide.
        if (m_memory.contested.contains(known.id) || edit.before.back() != was.back())
            return;
    } else if (known.decision && known.decision != decided.decision) {
        if (known.kind == ConflictKind::Value)
            overrule(known, *decided.decision);
        else // what was let in or withdrawn at a word stays so
            decided.decision = ConflictDecision::Taken;
    }
    later([this, id = known.id] { m_memory.deciders[id] = m_change; });
    m_after.conflicts.insert_or_assign(decided.id, decided);
}

void Turn::overrule(const ConflictRow &known, ConflictDecision decision)
{
    const bool isTaken = decision == ConflictDecision::Taken;
    const Cell &stands = isTaken ? known.lost : known.kept;
    const Cell &loses = isTaken ? known.kept : known.lost;
    const auto decider = m_memory.deciders.find(known.id);
    ReplayMemory::Overruled overruled;
    overruled.before = known;
    overruled.by = m_change;
    if (decider != m_memory.deciders.end())
        overruled.decider = decider->second;
    if (putDecided(known, stands, loses))
        overruled.told = addConflict({0,
                                      ConflictKind::Value,
                                      known.record,
                                      known.field,
                                      known.item,
                                      stands,
                                      loses,
                                      m_change,
                                      overruled.decider,
                                      {},
                                      {}});
    later([this, overruled = std::move(overruled)] {
        m_memory.contested.insert(overruled.before.id);
        m_memory.overruled.insert_or_assign(overruled.before.id, overruled);
    });
}

bool Turn::settleOverruled(const ConflictRow &known)
{
    const auto found = m_memory.overruled.find(known.id);
    if (found == m_memory.overruled.end() || !m_undoes)
        return false;
    const ReplayMemory::Overruled &overruled = found->second;
    const auto decider = m_memory.deciders.find(known.id);
    const bool isOverruling = m_undoes == overruled.by && decider != m_memory.deciders.end() &&
                              decider->second == overruled.by;
    if (!isOverruling && m_undoes != overruled.decider)
        return false;
    const auto told = m_after.conflicts.find(overruled.told);
    if (told != m_after.conflicts.end() && !told->second.decision)
        m_after.conflicts.erase(told);
    if (isOverruling) {
        const bool wasTaken = overruled.before.decision == ConflictDecision::Taken;
        putDecided(known, wasTaken ? known.lost : known.kept, wasTaken ? known.kept : known.lost);
        m_after.conflicts.insert_or_assign(known.id, overruled.before);
        later(
            [this, id = known.id, before = overruled.decider] { m_memory.deciders[id] = before; });
    }
    later([this, id = known.id] {
        m_memory.contested.erase(id);
        m_memory.overruled.erase(id);
    });
    return true;
}

bool Turn::putDecided(const ConflictRow &about, const Cell &stands, const Cell &loses)
{
    const bool isProfile = about.field == storage::profileTable;
    Cell profile = m_after.records.profile_copy;
    RecordRows rows(m_after.records, about.record);
    Cell *cell = isProfile ? &profile : cellOf(rows, about);
    if (!cell || (*cell != stands && *cell != loses))
        return false;
    if (*cell == stands)
        return true;
    *cell = stands;
    const auto *text = std::get_if<std::string>(&profile);
    if (!isProfile)
        rows.putInto(m_after.records);
    else if (text)
        m_after.records.profile_copy = *text;
    m_touched.insert(about.record);
    later([this, record = about.record, field = about.field] {
        m_memory.writers[{record, field}] = m_change;
    });
    return true;
}

} // namespace lastrivet::merge
