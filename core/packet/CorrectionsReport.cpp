// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/CorrectionsReport.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <tuple>

namespace lastrivet::packet {

namespace {

/// The number on the sheet as a number, for sorting; what is none comes last.
int numberIn(const std::string &text)
{
    int number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    return read.ec == std::errc{} ? number : std::numeric_limits<int>::max();
}

bool isOfSquawk(const Media &media, Id<Squawk> squawk)
{
    const Media::Link link{RecordType::Squawk, squawk.value()};
    return !media.withdrawn_on && media.kind == MediaKind::Photo &&
           std::find(media.links.begin(), media.links.end(), link) != media.links.end();
}

bool showsAfter(const Media &media, const Squawk &squawk)
{
    if (media.shows.contains(Shows::Repair))
        return true;
    if (media.shows.contains(Shows::Defect) || !squawk.fixed_on)
        return false;
    return dayOf(media) && !after(*squawk.fixed_on, *dayOf(media));
}

std::vector<CorrectionsReport::Verdict> verdictsOf(const Records &records,
                                                   const Inspection &inspection, Moment asOf)
{
    std::vector<CorrectionsReport::Verdict> verdicts;
    for (const SignOff &signOff : records.sign_offs) {
        const HoldPoint *point = records.findLive(signOff.hold_point_id);
        if (signOff.withdrawn_on || signOff.inspection_id != inspection.id || !point ||
            !happened(signOff.signed_on, asOf))
            continue;
        const Closing *closing = records.find(point->closing_id);
        verdicts.push_back({closing ? closing->title : std::string{}, point->kind, signOff.result,
                            signOff.remarks});
    }
    return verdicts;
}

class Gathering {
public:
    Gathering(const Records &records, Moment asOf)
        : m_records(records)
        , m_answer{asOf, {}, {}, {}, {}, {}, {}, {}, {}, {}}
        , m_region(records, m_answer, {})
    {
    }

    CorrectionsReport::Finding finding(const Squawk &squawk)
    {
        CorrectionsReport::Finding finding;
        finding.squawk = squawkEntry(m_region, squawk, {});
        finding.note = squawk.note;
        const BeforeAndAfter pictures = beforeAndAfter(m_records, squawk);
        for (const Media *media : pictures.before)
            add(finding.before, *media, squawk);
        for (const Media *media : pictures.after)
            add(finding.after, *media, squawk);
        return finding;
    }

private:
    void add(std::vector<Photo> &photos, const Media &media, const Squawk &squawk)
    {
        if (happened(dayOf(media), m_region.asOf()))
            photos.push_back(
                plainPhoto(media, ++m_photos, partName(m_records, squawk.component_id)));
    }

    const Records &m_records;
    readiness::Answer m_answer;
    Region m_region;
    int m_photos = 0;
};

} // namespace

std::size_t CorrectionsReport::openCount() const
{
    return std::size_t(std::count_if(findings.begin(), findings.end(), [](const Finding &finding) {
        return finding.squawk.state == SquawkEntry::State::Open ||
               finding.squawk.state == SquawkEntry::State::Fixed;
    }));
}

std::size_t CorrectionsReport::correctedCount() const
{
    return std::size_t(std::count_if(findings.begin(), findings.end(), [](const Finding &finding) {
        return finding.squawk.state == SquawkEntry::State::Fixed;
    }));
}

BeforeAndAfter beforeAndAfter(const Records &records, const Squawk &squawk)
{
    BeforeAndAfter pictures;
    for (const Media *media : chosenFrom(
             records.media, [&](const Media &record) { return isOfSquawk(record, squawk.id); },
             [](const Media &) { return 0; }, dayOf))
        (showsAfter(*media, squawk) ? pictures.after : pictures.before).push_back(media);
    return pictures;
}

std::optional<CorrectionsReport> correctionsReport(const Records &records, const Profile &profile,
                                                   Id<Inspection> id, Moment asOf)
{
    const Inspection *inspection = records.findLive(id);
    if (!inspection || !happened(inspection->held_on, asOf))
        return std::nullopt;
    CorrectionsReport report{.as_of = asOf};
    report.aircraft = aircraftOf(records, profile);
    report.cautions = profile.cautions;
    report.visit = visitOf(records, *inspection, asOf);
    report.verdicts = verdictsOf(records, *inspection, asOf);
    Gathering gathering(records, asOf);
    const auto takes = [&](const Squawk &squawk) {
        return squawk.inspection_id == id && happened(squawk.found_on, asOf);
    };
    const auto place = [](const Squawk &squawk) {
        return std::tuple{numberIn(squawk.finding_number), numberIn(squawk.number)};
    };
    for (const Squawk *squawk : chosenFrom(records.squawks, takes, place,
                                           [](const Squawk &record) { return record.found_on; }))
        report.findings.push_back(gathering.finding(*squawk));
    return report;
}

} // namespace lastrivet::packet
