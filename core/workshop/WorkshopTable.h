// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::workshop {

/// Where a number was published, and how far it was checked.
struct Source {
    std::string document;
    /// "read in two places", "read in one place", "computed", "from memory".
    std::string verified;

    bool isFromMemory() const { return verified.find("from memory") != std::string::npos; }

    friend bool operator==(const Source &, const Source &) = default;
};

/// A published table of the workshop, as it stands in `resources/tables`.
class WorkshopTable {
public:
    /// The table of this name. Throws `UnreadableInput` when it was not installed or is damaged.
    static const WorkshopTable &named(std::string_view name);
    /// The names of all tables, sorted.
    static std::vector<std::string> names();

    const std::string &name() const { return m_name; }
    const std::vector<std::string> &columns() const { return m_columns; }
    std::size_t rowCount() const { return m_rows.size(); }
    /// Empty where the table says nothing.
    const std::string &text(std::size_t row, std::string_view column) const;
    std::optional<double> number(std::size_t row, std::string_view column) const;
    Source source(std::size_t row) const;

private:
    static WorkshopTable read(std::string_view name);

    std::string m_name;
    std::vector<std::string> m_columns;
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace lastrivet::workshop
