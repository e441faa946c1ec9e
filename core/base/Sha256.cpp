// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Sha256.h"

#include "core/base/CaseFold.h"
#include "core/base/Error.h"

#include <openssl/evp.h>

#include <algorithm>

namespace lastrivet {

struct Sha256::Context {
    std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)> sum{EVP_MD_CTX_new(), EVP_MD_CTX_free};
};

Sha256::Sha256()
    : m_context(std::make_unique<Context>())
{
    if (!m_context->sum || !EVP_DigestInit_ex(m_context->sum.get(), EVP_sha256(), nullptr))
        throw Fault("SHA-256 is not available on this computer.");
}

Sha256::~Sha256() = default;

void Sha256::add(std::span<const std::uint8_t> bytes)
{
    EVP_DigestUpdate(m_context->sum.get(), bytes.data(), bytes.size());
}

void Sha256::add(std::string_view bytes)
{
    EVP_DigestUpdate(m_context->sum.get(), bytes.data(), bytes.size());
}

Sha256::Digest Sha256::digest()
{
    Digest digest{};
    EVP_DigestFinal_ex(m_context->sum.get(), digest.data(), nullptr);
    return digest;
}

std::string hex(std::span<const std::uint8_t> bytes)
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text += digits[byte >> 4];
        text += digits[byte & 15];
    }
    return text;
}

std::string sha256(std::span<const std::uint8_t> bytes)
{
    Sha256 sum;
    sum.add(bytes);
    return hex(sum.digest());
}

bool isSha256(std::string_view text)
{
    return text.size() == 64 && std::all_of(text.begin(), text.end(), [](char c) {
               return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
           });
}

std::string withLowerCaseHex(std::string text)
{
    std::string lower = asciiLower(text);
    return isSha256(lower) ? lower : text;
}

} // namespace lastrivet
