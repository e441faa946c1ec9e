// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Terminal.h"

#include "app/cli/PlainText.h"

namespace lastrivet::cli {

void Terminal::complain(std::string_view text)
{
    m_err << "lastrivet-cli: " << onOneLine(text) << '\n';
}

} // namespace lastrivet::cli
