// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/ArrivedFiles.h"

#include "core/evidence/FileKind.h"
#include "core/evidence/Intake.h"
#include "core/evidence/IntakeStore.h"

#include <array>
#include <fstream>
#include <string>
#include <unordered_set>
#include <utility>

namespace lastrivet::ui {

namespace {

bool isOfAKindTakenIn(const std::filesystem::path &file)
{
    std::array<char, evidence::sniffedBytes> beginning{};
    std::ifstream stream(file, std::ios::binary);
    stream.read(beginning.data(), std::streamsize(beginning.size()));
    const auto kind = evidence::sniff(
        {reinterpret_cast<const std::uint8_t *>(beginning.data()), std::size_t(stream.gcount())});
    return kind && evidence::mediaKind(*kind) != MediaKind::Document;
}

/// The hashes of what was taken in once and withdrawn since: it does not come back on its own.
std::unordered_set<std::string> withdrawnHashes(const Records &records)
{
    std::unordered_set<std::string> hashes;
    for (const Media &media : records.media) {
        if (media.withdrawn_on)
            hashes.insert(media.sha256);
    }
    return hashes;
}

} // namespace

ArrivedFiles::ArrivedFiles(std::vector<evidence::SeenFile> seen, const Project &into)
    : files(std::move(seen))
    , project(into.folder())
    , records(into.records())
    , now(into.now())
{
}

ArrivedFiles::~ArrivedFiles()
{
    for (const evidence::Batch &batch : batches)
        evidence::discard(project, batch);
}

void ArrivedFiles::copy()
{
    const auto withdrawn = withdrawnHashes(*records);
    evidence::Intake intake(project, *records, now);
    evidence::Batch batch;
    for (const evidence::SeenFile &file : files) {
        if (!isOfAKindTakenIn(file.path))
            continue;
        evidence::PreparedFile one = intake.prepare({file.path, {}, {}, {}, {}, {}});
        if (one.outcome == evidence::PreparedFile::Outcome::AlreadyThere && !one.put_back)
            continue;
        if (!one.media.sha256.empty() && withdrawn.contains(one.media.sha256))
            evidence::discard(project, {one});
        else
            batch.push_back(std::move(one));
    }
    if (!batch.empty())
        batches.push_back(std::move(batch));
}

} // namespace lastrivet::ui
