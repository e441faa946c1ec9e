// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RandomRecords.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace lastrivet::test {

namespace {

void require(bool taken)
{
    if (!taken)
        throw std::logic_error("a field refused a value of its kind");
}

/// A person is named once among the workers, and they have no order.
void tidyWorkers(WorkSession &session)
{
    auto &workers = session.workers;
    std::stable_sort(workers.begin(), workers.end(),
                     [](const auto &a, const auto &b) { return a.person_id < b.person_id; });
    workers.erase(
        std::unique(workers.begin(), workers.end(),
                    [](const auto &a, const auto &b) { return a.person_id == b.person_id; }),
        workers.end());
}

} // namespace

RandomRecords::RandomRecords(unsigned seed, std::int64_t idsPerType)
    : m_random(seed)
    , m_idsPerType(idsPerType)
{
}

std::shared_ptr<void> RandomRecords::record(RecordType type, std::int64_t id)
{
    const auto &description = describe(type);
    auto made = description.make();
    fill(description.fields, made.get(), id);
    if (type == RecordType::WorkSession)
        tidyWorkers(*static_cast<WorkSession *>(made.get()));
    return made;
}

Records RandomRecords::all()
{
    Records records;
    records.put(RecordType::Project, record(RecordType::Project, 1).get());
    for (std::size_t type = std::size_t(RecordType::Person); type < recordTypeCount; ++type) {
        for (std::int64_t id = 1; id <= m_idsPerType; ++id)
            records.put(RecordType(type), record(RecordType(type), id).get());
    }
    return records;
}

void RandomRecords::fill(std::span<const Field> fields, void *target, std::int64_t id)
{
    for (const auto &field : fields) {
        if (field.isCollection())
            fillCollection(field, target);
        else if (field.required || below(3) > 0)
            require(field.assign(target, value(field, id)));
    }
}

void RandomRecords::fillCollection(const Field &field, void *target)
{
    for (auto count = below(4) + field.required; count > 0; --count) {
        if (field.rows)
            fill(field.rows->fields, field.addRow(target), 0);
        else
            require(field.add(target, value(field, 0)));
    }
}

Scalar RandomRecords::value(const Field &field, std::int64_t id)
{
    switch (field.type) {
    case FieldType::Id:
        return id;
    case FieldType::Ref:
    case FieldType::Refs:
        return field.target == RecordType::Project ? 1 : 1 + below(m_idsPerType);
    case FieldType::Int:
        return below(2'000'000) - 1'000'000;
    case FieldType::Real:
    case FieldType::Numbers:
        return real();
    case FieldType::Bool:
        return below(2) == 1;
    case FieldType::Moment: {
        const auto day = *Moment::parse("1900-01-01")->plusDays(below(109'000));
        return below(2) ? day : *Moment::ofTime(day.day(), int(below(24 * 60)));
    }
    case FieldType::Text:
        return text();
    case FieldType::Record:
        return Words<RecordType>::list[std::size_t(below(recordTypeCount))];
    default:
        return field.words[std::size_t(below(std::int64_t(field.words.size())))];
    }
}

std::string_view RandomRecords::text()
{
    static constexpr std::array<std::string_view, 15> pieces{
        "rib", " ", "\"quoted\"", "it's", "0", "ß", "Ω", "🛩", "\n", "; DROP TABLE \"step\"",
        "*",   "é", "\t\x01\\",   "=1,2", "-"};
    m_text.clear();
    for (auto count = 1 + below(6); count > 0; --count)
        m_text += pieces[std::size_t(below(pieces.size()))];
    return m_text;
}

double RandomRecords::real()
{
    const double wide = std::uniform_real_distribution<double>(-1e6, 1e6)(m_random);
    const std::array<double, 6> choices{wide, wide * 1e-9, double(below(1000)), 0.1, -0.0, 1e300};
    return choices[std::size_t(below(choices.size()))];
}

std::int64_t RandomRecords::below(std::int64_t bound)
{
    return std::uniform_int_distribution<std::int64_t>(0, bound - 1)(m_random);
}

} // namespace lastrivet::test
