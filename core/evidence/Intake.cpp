// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/Intake.h"

#include "core/base/Sha256.h"
#include "core/base/WriteFailure.h"
#include "core/evidence/FileKind.h"
#include "core/evidence/KnownHashes.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/ReadableName.h"
#include "core/evidence/UnnamedFiles.h"
#include "core/evidence/Wholeness.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/FileSum.h"
#include "core/evidence/files/NewFile.h"
#include "core/evidence/files/SourceFile.h"
#include "core/evidence/pictures/Exif.h"
#include "core/evidence/pictures/PictureReader.h"
#include "core/evidence/pictures/Transform.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <functional>
#include <mutex>
#include <string>
#include <system_error>
#include <unordered_map>

namespace lastrivet::evidence {

namespace fs = std::filesystem;

namespace {

FileKind kindOf(const SourceFile &source)
{
    if (source.size() == 0)
        throw FileFault({"{0} is empty.", {source.name()}});
    std::array<std::uint8_t, sniffedBytes> beginning{};
    const std::size_t count = source.readAt(0, beginning);
    const auto kind = sniff(std::span(beginning).first(count));
    if (!kind)
        throw FileFault(
            {"{0} is not a photo (JPEG, PNG, HEIC), a video or a PDF.", {source.name()}});
    return *kind;
}

/// The fields of a row that are known before the file is opened.
Media beginRow(const IncomingFile &file, Moment now)
{
    Media media;
    media.taken_on = file.taken_on;
    media.imported_on = now;
    media.shows = file.shows;
    media.caption = file.caption;
    media.links = file.links;
    return media;
}

} // namespace

class Intake::Implementation {
public:
    Implementation(fs::path folder, const Records &records, Moment now)
        : m_folder(std::move(folder))
        , m_zone(records.project.time_zone)
        , m_now(now)
    {
        for (const Media &media : records.media) {
            if (media.withdrawn_on || media.sha256.empty())
                continue;
            m_known.add(media.sha256);
            m_files.emplace(media.sha256, media.file);
        }
        sweepLeftovers(m_folder / "photos");
        sweepLeftovers(m_folder / "documents");
    }

    void prepare(const IncomingFile &file, const std::stop_token &stop, PreparedFile &answer)
    {
        const SourceFile source(file.path);
        const FileKind kind = kindOf(source);
        answer.media = beginRow(file, m_now);
        answer.media.kind = mediaKind(kind);
        answer.media.bytes = std::int64_t(source.size());
        if (answer.media.kind == MediaKind::Document && file.caption.empty())
            answer.media.caption = shownName(file.path.stem());
        if (answer.media.kind == MediaKind::Photo)
            takePicture(source, kind, slug(file.part_name), answer);
        else
            takeStream(source, kind, stop, file.part_name, answer);
    }

private:
    /// A picture is read once into memory: what is hashed, looked at and written is the same.
    void takePicture(const SourceFile &source, FileKind kind, const std::string &what,
                     PreparedFile &answer)
    {
        if (source.size() > longestPictureFile)
            throw FileFault({"{0} is larger than any photo.", {source.name()}});
        const Bytes bytes = source.readAll();
        source.requireUnchanged();
        describePicture({bytes, kind, source.name()}, answer.media);
        answer.media.sha256 = sha256(bytes);
        KnownHashes::Claim claim(m_known, answer.media.sha256);
        if (!claim.isNew()) {
            putBack(source.name(), answer, [&](NewFile &lost) { lost.write(bytes); });
            answer.outcome = PreparedFile::Outcome::AlreadyThere;
            return;
        }
        NewFile copy(placeFor(kind, answer.media), source.name());
        copy.write(bytes);
        publish(copy, kind, what, answer);
        claim.keep();
    }

    void describePicture(const PictureFile &picture, Media &media) const
    {
        const auto size = readSize(picture);
        if (!size)
            throw FileFault(size.reason());
        const Exif exif = readExif(picture.bytes);
        // The decoder turns a HEIC by the file's own instructions, and its size is told turned.
        const bool sideways = picture.kind != FileKind::Heic && turnsSideways(exif.orientation);
        media.width = sideways ? size->height : size->width;
        media.height = sideways ? size->width : size->height;
        if (!media.taken_on)
            media.taken_on = takenOn(exif, m_zone);
    }

    /// Videos and documents may be longer than memory.
    void takeStream(const SourceFile &source, FileKind kind, const std::stop_token &stop,
                    const std::string &partName, PreparedFile &answer)
    {
        NewFile copy(placeFor(kind, answer.media), source.name());
        answer.media.sha256 = copyAndHash(source, copy, stop);
        source.requireUnchanged();
        const ReadAt readAt = [&](std::uint64_t offset, std::span<std::uint8_t> bytes) {
            return source.readAt(offset, bytes);
        };
        if (!isWhole(kind, readAt, source.size()))
            throw FileFault(
                {"{0} is cut short: its end is missing. Copy it again.", {source.name()}});
        KnownHashes::Claim claim(m_known, answer.media.sha256);
        if (!claim.isNew()) {
            putBack(source.name(), answer, [&](NewFile &lost) {
                copyAndHash(source, lost, stop);
                source.requireUnchanged();
            });
            answer.outcome = PreparedFile::Outcome::AlreadyThere;
            return;
        }
        const bool isDocument = answer.media.kind == MediaKind::Document;
        publish(copy, kind, slug(isDocument ? answer.media.caption : partName), answer);
        claim.keep();
    }

    static std::string copyAndHash(const SourceFile &source, NewFile &copy,
                                   const std::stop_token &stop)
    {
        Sha256 sum;
        Bytes block(1u << 20);
        std::uint64_t place = 0;
        while (place < source.size()) {
            if (stop.stop_requested())
                throw FileFault({"{0} was not taken in: stopped.", {source.name()}});
            const std::size_t got = source.readAt(place, {block.data(), block.size()});
            if (got == 0)
                throw FileFault({"{0} became shorter while it was read.", {source.name()}});
            const auto bytes = std::span<const std::uint8_t>(block).first(got);
            sum.add(bytes);
            copy.write(bytes);
            place += got;
        }
        return hex(sum.digest());
    }

    /// A file that is on record, and is lost from the folder or damaged, is there again under its
    /// name; what was damaged is kept.
    void putBack(const std::string &name, PreparedFile &answer,
                 const std::function<void(NewFile &)> &write)
    {
        const auto known = m_files.find(answer.media.sha256);
        if (known == m_files.end())
            return;
        const auto place = locate(m_folder, known->second);
        if (!place || isAsTakenIn(*place, answer.media.sha256))
            return;
        const std::scoped_lock lock(m_puttingBack);
        // Another thread may have had the same file meanwhile.
        if (isAsTakenIn(*place, answer.media.sha256))
            return;
        prepareFolder(fs::path(known->second).parent_path());
        NewFile copy(place->parent_path(), name);
        write(copy);
        copy.settle();
        std::string kept;
        if (fs::exists(fs::symlink_status(*place)))
            kept = setAside(known->second, *place);
        copy.publish(place->filename().string());
        settleFolder(place->parent_path());
        answer.put_back = toldOf(known->second, kept);
    }

    static Message toldOf(const std::string &file, const std::string &kept)
    {
        if (kept.empty())
            return {"The file {0} was missing and is there again.", {file}};
        return {"The file {0} was damaged and is there again as it was taken in; the damaged one "
                "is kept as {1}.",
                {file, kept}};
    }

    /// What is no file at all is not ours to move and counts as well.
    static bool isAsTakenIn(const fs::path &place, const std::string &hash)
    {
        std::error_code none;
        const fs::file_status status = fs::symlink_status(place, none);
        if (!fs::is_regular_file(status))
            return fs::exists(status);
        try {
            return sumOf(SourceFile(place)) == hash;
        } catch (const FileFault &) {
            // A file that cannot be read is worth no more than one that is not as it was.
            return false;
        }
    }

    /// Moves a damaged file among the backups, or beside its place where those lie on another disk.
    /// Answers the name in the project's folder that it has from then on.
    std::string setAside(const std::string &file, const fs::path &place)
    {
        const fs::path backups = fs::path("backups") / "damaged";
        prepareFolder(backups);
        std::error_code failure;
        for (const fs::path &folder : {backups, fs::path(file).parent_path()}) {
            const fs::path kept = folder / freeName(m_folder / folder, place);
            fs::rename(place, m_folder / kept, failure);
            if (failure)
                continue;
            settleFolder(m_folder / folder);
            return kept.generic_string();
        }
        throw DiskFault(
            {"{0} could not be saved: {1}.", {shownName(place), whyNotWritten(failure.value())}});
    }

    static std::string freeName(const fs::path &folder, const fs::path &place)
    {
        std::string name;
        std::error_code none;
        for (int number = 1; name.empty() || fs::exists(fs::symlink_status(folder / name, none));
             ++number)
            name = fmt::format("{}-damaged-{}{}", place.stem().string(), number,
                               place.extension().string());
        return name;
    }

    void prepareFolder(const fs::path &relative)
    {
        const std::scoped_lock lock(m_makingFolders);
        makeFolder(m_folder, relative);
    }

    Moment whenFor(const Media &media) const { return media.taken_on.value_or(m_now.dayOnly()); }

    fs::path placeFor(FileKind kind, const Media &media)
    {
        const fs::path relative = folderFor(kind, whenFor(media));
        // No record may name what lies outside; a row for it would be a photo that nobody finds.
        if (!locate(m_folder, (relative / "file").generic_string()))
            throw FileFault({"The folder {0} leads out of the project, where its files are not "
                             "looked for; nothing is taken in there.",
                             {relative.begin()->string()}});
        prepareFolder(relative);
        return m_folder / relative;
    }

    /// Only a copy that is on the disk itself gets its name, and only then may a row name it.
    void publish(NewFile &copy, FileKind kind, const std::string &what, PreparedFile &answer)
    {
        copy.settle();
        const fs::path relative = folderFor(kind, whenFor(answer.media));
        const std::string name = nameIn(relative, copy, kind, what, answer);
        const std::string file = (relative / name).generic_string();
        try {
            settleFolder(m_folder / relative);
        } catch (const FileFault &) {
            if (answer.made_file)
                removeUnnamed(m_folder, {file});
            throw;
        }
        answer.media.file = file;
        answer.outcome = PreparedFile::Outcome::Copied;
    }

    /// Gives the copy the shortest name that no other file has. A file of the same content may have
    /// it: an intake that was undone leaves its files behind, and another may run at this moment.
    std::string nameIn(const fs::path &relative, NewFile &copy, FileKind kind,
                       const std::string &what, PreparedFile &answer) const
    {
        const std::string &hash = answer.media.sha256;
        for (const std::size_t digits : {6, 10, 16, 32, 64}) {
            std::string name = readableName(kind, whenFor(answer.media), what, hash, digits);
            answer.made_file = copy.publish(name);
            if (answer.made_file)
                return name;
            keepForRecord(m_folder, (relative / name).generic_string());
            if (sumOf(SourceFile(m_folder / relative / name)) == hash)
                return name;
        }
        throw FileFault({"{0} could not be saved: its name is taken by another file.",
                         {shownName(answer.source)}});
    }

    fs::path m_folder;
    std::string m_zone;
    Moment m_now;
    KnownHashes m_known;
    /// Of every hash on record, the file.
    std::unordered_map<std::string, std::string> m_files;
    std::mutex m_makingFolders;
    std::mutex m_puttingBack;
};

Intake::Intake(const fs::path &projectFolder, const Records &records, Moment now)
    : m_implementation(std::make_unique<Implementation>(projectFolder, records, now))
{
}

Intake::~Intake() = default;

PreparedFile Intake::prepare(const IncomingFile &file, std::stop_token stop)
{
    PreparedFile answer;
    answer.source = file.path;
    try {
        m_implementation->prepare(file, stop, answer);
    } catch (const DiskFault &fault) {
        answer.failure = fault.message();
        answer.is_of_disk = true;
    } catch (const FileFault &fault) {
        answer.failure = fault.message();
    } catch (const std::exception &error) {
        answer.failure = {"{0} was not taken in: {1}.", {shownName(file.path), error.what()}};
    }
    return answer;
}

} // namespace lastrivet::evidence
