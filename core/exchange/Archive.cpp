// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/Archive.h"

#include "core/base/Sha256.h"
#include "core/base/TemporaryFolder.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/FileSum.h"
#include "core/exchange/DocumentWriter.h"
#include "core/exchange/WholeFile.h"
#include "core/storage/DatabaseCopies.h"
#include "core/storage/Opening.h"
#include "core/storage/RecordReader.h"

#include <set>
#include <sstream>

namespace lastrivet::exchange {

namespace {

namespace fs = std::filesystem;

/// The contents of an archive, gathered until it is written.
class Contents {
public:
    Contents(const fs::path &place, const fs::path &named,
             std::chrono::sys_time<std::chrono::milliseconds> made)
        : m_zip(place, named, made)
    {
    }

    void addDocument(const Records &records)
    {
        std::ostringstream stream;
        writeDocument(records, stream);
        m_document = std::move(stream).str();
        const auto bytes = reinterpret_cast<const std::uint8_t *>(m_document.data());
        m_manifest += evidence::sumLine(sha256({bytes, m_document.size()}), "records.json");
        m_zip.addText("records.json", m_document);
    }

    /// The sum of its bytes.
    std::string addFile(const std::string &name, const fs::path &place)
    {
        std::string sum = evidence::sumOf(evidence::SourceFile(place));
        m_zip.addFile(name, place);
        m_manifest += evidence::sumLine(sum, name);
        return sum;
    }

    bool finish(const ZipFile::OnProgress &onProgress)
    {
        m_zip.addText("SHA256SUMS", m_manifest);
        return m_zip.finish(onProgress);
    }

private:
    // Longer than the archive, which reads them at the end.
    std::string m_document;
    std::string m_manifest;
    ZipFile m_zip;
};

/// Somebody did not want the archive any more.
struct Ended {};

bool isFile(const fs::path &place)
{
    std::error_code none;
    return fs::is_regular_file(place, none);
}

void addFiles(Contents &contents, const Records &records, const fs::path &folder,
              ArchiveReport &report)
{
    // The program's own page is in the archive already, should a record name it.
    std::set<std::string> done{"photos-of-part.sql"};
    for (const Media &media : records.media) {
        // Two spellings of one name would be two entries for one place.
        const std::string name = fs::path(media.file).lexically_normal().generic_string();
        if (name.empty() || !done.insert(name).second)
            continue;
        const auto place = evidence::locate(folder, media);
        if (!place || !isFile(*place)) {
            report.missing.push_back(media.file);
            continue;
        }
        const std::string sum = contents.addFile(name, *place);
        if (!media.sha256.empty() && sum != media.sha256)
            report.altered.push_back(media.file);
        ++report.files;
    }
}

} // namespace

std::optional<ArchiveReport> writeArchive(const fs::path &projectFolder, const fs::path &file,
                                          std::chrono::sys_time<std::chrono::milliseconds> now,
                                          const ZipFile::OnProgress &onProgress)
{
    return storage::withFaults([&]() -> std::optional<ArchiveReport> {
        const storage::ProjectFolder folder(projectFolder);
        const TemporaryFolder between;
        const fs::path database = between / "records.db";
        const auto source = storage::openDatabase(folder, true, now);
        storage::copyVerified(*source.database, database);
        fs::last_write_time(database, std::chrono::file_clock::from_sys(now));
        const storage::Database copy(database, storage::Database::Access::Immutable,
                                     storage::Database::Safety::RollbackJournal);
        const Records records = storage::RecordReader(copy.sql()).readAll();
        ArchiveReport report;
        const auto write = [&](const fs::path &unfinished) {
            Contents contents(unfinished, file, now);
            for (const char *page : {"READ-ME-FIRST.txt", "photos-of-part.sql"}) {
                if (isFile(projectFolder / page))
                    contents.addFile(page, projectFolder / page);
            }
            contents.addFile("records.db", database);
            contents.addDocument(records);
            addFiles(contents, records, projectFolder, report);
            if (!contents.finish(onProgress))
                throw Ended{};
        };
        try {
            makeWholeFile(file, write);
        } catch (const Ended &) {
            return std::nullopt;
        }
        return report;
    });
}

} // namespace lastrivet::exchange
