// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"

#include <cstddef>
#include <iterator>
#include <memory>
#include <utility>
#include <vector>

namespace lastrivet {

/// A table of records of some type, for code that follows descriptions instead of types.
class AnyTable {
public:
    virtual ~AnyTable() = default;
    virtual std::size_t size() const = 0;
    /// The record, or null.
    virtual const void *findAny(std::int64_t id) const = 0;
    /// Inserts or replaces; `record` is of the table's record type.
    virtual void putAny(const void *record) = 0;
    virtual void erase(std::int64_t id) = 0;
    /// Adds a record with this id, greater than all others, at its defaults and returns it to be
    /// filled; valid until the table changes.
    virtual void *appendAny(std::int64_t id) = 0;
    /// The record, to be changed in place, or null; valid until the table changes.
    virtual void *editAny(std::int64_t id) = 0;
    /// The first record with an id greater than `id`, or null: walks the table from 0.
    virtual const void *nextAny(std::int64_t id) const = 0;
    virtual std::int64_t greatestId() const = 0;
};

/// Records by ascending id, in shared chunks: a copy is cheap and never changes under its reader.
template <class Record> class Table final : public AnyTable {
    static constexpr std::size_t chunkSize = 128;
    using Chunk = std::vector<Record>;

public:
    class Iterator {
    public:
        using value_type = Record;
        using difference_type = std::ptrdiff_t;
        using reference = const Record &;
        using pointer = const Record *;
        using iterator_category = std::forward_iterator_tag;

        Iterator() = default;
        Iterator(const std::vector<std::shared_ptr<Chunk>> *chunks, std::size_t chunk)
            : m_chunks(chunks)
            , m_chunk(chunk)
        {
        }
        reference operator*() const { return (*(*m_chunks)[m_chunk])[m_row]; }
        pointer operator->() const { return &**this; }
        Iterator &operator++()
        {
            if (++m_row == (*m_chunks)[m_chunk]->size()) {
                ++m_chunk;
                m_row = 0;
            }
            return *this;
        }
        Iterator operator++(int)
        {
            Iterator before = *this;
            ++*this;
            return before;
        }
        bool operator==(const Iterator &) const = default;

    private:
        const std::vector<std::shared_ptr<Chunk>> *m_chunks = nullptr;
        std::size_t m_chunk = 0;
        std::size_t m_row = 0;
    };

    Table();
    Table(const Table &other);
    Table(Table &&other) noexcept;
    Table &operator=(const Table &other);
    Table &operator=(Table &&other) noexcept;
    ~Table() override;

    Iterator begin() const { return {&m_chunks, 0}; }
    Iterator end() const { return {&m_chunks, m_chunks.size()}; }
    std::size_t size() const override { return m_size; }
    bool isEmpty() const { return m_size == 0; }

    /// The record, or null.
    const Record *find(Id<Record> id) const;
    /// Inserts the record, or replaces the one with its id.
    void put(Record record);

    const void *findAny(std::int64_t id) const override;
    void putAny(const void *record) override;
    void *appendAny(std::int64_t id) override;
    void *editAny(std::int64_t id) override;
    void erase(std::int64_t id) override;
    const void *nextAny(std::int64_t id) const override;
    std::int64_t greatestId() const override;

    bool operator==(const Table &other) const;

private:
    using Chunks = std::vector<std::shared_ptr<Chunk>>;

    /// The first chunk whose last id is not below `id`.
    std::size_t chunkFor(Id<Record> id) const;
    /// The first row of the chunk whose id is not below `id`.
    static std::size_t rowFor(const Chunk &chunk, Id<Record> id);
    /// The chunk, made this table's own: a snapshot that shares it keeps the old one.
    static Chunk &own(std::shared_ptr<Chunk> &chunk);
    /// The last chunk, with room for a row behind all others.
    Chunk &roomAtEnd();
    void split(std::size_t chunk);

    Chunks m_chunks;
    std::size_t m_size = 0;
};

} // namespace lastrivet
