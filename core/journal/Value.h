// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/base/Money.h"
#include "core/records/Description.h"
#include "core/records/Records.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace lastrivet::journal {

/// A word of a vocabulary.
struct VocabularyWord {
    std::string word;

    friend bool operator==(const VocabularyWord &, const VocabularyWord &) = default;
};
/// One thing that somebody wrote down, not yet in a language; a record is told by its name.
using Content = std::variant<std::monostate, bool, std::int64_t, double, std::string, Moment,
                             Minutes, Money, VocabularyWord, Message>;

/// The value of a field as people read it: nothing, one content, or the fields of a list's row.
struct Value {
    struct Part {
        /// Null for what is no field of a record.
        const Field *field = nullptr;
        Content content;
    };
    std::vector<Part> parts;

    bool isNothing() const { return parts.empty(); }
};

/// The currency in which the record's amounts are; empty for one that has none, or is gone.
std::string currencyOf(const Records &records, RecordRef record);

/// What a journal or a merge keeps as a JSON text. `field` may be null. A text that is not as the
/// field would have it is told as it stands. Amounts are in `currency`.
Value valueOf(const Records &records, const Field *field, const std::optional<std::string> &json,
              const std::string &currency = {});
/// The same of an item of a set, or of a row of a list.
Value itemOf(const Records &records, const Field &collection, const std::string &json);

} // namespace lastrivet::journal
