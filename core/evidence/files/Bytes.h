// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>

namespace lastrivet::evidence {

/// The content of a file. Unlike a vector, its memory is not zeroed before it is read into.
class Bytes {
public:
    Bytes() = default;
    explicit Bytes(std::size_t size)
        : m_bytes(std::make_unique_for_overwrite<std::uint8_t[]>(size))
        , m_size(size)
    {
    }

    std::uint8_t *data() { return m_bytes.get(); }
    std::size_t size() const { return m_size; }
    operator std::span<const std::uint8_t>() const { return {m_bytes.get(), m_size}; }

private:
    std::unique_ptr<std::uint8_t[]> m_bytes;
    std::size_t m_size = 0;
};

} // namespace lastrivet::evidence
