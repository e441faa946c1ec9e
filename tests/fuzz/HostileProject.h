// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/TemporaryFolder.h"

#include <cstdint>
#include <filesystem>
#include <vector>

namespace lastrivet::fuzz {

/// A project whose database a stranger got hold of.
class HostileProject {
public:
    /// As our own program left it.
    HostileProject();

    static const std::vector<std::uint8_t> &soundDatabase();

    std::filesystem::path database() const { return m_folder / "P" / "records.db"; }
    void writeDatabase(const std::vector<std::uint8_t> &bytes) const;

    /// Opens it, reads all there is, answers the usual questions, verifies, changes and undoes. A
    /// complaint of the program is an answer; anything else ends it.
    void use() const;

private:
    TemporaryFolder m_folder;
};

} // namespace lastrivet::fuzz
