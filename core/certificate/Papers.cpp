// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/certificate/Papers.h"

#include <algorithm>
#include <map>

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
    // A record without dates is there whatever the day; nothing has happened on it.
    if (paper.state == PaperState::Missing && (document.asked_on || document.received_on))
        return;
    paper.record = document.id;
    paper.hasNumber = !document.number.empty();
    paper.hasScan = !document.media_ids.empty();
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

Message inWords(const Paper &paper, const Records &records)
{
    const CertificateDocument *document = records.find(paper.record);
    const auto on = [](const std::optional<Moment> &moment) {
        return std::vector<std::string>{moment->text()};
    };
    switch (paper.state) {
    case PaperState::Missing:
        break;
    case PaperState::Asked:
        return {"asked for on {0}", on(document->asked_on)};
    case PaperState::Here:
        return {"here since {0}", on(document->received_on)};
    case PaperState::Expired:
        return {"expired after {0}", on(document->expires_on)};
    }
    return {"not here", {}};
}

Message inWords(Need need)
{
    switch (need) {
    case Need::Required:
        return {"required", {}};
    case Need::Expected:
        return {"expected", {}};
    case Need::SomeCases:
        return {"in some cases", {}};
    case Need::Resale:
        break;
    }
    return {"for resale", {}};
}

} // namespace lastrivet::certificate
