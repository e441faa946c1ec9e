// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

namespace lastrivet::storage {

/// By what the operating system tells files apart, whatever their paths are.
struct FileIdentity {
    std::uint64_t device = 0;
    std::uint64_t number = 0;

    friend bool operator==(const FileIdentity &, const FileIdentity &) = default;
};

/// Empty when nothing is there, or it cannot be looked at.
std::optional<FileIdentity> identityOf(const std::filesystem::path &file);

} // namespace lastrivet::storage
