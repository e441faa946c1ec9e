// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Repair.h"

#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/base/WriteFailure.h"
#include "core/evidence/PictureCache.h"
#include "core/project/ReadOnlyReason.h"
#include "core/storage/Integrity.h"
#include "core/storage/Opening.h"
#include "core/storage/RecordReader.h"
#include "core/storage/Schema.h"
#include "core/storage/SearchIndex.h"
#include "core/storage/Transaction.h"
#include "core/verify/Checks.h"
#include "core/verify/Leftovers.h"

#include <exception>
#include <string>
#include <thread>
#include <utility>

namespace lastrivet {

namespace {

namespace fs = std::filesystem;

/// The workshop's time zone.
std::string zoneOf(const storage::Opening &opening)
{
    try {
        Records records;
        storage::RecordReader(opening.database->sql()).read(records, RecordType::Project);
        return records.project.time_zone;
    } catch (const std::exception &) {
        // What is damaged is told when somebody can mend it.
        return "UTC";
    }
}

storage::Opening openToMend(const storage::ProjectFolder &folder, Writer writer)
{
    if (writer == Writer::ThisProgram) {
        storage::Opening opening;
        opening.database = std::make_unique<storage::Database>(
            folder.database(), storage::Database::Access::ReadWrite, folder.safety());
        return opening;
    }
    auto opening = storage::openDatabase(folder, false, SystemClock{}.now());
    if (opening.readOnly) {
        const auto reason = readOnlyReason(opening, zoneOf(opening));
        throw NotWritable(Message{"Nothing was mended. {0}", {nested(*reason)}});
    }
    return opening;
}

class Mending {
public:
    Mending(const storage::ProjectFolder &folder, storage::Database &database, Repair &repair)
        : m_folder(folder)
        , m_database(database)
        , m_repair(repair)
    {
    }

    void mendAll(const std::stop_token &stop)
    {
        // What is made from damaged records would only hide the damage.
        if (!storage::damagesOf(m_database).empty()) {
            tell({"The database is damaged, so nothing was made from it: restore a backup.", {}});
            return;
        }
        const auto records = storage::RecordReader(m_database.sql()).readAll();
        removeLeftovers(records);
        makeSearch(records);
        makePictures(records, stop);
    }

private:
    void tell(Message sentence) { m_repair.done.push_back(std::move(sentence)); }

    void removeLeftovers(const Records &records)
    {
        const auto named = verify_detail::namedFiles(records, m_database);
        for (const auto &file : verify_detail::leftovers(m_folder, named)) {
            std::error_code failure;
            const auto name = file.lexically_relative(m_folder.root()).generic_string();
            if (fs::remove(file, failure))
                tell({"Removed the half-written file {0}.", {name}});
            else
                tell({"{0} could not be removed: {1}.", {name, whyNotWritten(failure.value())}});
        }
    }

    void makeSearch(const Records &records)
    {
        storage::SearchIndex index(m_database);
        const auto wrong = index.outOfStep(records).size();
        storage::Transaction transaction(m_database);
        index.rebuild(records);
        transaction.commit();
        tell({"Made the search index anew; {0} of its rows were wrong.", {std::to_string(wrong)}});
    }

    void makePictures(const Records &records, const std::stop_token &stop)
    {
        std::vector<Media> photos;
        for (const auto &media : records.media) {
            if (media.kind == MediaKind::Photo && !media.withdrawn_on)
                photos.push_back(media);
        }
        const evidence::PictureCache cache(m_folder.root());
        cache.wipe();
        std::size_t made = 0;
        const auto count = [&](const Media &, const std::optional<Message> &failure) {
            made += !failure;
            if (failure)
                tell(*failure);
        };
        cache.makeMissing(photos, std::thread::hardware_concurrency(), count, stop);
        tell({"Made the small copies of {0} of {1} photos anew.",
              {std::to_string(made), std::to_string(photos.size())}});
    }

    const storage::ProjectFolder &m_folder;
    storage::Database &m_database;
    Repair &m_repair;
};

} // namespace

Repair repair(const fs::path &root, std::stop_token stop, Writer writer)
{
    const storage::ProjectFolder folder(root);
    Repair repair;
    try {
        storage::withFaults([&] {
            const auto opening = openToMend(folder, writer);
            Mending(folder, *opening.database, repair).mendAll(stop);
        });
    } catch (const UnreadableInput &fault) {
        // No project at all, or of a newer program, ends here; other damage is told below.
        storage::requireProject(folder.root(), folder.database());
        repair.done.push_back({"Nothing more could be mended: {0}", {nested(fault.message())}});
    }
    repair.after = verify(root, stop);
    return repair;
}

} // namespace lastrivet
