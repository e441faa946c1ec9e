// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/FileImport.h"

#include "core/evidence/MediaFile.h"
#include "core/evidence/UnnamedFiles.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/FileSum.h"
#include "core/evidence/files/NewFile.h"
#include "core/exchange/PlainRecords.h"
#include "core/records/Designation.h"

#include <algorithm>
#include <system_error>
#include <tuple>

namespace lastrivet::exchange {

namespace {

namespace fs = std::filesystem;

/// Asked of the system: it depends on the disk.
bool isTooLong(const fs::path &file)
{
    std::error_code error;
    std::ignore = fs::symlink_status(file, error);
    return error == std::errc::filename_too_long;
}

std::optional<Message> wrongName(const Media &media, const fs::path &source, const fs::path &target)
{
    const bool isOurs = isOwnPaper(media.file);
    if (!isOurs && evidence::locate(source, media) && evidence::locate(target, media))
        return std::nullopt;
    if (isTooLong(source / media.file) || isTooLong(target / media.file))
        return Message{"The file name is longer than the disk allows; most end at 255 bytes.", {}};
    if (!isOurs && evidence::mayNameFile(media.file))
        return Message{"The file name leads out of the document's folder.", {}};
    return Message{"The file name is not one that a file of a project may have.", {}};
}

Message isAnother(const std::string &hash)
{
    return {"The file is not the one that the record describes; its SHA-256 is {0}.", {hash}};
}

Message isTaken()
{
    return {"The project has another file of this name.", {}};
}

/// Of a record that came with an earlier import, and whose file the project has lost since.
Message cannotReplace(const std::string &hash, const Media &media)
{
    return {"The project lacks this file, and the one beside the document is another: its SHA-256 "
            "is {0}, the one on record {1}. Nothing was taken in; put the right file there, or "
            "take this one away.",
            {hash, media.sha256}};
}

/// Of a record that came with an earlier import.
Message differs()
{
    return {"The project has this file with other content than the one beside the document, and no "
            "SHA-256 on record says which is right. Nothing was taken in, and both are as they "
            "were; take away the one that is wrong.",
            {}};
}

/// Calls `body` with each file record among those that are added and those that are known, and
/// whether it is known; stops after enough errors.
template <class Body>
InputErrors eachFile(std::vector<RecordRef> records, const std::vector<RecordRef> &known,
                     const ImportPlan &plan, const ImportDocument &document, Body &&body)
{
    const std::size_t added = records.size();
    records.insert(records.end(), known.begin(), known.end());
    InputErrors errors;
    for (std::size_t i = 0; i < records.size(); ++i) {
        const RecordRef record = records[i];
        if (record.type != RecordType::Media || errors.size() == mostErrors)
            continue;
        const auto &media = *plan.merged.find(Id<Media>{record.id});
        if (std::optional<Message> wrong = body(media, i >= added))
            errors.push_back({document.pointerTo(record) + "/file",
                              designation(plan.merged, record), std::move(*wrong)});
    }
    return errors;
}

} // namespace

FileImport::FileImport(fs::path source, fs::path target)
    : m_source(source.empty() ? fs::path(".") : std::move(source))
    , m_target(std::move(target))
{
}

FileImport::~FileImport()
{
    // After a fault the records may name them nevertheless.
    evidence::removeUnnamed(m_target, m_made);
}

InputErrors FileImport::check(const ImportPlan &plan, const DocumentReading &reading) const
{
    const auto body = [&](const Media &media, bool isKnown) -> std::optional<Message> {
        // What is wrong with these is said already.
        if (media.file.empty() || reading.faulty.contains({RecordType::Media, media.id.value()}))
            return std::nullopt;
        if (auto wrong = wrongName(media, m_source, m_target))
            return wrong;
        try {
            return wrongContent(media, isKnown);
        } catch (const evidence::FileFault &fault) {
            return fault.message();
        }
    };
    return eachFile(plan.added, incomplete(plan), plan, reading.document, body);
}

bool FileImport::mayLack(const Media &media) const
{
    if (!evidence::mayNameFile(media.file))
        return false;
    std::error_code none;
    return fs::exists(m_target / media.file, none) ? media.sha256.empty()
                                                   : fs::exists(m_source / media.file, none);
}

std::vector<RecordRef> FileImport::incomplete(const ImportPlan &plan) const
{
    std::vector<RecordRef> found;
    for (const RecordRef &record : plan.known_files) {
        const Media &media = *plan.merged.find(Id<Media>{record.id});
        if (media.withdrawn_on || !mayLack(media))
            continue;
        const auto from = evidence::locate(m_source, media);
        const auto to = evidence::locate(m_target, media);
        std::error_code ignored;
        const bool isLost =
            from && to && !fs::exists(*to, ignored) && fs::is_regular_file(*from, ignored);
        const bool isUnknown =
            from && to && media.sha256.empty() && fs::is_regular_file(*to, ignored);
        if (isLost || isUnknown)
            found.push_back(record);
    }
    return found;
}

std::optional<Message> FileImport::wrongContent(const Media &media, bool isKnown) const
{
    const auto from = evidence::locate(m_source, media);
    const auto to = evidence::locate(m_target, media);
    std::error_code ignored;
    if (!from || !to || !fs::exists(*from, ignored))
        return std::nullopt;
    const std::string hash = evidence::sumOf(evidence::SourceFile{*from});
    if (!media.sha256.empty() && media.sha256 != hash)
        return isKnown ? cannotReplace(hash, media) : isAnother(hash);
    if (fs::exists(*to, ignored) && evidence::sumOf(evidence::SourceFile{*to}) != hash)
        return isKnown ? differs() : isTaken();
    return std::nullopt;
}

InputErrors FileImport::copy(const ImportPlan &plan, const ImportDocument &document)
{
    auto errors =
        eachFile(plan.added, incomplete(plan), plan, document,
                 [this](const Media &media, bool isKnown) { return copyFile(media, isKnown); });
    for (const fs::path &folder : m_folders)
        evidence::settleFolder(folder);
    return errors;
}

std::optional<Message> FileImport::copyFile(const Media &media, bool isKnown)
{
    if (auto wrong = wrongName(media, m_source, m_target))
        return wrong;
    const fs::path from = *evidence::locate(m_source, media);
    const fs::path to = *evidence::locate(m_target, media);
    std::error_code ignored;
    const bool isThere = fs::exists(to, ignored);
    const bool isGiven = fs::exists(from, ignored);
    if (!isGiven && !isThere)
        m_missing.push_back(media.file);
    // Where capitals and small letters are one, it may be the file of another record.
    std::optional<Message> wrong;
    if (isGiven)
        wrong = isThere ? wrongContent(media, isKnown) : copyNew(media, from, to);
    if (!wrong && media.sha256.empty() && fs::is_regular_file(to, ignored)) {
        const evidence::SourceFile file{to};
        m_facts[media.id.value()] = {evidence::sumOf(file), std::int64_t(file.size())};
    }
    return wrong;
}

std::optional<Message> FileImport::copyNew(const Media &media, const fs::path &from,
                                           const fs::path &to)
{
    evidence::makeFolder(m_target, fs::path(media.file).parent_path());
    evidence::NewFile target{to.parent_path(), media.file};
    const std::string hash =
        evidence::sumOf(evidence::SourceFile{from}, [&](auto bytes) { target.write(bytes); });
    if (!media.sha256.empty() && media.sha256 != hash)
        return isAnother(hash);
    target.settle();
    if (!target.publish(to.filename().string()))
        return isTaken();
    m_made.push_back(media.file);
    m_folders.insert(to.parent_path());
    ++m_copied;
    return std::nullopt;
}

bool FileImport::describe(Media &media) const
{
    const auto facts = m_facts.find(media.id.value());
    if (facts == m_facts.end())
        return false;
    media.sha256 = facts->second.sha256;
    if (!media.bytes)
        media.bytes = facts->second.bytes;
    return true;
}

} // namespace lastrivet::exchange
