// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/IncomingFile.h"

#include <cstdint>
#include <filesystem>
#include <string>

namespace lastrivet::faults {

/// What comes to a project from outside: a camera's files and documents to import, no two alike,
/// in a folder of their own. Two supplies of different `series` have nothing in common.
class Supplies {
public:
    Supplies(std::filesystem::path folder, std::int64_t series);

    const std::filesystem::path &folder() const { return m_folder; }

    evidence::IncomingFile photo();
    evidence::IncomingFile sheet();
    /// A document with one part of its own, `sessions` days of work on it and a photo of it.
    std::filesystem::path document(int sessions);
    int next() { return ++m_count; }

private:
    std::string unlike(std::string content);

    std::filesystem::path m_folder;
    std::int64_t m_series;
    std::string m_picture;
    int m_count = 0;
};

} // namespace lastrivet::faults
