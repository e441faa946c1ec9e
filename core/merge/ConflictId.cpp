// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/ConflictId.h"

#include "core/base/Sha256.h"

#include <fmt/format.h>

namespace lastrivet::merge {

namespace {

std::string textOf(const storage::Cell &cell)
{
    struct Text {
        std::string operator()(std::monostate) const { return "-"; }
        std::string operator()(std::int64_t number) const { return fmt::format("i{}", number); }
        std::string operator()(double number) const { return fmt::format("r{}", number); }
        std::string operator()(const std::string &text) const { return "t" + text; }
    };
    return std::visit(Text{}, cell);
}

} // namespace

std::int64_t conflictId(const storage::ConflictRow &conflict)
{
    Sha256 sum;
    for (const auto &part :
         {std::string(word(conflict.kind)), std::string(word(conflict.record.type)),
          fmt::to_string(conflict.record.id), conflict.field,
          conflict.item ? fmt::to_string(*conflict.item) : std::string("-"), textOf(conflict.lost),
          conflict.lost_by}) {
        sum.add(fmt::format("{}:", part.size()));
        sum.add(part);
    }
    const auto digest = sum.digest();
    std::int64_t id = 0;
    for (int i = 0; i < 6; ++i)
        id = id << 8 | digest[std::size_t(i)];
    return id + 1;
}

} // namespace lastrivet::merge
