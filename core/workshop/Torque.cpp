// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Torque.h"

#include "core/base/Hyphens.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace lastrivet::workshop {

namespace {

constexpr std::array<std::string_view, 2> tables{"torque_fine", "torque_coarse"};

/// Without what people put around it: "No. 10-32", "#10-32", "1/4 - 28".
std::string plainThread(std::string_view text)
{
    std::string plain;
    for (const char c : text) {
        if (c != ' ' && c != '#')
            plain += c;
    }
    if (plain.starts_with("No."))
        plain.erase(0, 3);
    return withPlainHyphens(plain);
}

Torque rowOf(const WorkshopTable &table, std::size_t row, Nut nut)
{
    const std::string_view kind = word(nut);
    const auto value = [&](std::string_view pattern) {
        return table.number(row, fmt::format(fmt::runtime(pattern), kind)).value();
    };
    Torque torque;
    torque.thread = table.text(row, "thread");
    torque.nut = nut;
    torque.minimum = value("{}_nut_min_inlb");
    torque.maximum = value("{}_nut_max_inlb");
    torque.allowed_maximum = value("max_allow_{}_inlb");
    torque.remark = table.text(row, "note");
    if (nut == Nut::Shear && table.text(row, "shear_estimated") == "yes")
        torque.remark += (torque.remark.empty() ? "" : "; ") +
                         std::string("the shear values of this size are estimated");
    torque.source = table.source(row);
    return torque;
}

std::string listOf(const std::vector<std::string> &words)
{
    return fmt::format("{}", fmt::join(words, ", "));
}

} // namespace

Result<Torque, Message> torque(std::string_view thread, Nut nut, double drag)
{
    const auto wanted = plainThread(thread);
    for (const auto name : tables) {
        const auto &table = WorkshopTable::named(name);
        for (std::size_t row = 0; row < table.rowCount(); ++row) {
            if (table.text(row, "thread") != wanted)
                continue;
            auto found = rowOf(table, row, nut);
            if (!std::isfinite(drag) || drag < 0)
                return Message{"A drag is a torque of 0 or more.", {}};
            if (drag > found.maximum)
                return Message{"A drag of {0} in-lb is more than the {1} in-lb that a {2} nut on "
                               "{3} is tightened to; something is wrong with nut, bolt or reading.",
                               {fmt::to_string(drag), fmt::to_string(found.maximum),
                                std::string(word(nut)), found.thread}};
            found.minimum += drag;
            found.maximum += drag;
            found.allowed_maximum += drag;
            found.drag_added = drag;
            return found;
        }
    }
    return Message{"The table has no thread {0}; it has {1}.",
                   {std::string(thread), listOf(threads())}};
}

std::vector<std::string> threads()
{
    std::vector<std::string> all;
    for (const auto name : tables) {
        const auto &table = WorkshopTable::named(name);
        for (std::size_t row = 0; row < table.rowCount(); ++row)
            all.push_back(table.text(row, "thread"));
    }
    return all;
}

std::vector<PrevailingTorque> prevailingTorque(std::string_view thread)
{
    const auto wanted = plainThread(thread);
    const auto size = wanted.substr(0, wanted.rfind('-'));
    const auto &table = WorkshopTable::named("prevailing_torque");
    std::vector<PrevailingTorque> found;
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const auto &named = table.text(row, "thread");
        if (named == wanted || (table.text(row, "series") == "any" && named == size))
            found.push_back({table.text(row, "basis"), table.number(row, "min_inlb").value(),
                             table.source(row)});
    }
    return found;
}

} // namespace lastrivet::workshop
