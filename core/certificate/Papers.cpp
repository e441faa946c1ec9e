// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/certificate/Papers.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace lastrivet::certificate {

namespace {

bool hasCome(const std::optional<Moment> &moment, Moment asOf)
{
    return moment && !after(*moment, asOf);
}

PaperState stateOf(const CertificateDocument &document, Moment asOf)
{
    if (hasCome(document.received_on, asOf)) {
        // The day that it expires on is its last.
        return document.expires_on && after(asOf.dayOnly(), document.expires_on->dayOnly())
                   ? PaperState::Expired
                   : PaperState::Here;
    }
    return hasCome(document.asked_on, asOf) ? PaperState::Asked : PaperState::Missing;
}

/// Whether `a` tells more of a document's standing than `b`.
bool tellsMore(const CertificateDocument &a, const CertificateDocument &b, Moment asOf)
{
    const auto rank = [&](const CertificateDocument &document) {
        switch (stateOf(document, asOf)) {
        case PaperState::Here:
            return 3;
        case PaperState::Expired:
            return 2;
        case PaperState::Asked:
            return 1;
        case PaperState::Missing:
            break;
        }
        return 0;
    };
    if (rank(a) != rank(b))
        return rank(a) > rank(b);
    const auto &first = a.received_on ? a.received_on : a.asked_on;
    const auto &second = b.received_on ? b.received_on : b.asked_on;
    if (first && second && (after(*first, *second) || after(*second, *first)))
        return after(*first, *second);
    return a.id > b.id;
}

using ByKey = std::map<std::string, const CertificateDocument *, std::less<>>;

ByKey latestByKey(const Records &records, Moment asOf)
{
    ByKey latest;
    for (const auto &document : records.certificate_documents) {
        if (document.withdrawn_on)
            continue;
        const auto [known, isNew] = latest.try_emplace(document.key, &document);
        if (!isNew && tellsMore(document, *known->second, asOf))
            known->second = &document;
    }
    return latest;
}

void fill(Paper &paper, const CertificateDocument &document, Moment asOf)
{
    paper.state = stateOf(document, asOf);
    if (paper.state == PaperState::Missing)
        return;
    paper.record = document.id;
    paper.hasNumber = !document.number.empty();
    paper.hasScan = !document.media_ids.empty();
}

/// A text without what people leave out or put in between.
std::string plain(std::string_view text)
{
    std::string plain;
    for (const char c : text) {
        if (c != ' ' && c != '-' && c != '.')
            plain += c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
    }
    return plain;
}

std::string_view builderName(const Records &records)
{
    const auto *builder = records.find(records.project.builder_id);
    return builder ? std::string_view(builder->name) : std::string_view();
}

} // namespace

std::vector<Paper> papers(const Records &records, const Profile &profile, Moment asOf)
{
    auto known = latestByKey(records, asOf);
    std::vector<Paper> all;
    for (const auto &rule : profile.documents) {
        Paper paper{rule.key, rule.title, rule.need, rule.when,
                    profile.citation(rule.source, rule.mark)};
        if (const auto found = known.find(rule.key); found != known.end()) {
            fill(paper, *found->second, asOf);
            known.erase(found);
        }
        all.push_back(std::move(paper));
    }
    for (const auto &[key, document] : known) {
        Paper paper{key, key, std::nullopt, {}, {}};
        fill(paper, *document, asOf);
        if (paper.record)
            all.push_back(std::move(paper));
    }
    return all;
}

std::vector<Paper> missingPapers(const Records &records, const Profile &profile, Moment asOf)
{
    auto missing = papers(records, profile, asOf);
    std::erase_if(missing, [](const Paper &paper) {
        return paper.need != Need::Required || paper.state == PaperState::Here;
    });
    return missing;
}

std::vector<Disagreement> disagreements(const Records &records)
{
    std::vector<Disagreement> found;
    const auto compare = [&](const CertificateDocument &document, std::string_view what,
                             const std::string &written, std::string_view expected) {
        if (!written.empty() && !expected.empty() && plain(written) != plain(expected))
            found.push_back({std::string(what), document.id, written, std::string(expected)});
    };
    const auto &project = records.project;
    for (const auto &document : records.certificate_documents) {
        if (document.withdrawn_on)
            continue;
        compare(document, "name", document.name_as_written, builderName(records));
        compare(document, "model", document.model_as_written, project.model);
        compare(document, "serial number", document.serial_as_written, project.serial_number);
        compare(document, "registration", document.registration_as_written, project.registration);
    }
    return found;
}

std::vector<SameSerialNumber> sameSerialNumbers(const Records &records)
{
    std::vector<SameSerialNumber> found;
    std::map<std::tuple<std::string, std::string>, RecordRef> first;
    const auto look = [&](RecordRef record, const std::string &part, const std::string &serial,
                          bool counts) {
        if (!counts || serial.empty() || part.empty())
            return;
        const auto [known, isNew] = first.try_emplace({plain(part), plain(serial)}, record);
        if (!isNew)
            found.push_back({known->second, record, serial});
    };
    for (const auto &part : records.components)
        look({RecordType::Component, part.id.value()}, part.part_number, part.serial_number,
             !part.withdrawn_on);
    for (const auto &piece : records.equipment) {
        const auto *part = records.find(piece.component_id);
        // Equipment that stands for a part of the tree says the same of it.
        const bool isThatPart = part && plain(part->serial_number) == plain(piece.serial_number);
        look({RecordType::Equipment, piece.id.value()}, piece.part_number, piece.serial_number,
             !piece.withdrawn_on && !piece.removed_on && !isThatPart);
    }
    return found;
}

} // namespace lastrivet::certificate
