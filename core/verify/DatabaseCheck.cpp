// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Clock.h"
#include "core/base/Tongue.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/records/invariants/Invariants.h"
#include "core/storage/Integrity.h"
#include "core/storage/Migration.h"
#include "core/storage/RecordReader.h"
#include "core/storage/SearchIndex.h"
#include "core/storage/Shape.h"
#include "core/verify/Checks.h"

#include <string>

namespace lastrivet::verify_detail {

namespace {

Profile profileOf(const Records &records, Findings &findings)
{
    if (records.profile_copy.empty())
        return ProfileLibrary::standard().profile(records.project.profile);
    auto profile = readProfile(records.profile_copy);
    if (profile)
        return *profile;
    findings.add(profile.reason().sentenceOfCopy(), "project", 1);
    return {};
}

std::int64_t countOf(const Records &records)
{
    std::int64_t count = 1;
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i)
        count += std::int64_t(records.table(RecordType(i)).size());
    return count;
}

} // namespace

void checkDatabase(const storage::Database &database, Verification &verification)
{
    Findings findings(verification, "database");
    for (const std::string &damage : storage::damagesOf(database))
        findings.add({"The database is damaged: {0}.", {damage}});
    storage::Database made;
    storage::runSteps(made);
    if (const auto other = storage::differenceBetween(shapeOf(database), shapeOf(made)))
        findings.add({"The tables were altered by another program: {0}.", {nested(*other)}});
    for (const storage::DanglingRow &row : storage::danglingRows(database)) {
        findings.add({"A row of {0} names a {1} that does not exist.", {row.table, row.missing}},
                     row.table, row.id);
    }
}

Records checkRecords(const storage::Database &database, Verification &verification)
{
    auto records = storage::RecordReader(database.sql()).readAll();
    verification.records = countOf(records);
    Findings findings(verification, "invariant");
    const auto profile = profileOf(records, findings);
    for (const auto &violation : violations(records, profile))
        findings.add(violation.message, word(violation.record.type), violation.record.id);
    // No invariant: it is not the records alone that tell, and a merge must come to the same on
    // every computer.
    if (const std::string &zone = records.project.time_zone; !zone.empty() && !isKnownZone(zone))
        findings.add({"The project's time zone {0} is not known on this computer; the time now "
                      "counts as UTC.",
                      {zone}},
                     word(RecordType::Project), 1);
    return records;
}

void checkSearch(const Records &records, storage::Database &database, Verification &verification)
{
    Findings findings(verification, "search");
    for (const RecordRef ref : storage::SearchIndex(database).outOfStep(records)) {
        findings.add({"The search index does not say what {0} {1} says.",
                      {nested({word(ref.type), {}}), std::to_string(ref.id)}},
                     word(ref.type), ref.id);
    }
}

} // namespace lastrivet::verify_detail
