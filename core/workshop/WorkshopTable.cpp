// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/WorkshopTable.h"

#include "core/base/Error.h"
#include "core/base/ParseNumber.h"
#include "core/exchange/csv/CsvTable.h"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
#include <map>
#include <mutex>

namespace lastrivet::workshop {

namespace {

namespace fs = std::filesystem;

fs::path folder()
{
    std::error_code none;
    const fs::path ours = fs::path(LASTRIVET_RESOURCES) / "tables";
    return fs::is_directory(ours, none) ? ours : fs::path("/usr/share/lastrivet/tables");
}

} // namespace

const WorkshopTable &WorkshopTable::named(std::string_view name)
{
    static std::mutex mutex;
    static std::map<std::string, WorkshopTable, std::less<>> tables;
    const std::lock_guard lock(mutex);
    const auto known = tables.find(name);
    return known != tables.end() ? known->second
                                 : tables.emplace(std::string(name), read(name)).first->second;
}

std::vector<std::string> WorkshopTable::names()
{
    std::vector<std::string> names;
    std::error_code none;
    for (const auto &entry : fs::directory_iterator(folder(), none)) {
        if (entry.path().extension() == ".csv")
            names.push_back(entry.path().stem().string());
    }
    std::sort(names.begin(), names.end());
    return names;
}

WorkshopTable WorkshopTable::read(std::string_view name)
{
    const auto file = folder() / fmt::format("{}.csv", name);
    std::ifstream stream(file, std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(stream), {}};
    auto table = stream ? exchange::readCsv(text) : exchange::InputErrors{};
    if (!table)
        throw UnreadableInput(Message{"The workshop table {0} could not be read; it should be {1}.",
                                      {std::string(name), file.string()}});
    WorkshopTable made;
    made.m_name = name;
    made.m_columns = std::move(table->header);
    made.m_rows = std::move(table->rows);
    for (auto &row : made.m_rows)
        row.resize(made.m_columns.size());
    return made;
}

const std::string &WorkshopTable::text(std::size_t row, std::string_view column) const
{
    static const std::string nothing;
    const auto found = std::find(m_columns.begin(), m_columns.end(), column);
    return found == m_columns.end() ? nothing
                                    : m_rows.at(row)[std::size_t(found - m_columns.begin())];
}

std::optional<double> WorkshopTable::number(std::size_t row, std::string_view column) const
{
    return parseNumber<double>(text(row, column));
}

Source WorkshopTable::source(std::size_t row) const
{
    return {text(row, "source"), text(row, "verified")};
}

} // namespace lastrivet::workshop
