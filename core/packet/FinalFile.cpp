// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/FinalFile.h"

#include "core/certificate/CrossCheck.h"
#include "core/packet/Chosen.h"
#include "core/records/Designation.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

std::vector<FinalFile::Document> documentsOf(const Records &records, const Profile &profile,
                                             Moment asOf)
{
    std::vector<FinalFile::Document> documents;
    for (const certificate::Paper &paper : certificate::papers(records, profile, asOf)) {
        FinalFile::Document document{.title = paper.title,
                                     .need = paper.need,
                                     .state = certificate::inWords(paper, records),
                                     .standing = paper.state};
        if (const CertificateDocument *record = records.find(paper.record)) {
            document.number = record->number;
            document.edition = record->edition;
            document.scans = record->media_ids.size();
        }
        documents.push_back(std::move(document));
    }
    return documents;
}

std::string titleOf(const Records &records, const Profile &profile, RecordRef record)
{
    if (record.type == RecordType::Equipment)
        return records.find(Id<Equipment>{record.id})->name;
    const std::string &key = records.find(Id<CertificateDocument>{record.id})->key;
    const auto rule = std::ranges::find(profile.documents, key, &Profile::Document::key);
    return rule == profile.documents.end() ? key : rule->title;
}

std::vector<FinalFile::Difference> differencesIn(const Records &records, const Profile &profile)
{
    std::vector<FinalFile::Difference> differences;
    for (const auto &found : certificate::disagreements(records))
        differences.push_back(
            {titleOf(records, profile, found.record), certificate::sentence(found)});
    return differences;
}

std::vector<CorrectionsReport> inspectionsOf(const Records &records, const Profile &profile,
                                             Moment asOf)
{
    std::vector<CorrectionsReport> reports;
    const auto isHeld = [&](const Inspection &inspection) {
        return happened(inspection.held_on, asOf);
    };
    for (const Inspection *inspection : chosenFrom(
             records.inspections, isHeld, [](const Inspection &) { return 0; },
             [](const Inspection &record) { return record.held_on; })) {
        if (auto report = correctionsReport(records, profile, inspection->id, asOf))
            reports.push_back(std::move(*report));
    }
    return reports;
}

/// Each report numbers its photographs from 1; in one document no two may have the same number.
void numberThroughout(std::vector<CorrectionsReport> &reports)
{
    int number = 0;
    for (CorrectionsReport &report : reports) {
        for (CorrectionsReport::Finding &finding : report.findings) {
            for (std::vector<Photo> *side : {&finding.before, &finding.after}) {
                for (Photo &photo : *side)
                    photo.number = ++number;
            }
        }
    }
}

/// Of the squawks those that are still open: what was put right stands with its inspection. The
/// photographs that the hand-over book numbers are not in the file.
void keepWhatIsOpen(Packet &whole)
{
    std::erase_if(whole.squawks, [](const SquawkEntry &squawk) {
        return squawk.state == SquawkEntry::State::Verified ||
               squawk.state == SquawkEntry::State::Accepted;
    });
    for (SquawkEntry &squawk : whole.squawks)
        squawk.photo_numbers.clear();
    for (DeviationEntry &deviation : whole.deviations)
        deviation.photo_numbers.clear();
    whole.photos.clear();
}

} // namespace

std::size_t FinalFile::missingDocuments() const
{
    return std::size_t(std::ranges::count_if(documents, [](const Document &document) {
        return document.need == Need::Required &&
               document.standing != certificate::PaperState::Here;
    }));
}

std::size_t FinalFile::openFindings() const
{
    std::size_t open = 0;
    for (const CorrectionsReport &report : inspections)
        open += report.openCount();
    return open;
}

std::size_t FinalFile::openClosings() const
{
    return std::size_t(std::ranges::count_if(
        built.whole.standings, [](const Standing &standing) { return !isClosed(standing.state); }));
}

std::size_t FinalFile::closedWithGaps() const
{
    return std::size_t(
        std::ranges::count(built.whole.standings, readiness::State::ClosedEarly, &Standing::state));
}

std::size_t FinalFile::openDeviations() const
{
    return std::size_t(
        std::ranges::count_if(built.whole.deviations, [](const DeviationEntry &deviation) {
            const bool isRejected = deviation.decision == Decision::Rejected;
            return !deviation.decision ||
                   (isRejected && deviation.built_on && !deviation.undone_on);
        }));
}

std::size_t FinalFile::openBulletins() const
{
    return std::size_t(
        std::ranges::count_if(built.whole.bulletins, [](const BulletinEntry &bulletin) {
            return !bulletin.complied_on && bulletin.applies != false;
        }));
}

FinalFile finalFile(const Records &records, const Profile &profile, const readiness::Answer &answer)
{
    FinalFile file{.aircraft = aircraftOf(records, profile),
                   .documents = documentsOf(records, profile, answer.as_of),
                   .differences = differencesIn(records, profile),
                   .inspections = inspectionsOf(records, profile, answer.as_of),
                   .major_portion = majorPortion(records, profile, answer.as_of),
                   .weight = weightReport(records, profile, answer.as_of),
                   .built = handOver(records, profile, answer)};
    numberThroughout(file.inspections);
    keepWhatIsOpen(file.built.whole);
    return file;
}

} // namespace lastrivet::packet
