// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/InputText.h"

#include "core/base/Error.h"
#include "core/base/WriteFailure.h"

#include <cerrno>
#include <fstream>
#include <system_error>
#include <vector>

namespace lastrivet::exchange {

namespace {

/// Ten times what ten lifetimes of records take; a device or a pipe may never end.
constexpr std::size_t longest = std::size_t{1} << 30;

[[noreturn]] void refuseLength(const std::filesystem::path &file)
{
    throw UnreadableInput(Message{"{0} is longer than any list of records.", {file.string()}});
}

std::string readAll(std::istream &in, const std::filesystem::path &file)
{
    std::string text;
    std::vector<char> block(std::size_t{1} << 20);
    while (in.read(block.data(), std::streamsize(block.size())) || in.gcount() > 0) {
        text.append(block.data(), std::size_t(in.gcount()));
        if (text.size() > longest)
            refuseLength(file);
    }
    if (!in.eof())
        throw UnreadableInput(Message{"{0} cannot be read.", {file.string()}});
    return text;
}

} // namespace

std::string readInputFile(const std::filesystem::path &file)
{
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (!std::filesystem::status_known(status))
        throw UnreadableInput(
            Message{"{0} cannot be read: {1}.", {file.string(), whyNotRead(error.value())}});
    if (!std::filesystem::exists(status))
        throw UnreadableInput(Message{"{0} is not there.", {file.string()}});
    if (std::filesystem::is_directory(status))
        throw UnreadableInput(Message{"{0} is a folder, not a file.", {file.string()}});
    if (const auto size = std::filesystem::file_size(file, error); !error && size > longest)
        refuseLength(file);
    errno = 0;
    std::ifstream in(file, std::ios::binary);
    if (!in)
        throw UnreadableInput(
            Message{"{0} cannot be read: {1}.", {file.string(), whyNotRead(errno)}});
    auto text = readAll(in, file);
    if (text.starts_with("\xEF\xBB\xBF"))
        text.erase(0, 3);
    return text;
}

} // namespace lastrivet::exchange
