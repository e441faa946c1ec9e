// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>
#include <vector>

namespace lastrivet::cli {

/// Thrown when the command line is wrong: it names something that does not exist, or makes no
/// sense.
class WrongUsage : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// Thrown for an invalid input and for a change that is refused; one line per reason.
class Invalid : public std::runtime_error {
public:
    explicit Invalid(std::vector<std::string> lines)
        : std::runtime_error(lines.empty() ? std::string() : lines.front())
        , m_lines(std::move(lines))
    {
    }

    const std::vector<std::string> &lines() const { return m_lines; }

private:
    std::vector<std::string> m_lines;
};

} // namespace lastrivet::cli
