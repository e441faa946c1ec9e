// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Designation.h"

#include "core/base/Tongue.h"
#include "core/profiles/ProfileLibrary.h"

#include <catch2/catch.hpp>

#include <cstdint>

using namespace lastrivet;

TEST_CASE("A record without a title is called by its kind, and by no word of the files")
{
    Records records;
    records.hold_points.put({.id = Id<HoldPoint>{1}, .kind = HoldPointKind::PreCover});
    records.inspections.put({.id = Id<Inspection>{2}, .kind = InspectionKind::WorkshopVisit});
    CertificateDocument paper;
    paper.id = Id<CertificateDocument>{3};
    paper.key = "bill_of_sale";
    records.certificate_documents.put(paper);
    CHECK(designation(records, {RecordType::HoldPoint, 1}) ==
          "hold point 1 “pre-cover inspection”");
    CHECK(designation(records, {RecordType::Inspection, 2}) == "inspection 2 “workshop visit”");
    CHECK(designation(records, {RecordType::CertificateDocument, 3}) ==
          "certificate document 3 “bill of sale”");
}

TEST_CASE("A record is spoken of without the id that the program counts it by")
{
    Records records;
    records.closings.put({.id = Id<Closing>{6003977035641}, .title = "Upper skin"});
    records.hold_points.put({.id = Id<HoldPoint>{6003977035642},
                             .closing_id = Id<Closing>{6003977035641},
                             .kind = HoldPointKind::PreCover});
    records.work_sessions.put({.id = Id<WorkSession>{6003977035643},
                               .began = Moment::parse("2026-03-14"),
                               .place = "Shed"});
    records.squawks.put({.id = Id<Squawk>{6003977035644}, .number = "12", .title = "Dent"});
    records.envelopes.put({.id = Id<Envelope>{5}});
    const auto called = [&](RecordType type, std::int64_t id) {
        return english(spoken(records, {type, id}));
    };
    CHECK(called(RecordType::Closing, 6003977035641) == "closing “Upper skin”");
    CHECK(called(RecordType::HoldPoint, 6003977035642) ==
          "hold point “pre-cover inspection” for “Upper skin”");
    CHECK(called(RecordType::WorkSession, 6003977035643) == "log entry of 2026-03-14");
    CHECK(called(RecordType::Squawk, 6003977035644) == "squawk 12 “Dent”");
    // The place where it was says less than the day and the kind.
    records.weighings.put(
        {.id = Id<Weighing>{6}, .weighed_on = Moment::parse("2026-04-01"), .place = "Shed"});
    records.inspections.put(
        {.id = Id<Inspection>{7}, .kind = InspectionKind::WorkshopVisit, .place = "Shed"});
    CHECK(called(RecordType::Weighing, 6) == "weighing of 2026-04-01");
    CHECK(called(RecordType::Inspection, 7) == "inspection “workshop visit”");
    // Nothing else tells it.
    CHECK(called(RecordType::Envelope, 5) == "envelope 5");
}

TEST_CASE("The kind that a record is called by is said in the language of its reader")
{
    Records records;
    records.hold_points.put({.id = Id<HoldPoint>{1}, .kind = HoldPointKind::Final});
    const Tongue german{[](std::string_view pattern) {
                            return std::string(pattern == "final inspection" ? "Endprüfung"
                                               : pattern == "hold point"     ? "Haltepunkt"
                                                                             : pattern);
                        },
                        {}};
    CHECK(said(designated(records, {RecordType::HoldPoint, 1}), german) ==
          "Haltepunkt 1 “Endprüfung”");
}

TEST_CASE(
    "A paper that a profile names is called in the language of its reader, an own one as it is")
{
    Records records;
    CertificateDocument paper;
    paper.id = Id<CertificateDocument>{1};
    paper.key = "bill_of_sale";
    records.certificate_documents.put(paper);
    paper.id = Id<CertificateDocument>{2};
    paper.key = "Noise {0} paper";
    records.certificate_documents.put(paper);
    const Tongue german{[](std::string_view pattern) {
                            return std::string(pattern == "bill of sale"           ? "Kaufvertrag"
                                               : pattern == "certificate document" ? "Dokument"
                                                                                   : pattern);
                        },
                        {}};
    CHECK(said(spoken(records, {RecordType::CertificateDocument, 1}), german) ==
          "Dokument “Kaufvertrag”");
    CHECK(said(spoken(records, {RecordType::CertificateDocument, 2}), german) ==
          "Dokument “Noise {0} paper”");
}

TEST_CASE("A paper is called as the rules of the project's country call it, in full")
{
    Records records;
    CertificateDocument paper;
    for (const auto key : {"three_view", "bill_of_sale", "own_paper"}) {
        paper.id = Id<CertificateDocument>{paper.id.value() + 1};
        paper.key = key;
        records.certificate_documents.put(paper);
    }
    const auto called = [&](std::int64_t id) {
        return english(spoken(records, {RecordType::CertificateDocument, id}));
    };
    CHECK(called(1) == "certificate document “three view”");
    records.profile_copy = ProfileLibrary::standard().profile("us").json;
    CHECK(called(1) == "certificate document “Three-view drawings or photographs that identify "
                       "the aircraft”");
    CHECK(called(2) == "certificate document “Bill of sale”");
    CHECK(called(3) == "certificate document “own paper”");
    records.profile_copy = ProfileLibrary::standard().profile("ca").json;
    CHECK(called(1) == "certificate document “Three-view drawing or photographs”");
}

TEST_CASE("Kinds of visits are called as the hold points that are signed there")
{
    for (std::size_t i = 0; i + 1 < Words<InspectionKind>::list.size(); ++i)
        CHECK(parseWord<HoldPointKind>(word(InspectionKind(i))));
}
