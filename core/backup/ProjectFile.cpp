// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/ProjectFile.h"

#include "core/exchange/PlainRecords.h"
#include "core/storage/FilesNamed.h"
#include "core/storage/ProjectFolder.h"

#include <set>

namespace lastrivet::backup {

namespace fs = std::filesystem;

namespace {

std::uint64_t sizeOf(const fs::path &file)
{
    std::error_code none;
    const auto size = fs::file_size(file, none);
    return none ? 0 : size;
}

/// Collects files in the order found, each once.
class Gathering {
public:
    explicit Gathering(fs::path project)
        : m_project(std::move(project))
    {
    }

    void add(ProjectFile file)
    {
        if (file.name.empty() || !m_names.insert(file.name).second)
            return;
        if (file.bytes == 0)
            file.bytes = sizeOf(m_project / file.name);
        m_files.push_back(std::move(file));
    }
    void addNamed(const Records &records)
    {
        for (const Media &media : records.media)
            add({storage::fileName(media.file), media.sha256,
                 std::uint64_t(media.bytes.value_or(0))});
    }
    void addFound(const fs::path &folder)
    {
        std::error_code failure;
        for (fs::recursive_directory_iterator at(folder, failure), end; !failure && at != end;
             at.increment(failure)) {
            const bool isHidden = at->path().filename().string().starts_with(".");
            const auto type = at->symlink_status(failure).type();
            if (isHidden && type == fs::file_type::directory)
                at.disable_recursion_pending();
            else if (!isHidden && type == fs::file_type::regular)
                add({at->path().lexically_relative(m_project).generic_string(), {}, 0});
        }
    }

    std::vector<ProjectFile> take() { return std::move(m_files); }

private:
    fs::path m_project;
    std::set<std::string> m_names;
    std::vector<ProjectFile> m_files;
};

} // namespace

std::vector<ProjectFile> allFiles(const Records &records, const fs::path &project)
{
    Gathering files(project);
    files.addNamed(records);
    const storage::ProjectFolder folder(project);
    files.addFound(folder.photos());
    files.addFound(folder.documents());
    files.addFound(project / "lists");
    if (fs::is_regular_file(exchange::logbookIn(project)))
        files.add({exchange::logbookIn(project).filename().string(), {}, 0});
    return files.take();
}

std::vector<ProjectFile> namedFiles(const Records &records, storage::Database &database,
                                    const fs::path &project)
{
    Gathering files(project);
    files.addNamed(records);
    for (const std::string &name : storage::filesEverNamed(database)) {
        std::error_code none;
        if (fs::is_regular_file(project / name, none))
            files.add({name, {}, 0});
    }
    return files.take();
}

} // namespace lastrivet::backup
