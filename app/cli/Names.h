// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/Complaint.h"
#include "core/base/Moment.h"
#include "core/base/Words.h"
#include "core/records/Records.h"

#include <cstdint>
#include <fmt/format.h>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::cli {

// What words of the command line mean; each throws `WrongUsage` when they mean nothing.

/// `option` is named in the complaint.
Moment momentOf(const std::string &text, std::string_view option);
/// A whole number within these bounds, in decimal. CLI11's own reader would take "010" for octal,
/// and wrap numbers that are too large.
std::int64_t wholeNumberOf(const std::string &text, std::string_view option, std::int64_t least,
                           std::int64_t most);
/// The live part with this code, in any case where that is unambiguous.
const Component &partOf(const Records &records, const std::string &code,
                        std::string_view option = "--component");
/// Live closings, ascending, each once. `ids` are texts as typed, because CLI11 would wrap a number
/// beyond 64 bits.
IdSet<Closing> closingsOf(const Records &records, const std::vector<std::string> &ids);
/// The live person of this name, when there is exactly one.
const Person &personOf(const Records &records, const std::string &name);

/// A word of a vocabulary; the complaint lists the vocabulary.
template <class Word> Word wordOf(const std::string &text, std::string_view option)
{
    if (const auto found = parseWord<Word>(text))
        return *found;
    throw WrongUsage(
        fmt::format("{}: “{}” is none of {}.", option, text, fmt::join(Words<Word>::list, ", ")));
}

} // namespace lastrivet::cli
