// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvTable.h"

#include "core/base/Utf8.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace lastrivet::exchange {

namespace {

/// Some hundred thousand rows of a wide list; a short text of commas and line ends could be made to
/// fill any memory.
constexpr std::size_t mostCells = 5'000'000;

/// Takes cells off the front of a text.
class Scanner {
public:
    Scanner(std::string_view text, char separator)
        : m_text(text)
        , m_separator(separator)
    {
    }

    bool isAtEnd() const { return m_place == m_text.size(); }

    /// Whether the last row was given up because no list has as many cells.
    bool isTooWide() const { return m_isTooWide; }

    /// The cells of a row; empty when a quotation is not closed or goes on after its end, or when
    /// there are too many.
    std::optional<std::vector<std::string>> row()
    {
        std::vector<std::string> cells;
        do {
            m_isTooWide = cells.size() == mostCells;
            if (m_isTooWide)
                return std::nullopt;
            auto cell = startsWith('"') ? quoted() : plain();
            if (!cell)
                return std::nullopt;
            cells.push_back(std::move(*cell));
        } while (take(m_separator));
        if (isAtEnd() || take('\n') || (take('\r') && (take('\n') || true)))
            return cells;
        return std::nullopt;
    }

private:
    bool startsWith(char c) const { return !isAtEnd() && m_text[m_place] == c; }
    bool take(char c)
    {
        const bool isThere = startsWith(c);
        m_place += isThere;
        return isThere;
    }

    std::optional<std::string> plain()
    {
        const auto begin = m_place;
        while (!isAtEnd() && !startsWith(m_separator) && !startsWith('\n') && !startsWith('\r'))
            ++m_place;
        return std::string(m_text.substr(begin, m_place - begin));
    }

    std::optional<std::string> quoted()
    {
        std::string cell;
        take('"');
        while (!isAtEnd()) {
            if (!take('"'))
                cell += m_text[m_place++];
            else if (take('"'))
                cell += '"';
            else
                return cell;
        }
        return std::nullopt;
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_place = 0;
    bool m_isTooWide = false;
};

char separatorOf(std::string_view text)
{
    const auto line = text.substr(0, text.find_first_of("\r\n"));
    const auto count = [line](char c) { return std::count(line.begin(), line.end(), c); };
    const char candidates[] = {',', ';', '\t'};
    return *std::max_element(std::begin(candidates), std::end(candidates),
                             [&](char a, char b) { return count(a) < count(b); });
}

InputErrors wrong(Message spot, Message what)
{
    return {errorAt(std::move(spot), std::move(what))};
}

std::optional<InputErrors> wrongText(std::string_view text)
{
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return wrong({}, {"The list is empty.", {}});
    if (const auto place = firstNotUtf8(text)) {
        const auto line = 1 + std::count(text.begin(), text.begin() + std::ptrdiff_t(*place), '\n');
        Message what{"The text is no UTF-8.", {}};
        return wrong({"line {0}", {std::to_string(line)}}, std::move(what));
    }
    if (text.find('\0') != std::string_view::npos)
        return wrong({}, {"The character U+0000 is not allowed in a text.", {}});
    return std::nullopt;
}

} // namespace

Message rowName(std::size_t row)
{
    return {"row {0}", {std::to_string(row)}};
}

Result<CsvTable, InputErrors> readCsv(std::string_view text)
{
    if (auto errors = wrongText(text))
        return *errors;
    Scanner scanner{text, separatorOf(text)};
    CsvTable table;
    InputErrors errors;
    for (std::size_t number = 1; !scanner.isAtEnd(); ++number) {
        auto cells = scanner.row();
        if (!cells && scanner.isTooWide())
            return wrong(rowName(number),
                         {"The list has more than {0} cells.", {std::to_string(mostCells)}});
        if (!cells)
            return wrong(rowName(number),
                         {"A quotation mark opens a cell that does not end as it should.", {}});
        if (number == 1) {
            table.header = std::move(*cells);
            continue;
        }
        if (cells->size() > table.header.size() && errors.size() < mostErrors)
            errors.push_back(
                errorAt(rowName(number),
                        {"The row has {0} cells, but the header only {1}.",
                         {std::to_string(cells->size()), std::to_string(table.header.size())}}));
        if ((table.rows.size() + 1) * table.header.size() > mostCells)
            return wrong(rowName(number),
                         {"The list has more than {0} cells.", {std::to_string(mostCells)}});
        cells->resize(table.header.size());
        table.rows.push_back(std::move(*cells));
    }
    if (!errors.empty())
        return errors;
    return table;
}

} // namespace lastrivet::exchange
