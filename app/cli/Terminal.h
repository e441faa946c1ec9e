// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>
#include <string_view>

namespace lastrivet::cli {

/// Where a verb writes: answers to one stream, complaints and warnings to the other.
class Terminal {
public:
    Terminal(std::ostream &out, std::ostream &err)
        : m_out(out)
        , m_err(err)
    {
    }

    std::ostream &out() { return m_out; }
    /// One line on the error stream, whatever the text holds.
    void complain(std::string_view text);

private:
    std::ostream &m_out;
    std::ostream &m_err;
};

} // namespace lastrivet::cli
