// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/Account.h"

#include "core/records/Designation.h"

#include <algorithm>

namespace lastrivet::journal {

namespace {

/// The currency before the change or after it: a change may be of the currency itself.
std::string currencyOf(const Records &records, const JournalChange &change,
                       std::optional<std::string> FieldChange::*side)
{
    const Field *field = describe(change.record.type).find("currency");
    const auto found = std::ranges::find_if(
        change.fields, [](const FieldChange &each) { return each.name == "currency"; });
    if (field && found != change.fields.end()) {
        const Value value = valueOf(records, field, *found.*side);
        const auto *code =
            value.isNothing() ? nullptr : std::get_if<std::string>(&value.parts.front().content);
        return code ? *code : std::string();
    }
    return journal::currencyOf(records, change.record);
}

FieldAccount accountOf(const Records &records, const JournalChange &record,
                       const FieldChange &change)
{
    const Field *field = describe(record.record.type).find(change.name);
    if (!field)
        return {};
    if (!field->isCollection())
        return {
            field,
            valueOf(records, field, change.from, currencyOf(records, record, &FieldChange::from)),
            valueOf(records, field, change.to, currencyOf(records, record, &FieldChange::to)),
            {},
            {}};
    FieldAccount account{field, {}, {}, {}, {}};
    for (const std::string &item : change.added)
        account.added.push_back(itemOf(records, *field, item));
    for (const std::string &item : change.removed)
        account.removed.push_back(itemOf(records, *field, item));
    return account;
}

/// As much of a record as a name is made of.
void take(const Field &field, void *record, const std::optional<std::string> &json)
{
    const bool isInName = field.type == FieldType::Text || field.type == FieldType::Moment ||
                          field.type == FieldType::Enum;
    const Value value = isInName ? valueOf({}, &field, json) : Value{};
    if (value.isNothing())
        return;
    const Content &content = value.parts.front().content;
    if (const auto *text = std::get_if<std::string>(&content))
        field.assign(record, std::string_view(*text));
    else if (const auto *word = std::get_if<VocabularyWord>(&content))
        field.assign(record, std::string_view(word->word));
    else if (const auto *moment = std::get_if<Moment>(&content))
        field.assign(record, *moment);
}

/// Whether a field of the record leads to one of the parts.
bool isOn(const RecordDescription &description, const void *record,
          const std::set<std::int64_t> &parts)
{
    for (const Field &field : description.fields) {
        if (field.target != RecordType::Component)
            continue;
        if (field.type == FieldType::Ref) {
            const Scalar id = field.value(record);
            if (const auto *number = std::get_if<std::int64_t>(&id);
                number && parts.contains(*number))
                return true;
        } else if (field.type == FieldType::Refs) {
            for (std::size_t i = 0; i < field.size(record); ++i) {
                const Scalar id = field.item(record, i);
                if (const auto *number = std::get_if<std::int64_t>(&id);
                    number && parts.contains(*number))
                    return true;
            }
        }
    }
    return false;
}

std::set<std::int64_t> branchOf(const Records &records, Id<Component> part)
{
    std::set<std::int64_t> branch{part.value()};
    for (std::size_t before = 0; before != branch.size();) {
        before = branch.size();
        for (const Component &each : records.components) {
            if (branch.contains(each.parent_id.value()))
                branch.insert(each.id.value());
        }
    }
    return branch;
}

} // namespace

Message nameOf(const Records &records, const JournalChange &change)
{
    const auto &[type, id] = change.record;
    // Only these two tell all of a record.
    const bool isWhole = change.kind == RowChange::Insert || change.kind == RowChange::Delete;
    if (!isWhole || records.find(type, id))
        return spoken(records, change.record);
    const auto &description = describe(type);
    const auto record = description.make();
    description.find("id")->assign(record.get(), id);
    for (const FieldChange &each : change.fields) {
        const Field *field = description.find(each.name);
        if (field && !field->isCollection())
            take(*field, record.get(), change.kind == RowChange::Insert ? each.to : each.from);
    }
    Records alone;
    alone.profile_copy = records.profile_copy;
    alone.put(type, record.get());
    return spoken(alone, change.record);
}

std::vector<RecordAccount> accountOf(const Records &records,
                                     const std::vector<JournalChange> &changes)
{
    std::vector<RecordAccount> accounts;
    for (const JournalChange &change : changes) {
        RecordAccount account{change.record,
                              nameOf(records, change),
                              records.find(change.record.type, change.record.id) != nullptr,
                              change.kind,
                              {}};
        for (const FieldChange &field : change.fields)
            account.fields.push_back(accountOf(records, change, field));
        accounts.push_back(std::move(account));
    }
    return accounts;
}

std::set<RecordRef> belongingTo(const Records &records, Id<Component> part)
{
    std::set<RecordRef> all;
    const auto branch = branchOf(records, part);
    for (const std::int64_t id : branch)
        all.insert({RecordType::Component, id});
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto type = RecordType(i);
        if (type == RecordType::Project || type == RecordType::Component)
            continue;
        const auto &description = describe(type);
        const AnyTable &table = records.table(type);
        const void *record = table.nextAny(0);
        for (; record; record = table.nextAny(idOf(description, record))) {
            if (isOn(description, record, branch))
                all.insert({type, idOf(description, record)});
        }
    }
    return all;
}

std::set<RecordRef> belongingTo(const Records &records, Id<Closing> closing)
{
    std::set<RecordRef> all{{RecordType::Closing, closing.value()}};
    for (const HoldPoint &point : records.hold_points) {
        if (point.closing_id == closing)
            all.insert(RecordRef{RecordType::HoldPoint, point.id.value()});
    }
    for (const SignOff &signature : records.sign_offs) {
        if (all.contains(RecordRef{RecordType::HoldPoint, signature.hold_point_id.value()}))
            all.insert(RecordRef{RecordType::SignOff, signature.id.value()});
    }
    if (const Closing *record = records.find(closing)) {
        for (const auto acceptance : record->late_acceptances)
            all.insert(RecordRef{RecordType::SignOff, acceptance.value()});
    }
    for (const Check &check : records.checks) {
        if (check.closing_id == closing)
            all.insert(RecordRef{RecordType::Check, check.id.value()});
    }
    return all;
}

} // namespace lastrivet::journal
