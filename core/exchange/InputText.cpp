// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/InputText.h"

#include "core/base/Error.h"

#include <fmt/format.h>

#include <fstream>
#include <sstream>
#include <system_error>

namespace lastrivet::exchange {

std::string readInputFile(const std::filesystem::path &file)
{
    std::error_code error;
    if (!std::filesystem::exists(file, error))
        throw UnreadableInput(fmt::format("{} is not there.", file.string()));
    if (std::filesystem::is_directory(file, error))
        throw UnreadableInput(fmt::format("{} is a folder, not a file.", file.string()));
    std::ifstream in(file, std::ios::binary);
    std::ostringstream content;
    content << in.rdbuf();
    auto text = std::move(content).str();
    if (!in)
        throw UnreadableInput(fmt::format("{} cannot be read.", file.string()));
    if (text.starts_with("\xEF\xBB\xBF"))
        text.erase(0, 3);
    return text;
}

} // namespace lastrivet::exchange
