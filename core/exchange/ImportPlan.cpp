// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/ImportPlan.h"

#include "core/exchange/DocumentWriter.h"
#include "core/records/Description.h"
#include "core/records/Designation.h"
#include "core/records/invariants/Invariants.h"
#include "core/stores/Currency.h"

#include <algorithm>
#include <array>
#include <set>
#include <span>
#include <sstream>
#include <string_view>
#include <variant>

namespace lastrivet::exchange {

namespace {

/// Calls `body(type, description, record)` for every record of the document but the project.
template <class Body> void eachRecord(const Records &records, Body &&body)
{
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
        const auto type = RecordType(i);
        const auto &description = describe(type);
        const AnyTable &table = records.table(type);
        for (const void *row = table.nextAny(0); row; row = table.nextAny(idOf(description, row)))
            body(description, row);
    }
}

std::string textOf(const Field &field, const void *owner)
{
    std::ostringstream text;
    {
        JsonWriter json{text};
        field.isCollection() ? writeCollection(json, field, owner)
                             : writeScalar(json, field.value(owner));
    }
    return text.str();
}

/// The first field in which two records of one type differ.
std::string firstDifference(const RecordDescription &description, const void *a, const void *b)
{
    const auto found =
        std::find_if(description.fields.begin(), description.fields.end(),
                     [&](const Field &field) { return textOf(field, a) != textOf(field, b); });
    return std::string(found == description.fields.end() ? description.name() : found->name);
}

void addError(ImportPlan &plan, const ImportDocument &document, RecordRef record, std::string name,
              Message what)
{
    if (plan.errors.size() < mostErrors)
        plan.errors.push_back({document.pointerTo(record), std::move(name), std::move(what)});
}

/// What a document leaves out of a file, the import worked out from the file itself.
void fillIn(Media &media, const Media &known)
{
    if (!media.sha256.empty())
        return;
    media.sha256 = known.sha256;
    if (!media.bytes)
        media.bytes = known.bytes;
}

/// Known records must be the same. Compared after log entries got their parts, and files what they
/// are known by.
void compare(ImportPlan &plan, const DocumentReading &reading, const Records &existing)
{
    const auto &document = reading.document;
    eachRecord(document.records, [&](const RecordDescription &description, const void *row) {
        const RecordRef record{description.type, idOf(description, row)};
        const void *known = existing.find(record.type, record.id);
        if (!known)
            return;
        ++plan.skipped;
        auto given = description.copy(row);
        if (record.type == RecordType::WorkSession)
            settle(*static_cast<WorkSession *>(given.get()), plan.merged);
        else if (record.type == RecordType::Media)
            fillIn(*static_cast<Media *>(given.get()), *static_cast<const Media *>(known));
        const bool isEqual = description.equal(given.get(), known);
        if (isEqual && record.type == RecordType::Media)
            plan.known_files.push_back(record);
        if (!isEqual && !reading.faulty.contains(record))
            addError(plan, document, record, designation(document.records, record),
                     {"The project has this record with other content; they differ in {0} first.",
                      {firstDifference(description, given.get(), known)}});
    });
    if (!document.records.profile_copy.empty() && !existing.profile_copy.empty() &&
        document.records.profile_copy != existing.profile_copy)
        plan.errors.push_back(
            {"/profile_copy", {}, {"The project goes by another rule profile.", {}}});
    const RecordRef project{RecordType::Project, 1};
    if (!(document.records.project == existing.project) && !reading.faulty.contains(project))
        addError(plan, document, project, {},
                 {"The project on record is another one; they differ in {0} first.",
                  {firstDifference(describe(RecordType::Project), &document.records.project,
                                   &existing.project)}});
}

void addNew(ImportPlan &plan, const Records &incoming, const Records &existing)
{
    eachRecord(incoming, [&](const RecordDescription &description, const void *row) {
        const RecordRef record{description.type, idOf(description, row)};
        if (existing.find(record.type, record.id))
            return;
        plan.added.push_back(record);
        plan.merged.put(record.type, row);
    });
    for (const RecordRef &record : plan.added) {
        if (record.type != RecordType::WorkSession)
            continue;
        WorkSession session = *plan.merged.find(Id<WorkSession>{record.id});
        settle(session, plan.merged);
        plan.merged.put(record.type, &session);
    }
}

void checkProfile(ImportPlan &plan, const ImportDocument &document)
{
    const auto &named = document.records.project.profile;
    if (!document.profile_id.empty() && !named.empty() && document.profile_id != named &&
        plan.errors.size() < mostErrors)
        plan.errors.push_back({"/profile_copy/id",
                               {},
                               {"The profile copy is of {0}, but the project goes by {1}.",
                                {document.profile_id, named}}});
}

void addViolations(ImportPlan &plan, const DocumentReading &reading,
                   const std::vector<Violation> &violations)
{
    for (const Violation &violation : violations) {
        if (!reading.faulty.contains(violation.record))
            addError(plan, reading.document, violation.record, {}, violation.message);
    }
}

bool isPlan(std::string_view field)
{
    constexpr std::array<std::string_view, 5> plans{"planned_on", "planned_for", "expected_on",
                                                    "expires_on", "due_on"};
    return std::find(plans.begin(), plans.end(), field) != plans.end();
}

/// True when a field of the record, or of a row of its lists, says that something happened later.
bool speaksOfLater(std::span<const Field> fields, const void *owner, Moment last)
{
    return std::any_of(fields.begin(), fields.end(), [&](const Field &field) {
        if (field.rows) {
            for (std::size_t i = 0; i < field.size(owner); ++i) {
                if (speaksOfLater(field.rows->fields, field.row(owner, i), last))
                    return true;
            }
            return false;
        }
        if (field.type != FieldType::Moment || isPlan(field.name))
            return false;
        const Scalar value = field.value(owner);
        const Moment *moment = std::get_if<Moment>(&value);
        return moment && after(*moment, last);
    });
}

} // namespace

void settle(WorkSession &session, const Records &records)
{
    std::stable_sort(session.workers.begin(), session.workers.end(),
                     [](const auto &a, const auto &b) { return a.person_id < b.person_id; });
    if (session.component_id)
        return;
    if (const Step *step = records.find(session.step_id))
        session.component_id = step->component_id;
    else if (const Squawk *squawk = records.find(session.squawk_id))
        session.component_id = squawk->component_id;
}

ImportPlan planImport(const DocumentReading &reading, const Records &existing,
                      const Profile &profile)
{
    ImportPlan plan{.merged = existing, .errors = reading.errors};
    if (!reading.isComplete)
        return plan;
    checkProfile(plan, reading.document);
    addNew(plan, reading.document.records, existing);
    compare(plan, reading, existing);
    addViolations(plan, reading, violations(plan.merged, profile, plan.added));
    return plan;
}

ImportPlan planImport(const DocumentReading &reading, const Profile &profile)
{
    ImportPlan plan{.errors = reading.errors, .is_new_project = true};
    if (!reading.isComplete)
        return plan;
    checkProfile(plan, reading.document);
    plan.merged.project = reading.document.records.project;
    plan.merged.profile_copy = reading.document.records.profile_copy;
    addNew(plan, reading.document.records, Records{});
    addViolations(plan, reading, violations(plan.merged, profile));
    return plan;
}

std::vector<std::string> farAhead(const ImportPlan &plan, Moment today)
{
    constexpr std::int64_t year = 366;
    const Moment last = today.plusDays(year).value_or(today);
    std::vector<std::string> names;
    for (const RecordRef &record : plan.added) {
        const void *row = plan.merged.find(record.type, record.id);
        if (speaksOfLater(describe(record.type).fields, row, last))
            names.push_back(designation(plan.merged, record));
    }
    return names;
}

std::vector<std::string> unknownCurrencies(const ImportPlan &plan)
{
    std::set<std::string> unknown;
    const auto look = [&](const std::string &currency) {
        if (!currency.empty() && !stores::isCurrency(currency))
            unknown.insert(currency);
    };
    if (plan.is_new_project)
        look(plan.merged.project.currency);
    for (const RecordRef &record : plan.added) {
        if (record.type == RecordType::PartLine)
            look(plan.merged.find(Id<PartLine>{record.id})->currency);
        else if (record.type == RecordType::Expense)
            look(plan.merged.find(Id<Expense>{record.id})->currency);
    }
    return {unknown.begin(), unknown.end()};
}

} // namespace lastrivet::exchange
