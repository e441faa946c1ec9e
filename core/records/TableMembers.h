// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/NearSearch.h"
#include "core/records/Table.h"

#include <algorithm>
#include <iterator>

// The members of `Table`, compiled once per record type in Records.cpp and nowhere else: they would
// cost every file that sees a snapshot several seconds.
namespace lastrivet {

template <class Record> Table<Record>::Table() = default;
template <class Record> Table<Record>::Table(const Table &other) = default;
template <class Record> Table<Record>::Table(Table &&other) noexcept = default;
template <class Record> Table<Record> &Table<Record>::operator=(const Table &other) = default;
template <class Record> Table<Record> &Table<Record>::operator=(Table &&other) noexcept = default;
template <class Record> Table<Record>::~Table() = default;

template <class Record> const Record *Table<Record>::find(Id<Record> id) const
{
    const std::size_t chunk = chunkFor(id);
    if (chunk == m_chunks.size())
        return nullptr;
    const Record &record = (*m_chunks[chunk])[rowFor(*m_chunks[chunk], id)];
    return record.id == id ? &record : nullptr;
}

template <class Record> void Table<Record>::put(Record record)
{
    const std::size_t place = chunkFor(record.id);
    if (place == m_chunks.size()) {
        roomAtEnd().push_back(std::move(record));
        ++m_size;
        return;
    }
    Chunk &chunk = own(m_chunks[place]);
    const std::size_t row = rowFor(chunk, record.id);
    if (row < chunk.size() && chunk[row].id == record.id) {
        chunk[row] = std::move(record);
        return;
    }
    chunk.insert(chunk.begin() + std::ptrdiff_t(row), std::move(record));
    ++m_size;
    if (chunk.size() > chunkSize)
        split(place);
}

template <class Record> const void *Table<Record>::findAny(std::int64_t id) const
{
    return find(Id<Record>{id});
}

template <class Record> void Table<Record>::putAny(const void *record)
{
    put(*static_cast<const Record *>(record));
}

template <class Record> void *Table<Record>::appendAny(std::int64_t id)
{
    Record &record = roomAtEnd().emplace_back();
    record.id = Id<Record>{id};
    ++m_size;
    return &record;
}

template <class Record> void *Table<Record>::editAny(std::int64_t id)
{
    const std::size_t place = chunkFor(Id<Record>{id});
    if (place == m_chunks.size())
        return nullptr;
    const std::size_t row = rowFor(*m_chunks[place], Id<Record>{id});
    if ((*m_chunks[place])[row].id != Id<Record>{id})
        return nullptr;
    return &own(m_chunks[place])[row];
}

template <class Record> void Table<Record>::erase(std::int64_t id)
{
    if (!find(Id<Record>{id}))
        return;
    const std::size_t place = chunkFor(Id<Record>{id});
    Chunk &chunk = own(m_chunks[place]);
    chunk.erase(chunk.begin() + std::ptrdiff_t(rowFor(chunk, Id<Record>{id})));
    --m_size;
    if (chunk.empty())
        m_chunks.erase(m_chunks.begin() + std::ptrdiff_t(place));
}

template <class Record> const void *Table<Record>::nextAny(std::int64_t id) const
{
    const Id<Record> next{id + 1};
    const std::size_t chunk = chunkFor(next);
    return chunk == m_chunks.size() ? nullptr : &(*m_chunks[chunk])[rowFor(*m_chunks[chunk], next)];
}

template <class Record> std::int64_t Table<Record>::greatestId() const
{
    return m_chunks.empty() ? 0 : m_chunks.back()->back().id.value();
}

template <class Record> bool Table<Record>::operator==(const Table &other) const
{
    return m_size == other.m_size && std::equal(begin(), end(), other.begin());
}

template <class Record> std::size_t Table<Record>::chunkFor(Id<Record> id) const
{
    return firstNotBelow(m_chunks.size(), id.value(),
                         [this](std::size_t chunk) { return m_chunks[chunk]->back().id.value(); });
}

template <class Record> std::size_t Table<Record>::rowFor(const Chunk &chunk, Id<Record> id)
{
    return firstNotBelow(chunk.size(), id.value(),
                         [&chunk](std::size_t row) { return chunk[row].id.value(); });
}

template <class Record>
typename Table<Record>::Chunk &Table<Record>::own(std::shared_ptr<Chunk> &chunk)
{
    if (chunk.use_count() > 1)
        chunk = std::make_shared<Chunk>(*chunk);
    return *chunk;
}

template <class Record> typename Table<Record>::Chunk &Table<Record>::roomAtEnd()
{
    if (m_chunks.empty() || m_chunks.back()->size() >= chunkSize) {
        m_chunks.push_back(std::make_shared<Chunk>());
        m_chunks.back()->reserve(chunkSize);
    }
    return own(m_chunks.back());
}

template <class Record> void Table<Record>::split(std::size_t place)
{
    Chunk &chunk = *m_chunks[place];
    const auto middle = chunk.begin() + std::ptrdiff_t(chunk.size() / 2);
    auto upper = std::make_shared<Chunk>(std::make_move_iterator(middle),
                                         std::make_move_iterator(chunk.end()));
    chunk.erase(middle, chunk.end());
    m_chunks.insert(m_chunks.begin() + std::ptrdiff_t(place) + 1, std::move(upper));
}

} // namespace lastrivet
