// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::test {

/// A picture that make_pictures.py makes, once per run.
std::filesystem::path testPicture(std::string_view name);

std::string readText(const std::filesystem::path &file);
std::vector<std::uint8_t> readBytes(const std::filesystem::path &file);
void writeText(const std::filesystem::path &file, std::string_view content);

/// What a command writes to its standard output, without the last line end; throws when it fails.
std::string outputOf(const std::string &command);

/// A HEIC of this size with a red left half and the Exif block of make_pictures.py.
void writeHeic(const std::filesystem::path &file, int width, int height);

} // namespace lastrivet::test
