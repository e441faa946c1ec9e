// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/Archive.h"

#include "core/base/Error.h"
#include "core/base/Sha256.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/FileSum.h"
#include "core/exchange/DocumentWriter.h"

#include <fmt/format.h>
#include <zip.h>

#include <memory>
#include <set>
#include <sstream>

namespace lastrivet::exchange {

namespace {

namespace fs = std::filesystem;

/// The archive being made; nothing of it stays unless it is finished.
class ZipFile {
public:
    explicit ZipFile(fs::path place)
        : m_place(std::move(place))
    {
        int error = 0;
        m_zip.reset(zip_open(m_place.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &error));
        if (!m_zip) {
            zip_error_t reason;
            zip_error_init_with_code(&reason, error);
            const std::string text = zip_error_strerror(&reason);
            zip_error_fini(&reason);
            fail(text);
        }
    }

    /// `text` must live until the archive is finished.
    void add(const std::string &name, const std::string &text)
    {
        add(name, zip_source_buffer(m_zip.get(), text.data(), text.size(), 0), ZIP_CM_DEFLATE);
    }
    /// Stored as it is: pictures are compressed already.
    void add(const std::string &name, const fs::path &file)
    {
        add(name, zip_source_file(m_zip.get(), file.c_str(), 0, -1), ZIP_CM_STORE);
    }

    void finish()
    {
        if (zip_close(m_zip.get()) != 0)
            fail(zip_strerror(m_zip.get()));
        m_zip.release();
    }

private:
    struct Discard {
        void operator()(zip_t *zip) const { zip_discard(zip); }
    };

    void add(const std::string &name, zip_source_t *source, int method)
    {
        const auto index =
            source ? zip_file_add(m_zip.get(), name.c_str(), source, ZIP_FL_ENC_UTF_8) : -1;
        if (index < 0) {
            zip_source_free(source);
            fail(zip_strerror(m_zip.get()));
        }
        zip_set_file_compression(m_zip.get(), zip_uint64_t(index), method, 0);
    }

    [[noreturn]] void fail(const std::string &why) const
    {
        throw NotSaved(fmt::format("{} could not be written: {}.", m_place.string(), why));
    }

    fs::path m_place;
    std::unique_ptr<zip_t, Discard> m_zip;
};

/// Adds the files that records name, and their lines to the manifest.
void addFiles(ZipFile &zip, std::string &manifest, const Records &records, const fs::path &folder,
              ArchiveReport &report)
{
    std::set<std::string> done;
    for (const Media &media : records.media) {
        if (media.file.empty() || !done.insert(media.file).second)
            continue;
        const auto place = evidence::locate(folder, media);
        std::error_code none;
        if (!place || !fs::is_regular_file(*place, none)) {
            report.missing.push_back(media.file);
            continue;
        }
        const std::string sum = evidence::sumOf(evidence::SourceFile(*place));
        if (!media.sha256.empty() && sum != media.sha256)
            report.altered.push_back(media.file);
        zip.add(media.file, *place);
        manifest += evidence::sumLine(sum, media.file);
        ++report.files;
    }
}

} // namespace

ArchiveReport writeArchive(const Records &records, const fs::path &projectFolder,
                           const fs::path &file)
{
    std::ostringstream stream;
    writeDocument(records, stream);
    const std::string document = std::move(stream).str();
    const auto bytes = reinterpret_cast<const std::uint8_t *>(document.data());
    std::string manifest = evidence::sumLine(sha256({bytes, document.size()}), "records.json");
    ArchiveReport report;
    ZipFile zip(file);
    zip.add("records.json", document);
    addFiles(zip, manifest, records, projectFolder, report);
    zip.add("SHA256SUMS", manifest);
    zip.finish();
    return report;
}

} // namespace lastrivet::exchange
