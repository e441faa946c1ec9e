// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartSection.h"

#include "core/project/acts/SquawkActs.h"
#include "core/project/acts/WorkActs.h"
#include "ui/parts/SectionTexts.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <tuple>

// The list of sections. A column names its text and, where it can be changed in place, its act.
namespace lastrivet::ui {

namespace {

using Parts = std::unordered_set<std::int64_t>;
using Ids = std::vector<std::int64_t>;
using Rows = std::vector<RecordForm::Row>;

/// The live records whose component is one of the parts, in the order of `key`.
template <class Record, class Key> Ids collect(const Records &records, const Parts &parts, Key key)
{
    std::vector<const Record *> found;
    for (const Record &record : records.of<Record>()) {
        if (!record.withdrawn_on && parts.contains(record.component_id.value()))
            found.push_back(&record);
    }
    std::ranges::stable_sort(found, {}, [&](const Record *record) { return key(*record); });
    Ids ids;
    for (const Record *record : found)
        ids.push_back(record->id.value());
    return ids;
}

Ids steps(const Records &records, const Parts &parts)
{
    return collect<Step>(records, parts, [](const Step &step) {
        return std::tuple(step.component_id, step.position.value_or(largestId));
    });
}

Ids sessions(const Records &records, const Parts &parts)
{
    auto ids = collect<WorkSession>(records, parts, [](const WorkSession &session) {
        return session.began ? session.began->text() : std::string();
    });
    std::ranges::reverse(ids);
    return ids;
}

Ids squawks(const Records &records, const Parts &parts)
{
    return collect<Squawk>(records, parts, [](const Squawk &squawk) {
        return std::tuple(!acts::isOpen(squawk), squawk.severity, squawk.id);
    });
}

Ids closings(const Records &records, const Parts &parts)
{
    Ids ids;
    for (const Closing &closing : records.closings) {
        const bool isInside = std::ranges::any_of(closing.encloses, [&](Id<Component> part) {
            return parts.contains(part.value());
        });
        if (!closing.withdrawn_on && (isInside || parts.contains(closing.component_id.value())))
            ids.push_back(closing.id.value());
    }
    return ids;
}

Ids deviations(const Records &records, const Parts &parts)
{
    Ids ids;
    for (const Deviation &deviation : records.deviations) {
        const bool isHere = std::ranges::any_of(deviation.component_ids, [&](Id<Component> part) {
            return parts.contains(part.value());
        });
        if (!deviation.withdrawn_on && isHere)
            ids.push_back(deviation.id.value());
    }
    return ids;
}

template <class Record> Ids byId(const Records &records, const Parts &parts)
{
    return collect<Record>(records, parts, [](const Record &record) { return record.id; });
}

std::int64_t newStep(Edit &edit, Id<Component> part, const std::string &words)
{
    return acts::addStep(edit, part, words).value();
}

std::int64_t newSquawk(Edit &edit, Id<Component> part, const std::string &words)
{
    return acts::addSquawk(edit, Squawk{.component_id = part, .title = words}).value();
}

std::int64_t newFastener(Edit &edit, Id<Component> part, const std::string &words)
{
    return edit.put(Fastener{.component_id = part, .place = words}).value();
}

std::int64_t newMeasurement(Edit &edit, Id<Component> part, const std::string &words)
{
    return edit.put(Measurement{.component_id = part, .what = words}).value();
}

std::int64_t newDeviation(Edit &edit, Id<Component> part, const std::string &words)
{
    return edit
        .put(Deviation{.number = nextNumber<Deviation>(edit.records()),
                       .component_ids = {part},
                       .title = words,
                       .raised_on = edit.today()})
        .value();
}

std::int64_t newPartLine(Edit &edit, Id<Component> part, const std::string &words)
{
    return edit.put(PartLine{.component_id = part, .name = words, .quantity = 1}).value();
}

Rows stepForm()
{
    return {{"title"},    {"component_id"}, {"estimate_minutes"}, {"plan_ref"},
            {"after"},    {"closes"},       {"may_follow"},       {"planned_on"},
            {"done_on"},  {"dropped_on"},   {"position"},         {"note", true}};
}

Rows fastenerForm()
{
    return {{"place"},       {"hardware"},    {"thread"},     {"quantity"},
            {"torque_min"},  {"torque_max"},  {"torque_drag"}, {"torque_unit"},
            {"locking"},     {"tool_id"},     {"fitted_on"},  {"torqued_on"},
            {"torque_value"}, {"marked_on"},  {"locked_on"},  {"step_id"},
            {"may_follow"},  {"planned_on"},  {"accepted_on"}, {"accepted_by"},
            {"accepted_basis"}, {"removed_on"}, {"removed_why"}, {"note", true}};
}

Rows measurementForm()
{
    return {{"what"},        {"unit"},        {"minimum"},        {"maximum"},
            {"value"},       {"measured_on"}, {"tool_id"},        {"step_id"},
            {"may_follow"},  {"planned_on"},  {"accepted_on"},    {"accepted_by"},
            {"accepted_basis"}, {"note", true}};
}

Rows deviationForm()
{
    return {{"title"},        {"component_ids"}, {"drawing_ref"}, {"built_as", true},
            {"reason", true}, {"raised_on"},     {"asked_on"},    {"asked_of"},
            {"decision"},     {"decided_by"},    {"basis"},       {"decided_on"},
            {"built_on"},     {"undone_on"},     {"not_inside"},  {"note", true}};
}

Rows partLineForm()
{
    return {{"name"},        {"part_number"},       {"quantity"},         {"received_quantity"},
            {"received_on"}, {"damaged_quantity"}, {"shipment"},         {"ordered_on"},
            {"expected_on"}, {"step_id"},           {"note", true}};
}

constexpr std::array stepColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Step"), false, texts::stepTitle, texts::isStepDone,
                  texts::tickStepOff, texts::writeStepTitle,
                  QT_TRANSLATE_NOOP("Section", "done")},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Mark"), false, texts::stepMarkText},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Estimate"), true, texts::stepEstimate, nullptr,
                  nullptr, texts::writeStepEstimate},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "When"), false, texts::stepWhen},
};
constexpr std::array sessionColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Day"), false, texts::sessionDay},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Time"), true, texts::sessionMinutes},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Kind"), false, texts::sessionKind},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "What"), false, texts::sessionNote},
};
constexpr std::array squawkColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Squawk"), false, texts::squawkTitle},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Severity"), false, texts::squawkSeverity},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "State"), false, texts::squawkStateText},
};
constexpr std::array closingColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Closing"), false, texts::closingTitle},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "State"), false, texts::closingState},
};
constexpr std::array fastenerColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Fitted"), false, texts::fastenerPlace,
                  texts::isFitted, texts::tickFitted, nullptr,
                  QT_TRANSLATE_NOOP("Section", "fitted")},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Hardware"), false, texts::fastenerHardware},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Limits"), true, texts::torqueLimits},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Torque"), true, texts::torqueValue, nullptr,
                  nullptr, texts::writeTorque},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Marked"), false, texts::markedOn, texts::isMarked,
                  texts::tickMarked, nullptr, QT_TRANSLATE_NOOP("Section", "marked")},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Locked"), false, texts::lockedBy, texts::isLocked,
                  texts::tickLocked, nullptr, QT_TRANSLATE_NOOP("Section", "locked")},
};
constexpr std::array measurementColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Measurement"), false, texts::measurementWhat},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Limits"), true, texts::measurementLimits},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Value"), true, texts::measurementValue, nullptr,
                  nullptr, texts::writeMeasurement},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "On"), false, texts::measuredOn},
};
constexpr std::array deviationColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Deviation"), false, texts::deviationTitle},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Decision"), false, texts::deviationDecision},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Raised"), false, texts::deviationRaised},
};
constexpr std::array partLineColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Packing line"), false, texts::partLineName},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Wanted"), true, texts::partLineWanted},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Received"), true, texts::partLineReceived, nullptr,
                  nullptr, texts::writeReceived},
};
constexpr std::array materialColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Material"), false, texts::materialName},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Used"), false, texts::materialUsed},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Sample"), false, texts::materialSample},
};

constexpr std::array sections{
    PartSection{QT_TRANSLATE_NOOP("Section", "Steps"), RecordType::Step, stepColumns, steps,
                QT_TRANSLATE_NOOP("Section", "New step"), newStep, stepForm},
    PartSection{QT_TRANSLATE_NOOP("Section", "Log"), RecordType::WorkSession, sessionColumns,
                sessions, nullptr, nullptr, nullptr},
    PartSection{QT_TRANSLATE_NOOP("Section", "Squawks"), RecordType::Squawk, squawkColumns,
                squawks, QT_TRANSLATE_NOOP("Section", "New squawk"), newSquawk, nullptr},
    PartSection{QT_TRANSLATE_NOOP("Section", "Closings"), RecordType::Closing, closingColumns,
                closings, nullptr, nullptr, nullptr},
    PartSection{QT_TRANSLATE_NOOP("Section", "Fasteners"), RecordType::Fastener, fastenerColumns,
                byId<Fastener>, QT_TRANSLATE_NOOP("Section", "New fastener: its place"),
                newFastener, fastenerForm},
    PartSection{QT_TRANSLATE_NOOP("Section", "Measurements"), RecordType::Measurement,
                measurementColumns, byId<Measurement>,
                QT_TRANSLATE_NOOP("Section", "New measurement: what is measured"), newMeasurement,
                measurementForm},
    PartSection{QT_TRANSLATE_NOOP("Section", "Deviations"), RecordType::Deviation,
                deviationColumns, deviations, QT_TRANSLATE_NOOP("Section", "New deviation"),
                newDeviation, deviationForm},
    PartSection{QT_TRANSLATE_NOOP("Section", "Stores"), RecordType::PartLine, partLineColumns,
                byId<PartLine>, QT_TRANSLATE_NOOP("Section", "New packing line"), newPartLine,
                partLineForm},
    PartSection{QT_TRANSLATE_NOOP("Section", "Materials"), RecordType::MaterialUse,
                materialColumns, byId<MaterialUse>, nullptr, nullptr, nullptr},
};

} // namespace

std::span<const PartSection> partSections()
{
    return sections;
}

int sectionFor(RecordType type)
{
    const auto place = std::ranges::find(sections, type, &PartSection::type);
    return place == sections.end() ? -1 : int(place - sections.begin());
}

} // namespace lastrivet::ui
