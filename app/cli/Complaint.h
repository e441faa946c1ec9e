// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>
#include <vector>

namespace lastrivet::cli {

/// The command line names something that there is not, or says what makes no sense.
class WrongUsage : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// An input that is invalid, or a change that the records do not allow: one line per reason.
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
