// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Wire.h"

#include "core/base/ParseNumber.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lastrivet::workshop {

namespace {

constexpr double coldest = -100;
constexpr double hottest = 300;

std::optional<Message> wrongIn(double feet, double amps, double celsius)
{
    if (!std::isfinite(feet) || feet <= 0)
        return Message{"A run of wire is longer than nothing.", {}};
    if (!std::isfinite(amps) || amps <= 0)
        return Message{"A current is above zero.", {}};
    if (!std::isfinite(feet * amps))
        return Message{"These numbers are too large to be reckoned with.", {}};
    if (!(celsius >= coldest && celsius <= hottest))
        return Message{"The wire's temperature is between {0} and {1} °C.",
                       {fmt::to_string(coldest), fmt::to_string(hottest)}};
    return std::nullopt;
}

WireRun rowOf(const WorkshopTable &table, std::size_t row, Rating rating)
{
    WireRun run;
    run.gauge = table.text(row, "awg");
    run.ohms_per_foot = table.number(row, "ohms_per_1000ft_20C_tin").value() / 1000;
    run.most_amps = table.number(row, fmt::format("amps_{}C", word(rating))).value();
    run.source = table.source(row);
    return run;
}

void load(WireRun &run, double feet, double amps, double celsius)
{
    run.ohms_per_foot *= (234.5 + celsius) / 254.5;
    run.drop = run.ohms_per_foot * feet * amps;
}

/// The ends of a row's sizes: "24-14", "2-1", "0-00", "000".
std::optional<std::pair<int, int>> span(std::string_view sizes)
{
    const auto dash = sizes.find('-');
    const auto first = gaugeNumber(sizes.substr(0, dash));
    const auto last = dash == std::string_view::npos ? first : gaugeNumber(sizes.substr(dash + 1));
    return first && last ? std::optional(std::pair(*first, *last)) : std::nullopt;
}

} // namespace

std::vector<std::string> gauges()
{
    std::vector<std::string> all;
    const auto &table = WorkshopTable::named("wire_table_11_9");
    for (std::size_t row = 0; row < table.rowCount(); ++row)
        all.push_back(table.text(row, "awg"));
    return all;
}

std::optional<int> gaugeNumber(std::string_view gauge)
{
    if (!gauge.empty() && gauge.find_first_not_of('0') == std::string_view::npos)
        return 1 - int(gauge.size());
    const bool isOverNought = gauge.ends_with("/0");
    if (isOverNought)
        gauge.remove_suffix(2);
    const auto number = parseNumber<int>(gauge);
    if (!number || *number < 1 || *number > 40)
        return std::nullopt;
    return isOverNought ? 1 - *number : *number;
}

Result<WireRun, Message> wireRun(std::string_view gauge, double feet, double amps, Rating rating,
                                 double celsius)
{
    if (auto wrong = wrongIn(feet, amps, celsius))
        return *wrong;
    const auto wanted = gaugeNumber(gauge);
    const auto &table = WorkshopTable::named("wire_table_11_9");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (!wanted || gaugeNumber(table.text(row, "awg")) != wanted)
            continue;
        auto run = rowOf(table, row, rating);
        load(run, feet, amps, celsius);
        return run;
    }
    return Message{"The table has no wire size {0}; it has {1}.",
                   {std::string(gauge), fmt::format("{}", fmt::join(gauges(), ", "))}};
}

Result<WireRun, Message> thinnestWire(double feet, double amps, double mostDrop, Rating rating,
                                      double celsius)
{
    if (auto wrong = wrongIn(feet, amps, celsius))
        return *wrong;
    if (!std::isfinite(mostDrop) || mostDrop <= 0)
        return Message{"The drop that is allowed is above zero.", {}};
    const auto &table = WorkshopTable::named("wire_table_11_9");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        auto run = rowOf(table, row, rating);
        load(run, feet, amps, celsius);
        // A drop that is the limit itself is not refused for what arithmetic adds to it.
        if (run.most_amps >= amps && run.drop <= mostDrop * (1 + 1e-12))
            return run;
    }
    return Message{"No wire of the table carries {0} A over {1} ft with a drop of at most {2} V.",
                   {fmt::to_string(amps), fmt::to_string(feet), fmt::to_string(mostDrop)}};
}

std::vector<DropLimit> dropLimits()
{
    std::vector<DropLimit> limits;
    const auto &table = WorkshopTable::named("voltage_drop_limits");
    for (std::size_t row = 0; row < table.rowCount(); ++row)
        limits.push_back({table.number(row, "nominal_V").value(),
                          table.number(row, "continuous_V").value(),
                          table.number(row, "intermittent_V").value(), table.source(row)});
    return limits;
}

std::vector<CrimpPull> crimpPulls(std::string_view gauge)
{
    std::vector<CrimpPull> pulls;
    const auto wanted = gaugeNumber(gauge);
    const auto &table = WorkshopTable::named("crimp_pull");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (wanted && gaugeNumber(table.text(row, "awg")) == wanted)
            pulls.push_back({table.text(row, "basis"), table.number(row, "min_pull_lb").value(),
                             table.source(row)});
    }
    return pulls;
}

std::optional<StrandLimit> strandLimit(std::string_view gauge)
{
    const auto wanted = gaugeNumber(gauge);
    const auto &table = WorkshopTable::named("nicked_strands");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const auto sizes = span(table.text(row, "awg"));
        if (wanted && sizes && *wanted <= sizes->first && *wanted >= sizes->second)
            return StrandLimit{table.text(row, "strands"), table.number(row, "max_nicked").value(),
                               table.number(row, "max_broken").value(), table.source(row)};
    }
    return std::nullopt;
}

} // namespace lastrivet::workshop
