// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"
#include "core/records/Records.h"

#include <memory>
#include <random>
#include <string>

namespace lastrivet::test {

/// Makes records of every type with every field in play, following the descriptions. They are
/// storable, but keep no rule of the trade.
class RandomRecords {
public:
    /// References lead to ids from 1 to `idsPerType`.
    RandomRecords(unsigned seed, std::int64_t idsPerType);

    std::shared_ptr<void> record(RecordType type, std::int64_t id);
    /// Every id of every type.
    Records all();

private:
    void fill(std::span<const Field> fields, void *target, std::int64_t id);
    void fillCollection(const Field &field, void *target);
    /// `m_text` holds the text that it points to, until the next call.
    Scalar value(const Field &field, std::int64_t id);
    std::string_view text();
    double real();
    std::int64_t below(std::int64_t bound);

    std::mt19937 m_random;
    std::int64_t m_idsPerType;
    std::string m_text;
};

} // namespace lastrivet::test
