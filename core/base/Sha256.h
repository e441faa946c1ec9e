// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <string_view>

namespace lastrivet {

/// The SHA-256 (FIPS 180-4) of bytes that are added piece by piece.
class Sha256 {
public:
    using Digest = std::array<std::uint8_t, 32>;

    Sha256();
    ~Sha256();

    void add(std::span<const std::uint8_t> bytes);
    void add(std::string_view bytes);
    /// Finishes the hash; to be called once, and nothing may be added afterwards.
    Digest digest();

private:
    struct Context;
    std::unique_ptr<Context> m_context;
};

/// Bytes as lower-case hex digits.
std::string hex(std::span<const std::uint8_t> bytes);

/// The SHA-256 of `bytes` as 64 hex digits.
std::string sha256(std::span<const std::uint8_t> bytes);

/// True for 64 lower-case hex digits.
bool isSha256(std::string_view text);

/// The text in lower case when that makes it 64 hex digits; any other text unchanged.
std::string withLowerCaseHex(std::string text);

} // namespace lastrivet
