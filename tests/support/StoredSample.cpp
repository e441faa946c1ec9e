// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/StoredSample.h"

#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace lastrivet::test {

namespace fs = std::filesystem;

namespace {

const fs::path samples = fs::path(LASTRIVET_SOURCE) / "tests/storage-samples";

std::string textOf(const fs::path &file)
{
    std::ostringstream text;
    text << std::ifstream(file, std::ios::binary).rdbuf();
    return text.str();
}

} // namespace

std::vector<std::string> storedSamples()
{
    std::vector<std::string> names;
    for (const auto &entry : fs::directory_iterator(samples)) {
        if (entry.is_directory())
            names.push_back(entry.path().filename().string());
    }
    std::ranges::sort(names);
    return names;
}

StoredSample::StoredSample(const std::string &name)
    : m_source(samples / name)
{
    for (const auto *kept : {"documents", "backups", "photos"})
        fs::create_directories(m_folder / kept);
    fs::copy(m_source / "photos", m_folder / "photos", fs::copy_options::recursive);
    SQLite::Database made((m_folder / "records.db").string(),
                          SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    made.exec(textOf(m_source / "records.sql"));
}

std::string StoredSample::exported() const
{
    return textOf(m_source / "export.json");
}

} // namespace lastrivet::test
