// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Designation.h"

#include "core/base/Tongue.h"

#include <catch2/catch.hpp>

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

TEST_CASE("Kinds of visits are called as the hold points that are signed there")
{
    for (std::size_t i = 0; i + 1 < Words<InspectionKind>::list.size(); ++i)
        CHECK(parseWord<HoldPointKind>(word(InspectionKind(i))));
}
