// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/TemporaryFolder.h"

#include <filesystem>
#include <string>
#include <vector>

namespace lastrivet::test {

/// The folders of `tests/storage-samples`, by name.
std::vector<std::string> storedSamples();

/// A project as an earlier version of the program left it, in a folder of its own.
class StoredSample {
public:
    explicit StoredSample(const std::string &name);

    const std::filesystem::path &folder() const { return m_folder; }
    /// What the program of that time exported.
    std::string exported() const;

private:
    std::filesystem::path m_source;
    lastrivet::TemporaryFolder m_temporary;
    std::filesystem::path m_folder = m_temporary.path() / "Sample.lastrivet";
};

} // namespace lastrivet::test
