// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"
#include "core/base/Sha256.h"
#include "tests/support/TestProject.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

namespace lastrivet::test {

inline void write(const std::filesystem::path &file, std::string_view text)
{
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << text;
}

inline std::string read(const std::filesystem::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

inline std::string hashOf(std::string_view text)
{
    return sha256({reinterpret_cast<const std::uint8_t *>(text.data()), text.size()});
}

/// A project with a part, and a shelf for its backups.
class Shelved {
public:
    Shelved() { m_project.part("Left wing"); }

    TestProject &project() { return m_project; }
    const std::filesystem::path &shelf() const { return m_shelf.path(); }
    std::filesystem::path place() const { return shelf() / "Test.lastrivet"; }

    void photo(const std::string &name, std::string_view content)
    {
        write(m_project.folder() / name, content);
        m_project.change("Photo " + name, [&](Edit &edit) {
            Media media;
            media.kind = MediaKind::Photo;
            media.file = name;
            media.sha256 = hashOf(content);
            media.bytes = std::int64_t(content.size());
            edit.put(media);
        });
    }
    backup::Report backUp(backup::Reading reading = backup::Reading::NewFiles)
    {
        return *backup::backUp(m_project.folder(), shelf(), m_project.clock().now(), reading);
    }
    backup::Report restore(const std::filesystem::path &from, const std::filesystem::path &to)
    {
        return *backup::restore(from, to, m_project.clock().now());
    }

private:
    TestProject m_project;
    TemporaryFolder m_shelf;
};

} // namespace lastrivet::test
