// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/ImportPlan.h"

#include <cstdint>
#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace lastrivet::exchange {

/// Copies the files of imported records from beside their document into a project folder.
///
/// Refuses names that lead out of either folder, or to the project's own files. Removes its copies
/// again unless they are kept. Throws `Fault`s of the disk.
class FileImport {
public:
    FileImport(std::filesystem::path source, std::filesystem::path target);
    ~FileImport();
    FileImport(const FileImport &) = delete;
    FileImport &operator=(const FileImport &) = delete;

    /// What is wrong with the files of added records, and of known ones that lack theirs: their
    /// names and what is in them. Nothing is copied, and the target need not be there yet.
    InputErrors check(const ImportPlan &plan, const DocumentReading &reading) const;
    /// Copies the files that were checked, durably; answers what has become wrong since.
    InputErrors copy(const ImportPlan &plan, const ImportDocument &document);
    /// Adds hash and length of its file to a record that came without them; after `copy`. False
    /// when nothing was added.
    bool describe(Media &media) const;
    /// The records are stored: the copies stay.
    void keep() { m_made.clear(); }

    std::size_t copied() const { return m_copied; }
    /// Names of files that lie neither beside the document nor in the project.
    const std::vector<std::string> &missing() const { return m_missing; }

private:
    struct FileFacts {
        std::string sha256;
        std::int64_t bytes = 0;
    };

    /// False when the record certainly lacks nothing. A quick check first, because resolving the
    /// path of every file of a large project takes a minute.
    bool mayLack(const Media &media) const;
    /// Known records whose files lie beside the document and not in the project, or in it without a
    /// sum on record.
    std::vector<RecordRef> incomplete(const ImportPlan &plan) const;
    /// `isKnown`: the record came with an earlier import.
    std::optional<Message> wrongContent(const Media &media, bool isKnown) const;
    std::optional<Message> copyFile(const Media &media, bool isKnown);
    std::optional<Message> copyNew(const Media &media, const std::filesystem::path &from,
                                   const std::filesystem::path &to);

    std::filesystem::path m_source;
    std::filesystem::path m_target;
    /// As records name them.
    std::vector<std::string> m_made;
    std::set<std::filesystem::path> m_folders;
    std::size_t m_copied = 0;
    std::vector<std::string> m_missing;
    std::map<std::int64_t, FileFacts> m_facts;
};

} // namespace lastrivet::exchange
