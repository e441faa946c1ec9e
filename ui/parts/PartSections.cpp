// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartSection.h"

#include "ui/parts/HardwareActs.h"
#include "ui/parts/SectionActs.h"
#include "ui/parts/SectionForms.h"
#include "ui/parts/SectionRecords.h"
#include "ui/parts/SectionTexts.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

// The list of sections. A column names its text and, where it can be changed in place, its act.
namespace lastrivet::ui {

namespace {

constexpr std::array stepColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Step"), false, texts::stepTitle, texts::isStepDone,
                  texts::tickStepOff, texts::writeStepTitle, QT_TRANSLATE_NOOP("Section", "done")},
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
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Stands"),
                  .isNumber = false,
                  .text = texts::fastenerStands,
                  .tone = texts::fastenerTone},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Torque"),
                  .isNumber = true,
                  .text = texts::torqueValue,
                  .write = texts::writeTorque,
                  .whyNot = texts::whyNotTorque},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Limits"), true, texts::torqueLimits},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Marked"),
                  .isNumber = false,
                  .text = texts::markedOn,
                  .isTicked = texts::isMarked,
                  .tick = texts::tickMarked,
                  .act = QT_TRANSLATE_NOOP("Section", "marked"),
                  .spare = 3},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Locked"),
                  .isNumber = false,
                  .text = texts::lockedBy,
                  .isTicked = texts::isLocked,
                  .tick = texts::tickLocked,
                  .act = QT_TRANSLATE_NOOP("Section", "locked"),
                  .spare = 2},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Hardware"),
                  .isNumber = false,
                  .text = texts::fastenerHardware,
                  .spare = 1},
};
constexpr std::array measurementColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Measurement"), false, texts::measurementWhat},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Limits"), true, texts::measurementLimits},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Value"), true, texts::measurementValue, nullptr,
                  nullptr, texts::writeMeasurement},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Stands"),
                  .isNumber = false,
                  .text = texts::measurementStands,
                  .tone = texts::measurementTone},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "On"),
                  .isNumber = false,
                  .text = texts::measuredOn,
                  .spare = 1},
};
constexpr std::array deviationColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Deviation"), false, texts::deviationTitle},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Drawing"),
                  .isNumber = false,
                  .text = texts::deviationDrawing,
                  .spare = 2},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Stands"), false, texts::deviationStage},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Weight"),
                  .isNumber = true,
                  .text = texts::deviationWeight,
                  .spare = 1},
};
constexpr std::array bulletinColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Bulletin"), false, texts::bulletinTitle},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Issuer"),
                  .isNumber = false,
                  .text = texts::bulletinIssuer,
                  .spare = 1},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Issued"),
                  .isNumber = false,
                  .text = texts::bulletinIssued,
                  .spare = 2},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Stands"), false, texts::bulletinState},
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

constexpr std::array allSections{
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Steps"),
                .type = RecordType::Step,
                .columns = stepColumns,
                .collect = sections::steps,
                .addPrompt = QT_TRANSLATE_NOOP("Section", "New step"),
                .add = sections::newStep,
                .form = sections::stepForm,
                .acts = sections::stepActs,
                .needsPart = true},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Log"),
                .type = RecordType::WorkSession,
                .columns = sessionColumns,
                .collect = sections::sessions},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Squawks"),
                .type = RecordType::Squawk,
                .columns = squawkColumns,
                .collect = sections::squawks,
                .addPrompt = QT_TRANSLATE_NOOP("Section", "New squawk"),
                .add = sections::newSquawk},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Closings"),
                .type = RecordType::Closing,
                .columns = closingColumns,
                .collect = sections::closings},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Fasteners"),
                .type = RecordType::Fastener,
                .columns = fastenerColumns,
                .collect = sections::fasteners,
                .addPrompt = QT_TRANSLATE_NOOP(
                    "Section", "New: 12 x rear hinge, AN4-7A, 1/4-28, drag 6, split pin"),
                .addHere = sections::newFastener,
                .form = sections::fastenerForm,
                .needsPart = true,
                .whyNotAdd = sections::whyNotFastener,
                .keys = sections::fastenerKeys,
                .check = sections::whyNotFastenerFields,
                .aside = sections::torquePanel},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Measurements"),
                .type = RecordType::Measurement,
                .columns = measurementColumns,
                .collect = sections::measurements,
                .addPrompt =
                    QT_TRANSLATE_NOOP("Section", "New: span of the stabiliser, 2740-2746 mm"),
                .add = sections::newMeasurement,
                .form = sections::measurementForm,
                .acts = sections::measurementActs,
                .needsPart = true,
                .whyNotAdd = sections::whyNotMeasurement,
                .aside = sections::measurementPanel},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Deviations"),
                .type = RecordType::Deviation,
                .columns = deviationColumns,
                .collect = sections::deviations,
                .addPrompt = QT_TRANSLATE_NOOP("Section", "New deviation: what differs"),
                .add = sections::newDeviation,
                .form = sections::deviationForm,
                .acts = sections::deviationActs,
                .attach = sections::attachToDeviation},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Bulletins"),
                .type = RecordType::Bulletin,
                .columns = bulletinColumns,
                .collect = sections::bulletins,
                .addPrompt = QT_TRANSLATE_NOOP("Section", "New bulletin: its title"),
                .add = sections::newBulletin,
                .form = sections::bulletinForm,
                .acts = sections::bulletinActs,
                .attach = sections::attachToBulletin},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Stores"),
                .type = RecordType::PartLine,
                .columns = partLineColumns,
                .collect = sections::partLines,
                .addPrompt = QT_TRANSLATE_NOOP("Section", "New packing line"),
                .add = sections::newPartLine,
                .form = sections::partLineForm,
                .check = sections::whyNotCounted,
                .follow = sections::countWhatIsTyped},
    PartSection{.title = QT_TRANSLATE_NOOP("Section", "Materials"),
                .type = RecordType::MaterialUse,
                .columns = materialColumns,
                .collect = sections::materials},
};

} // namespace

std::span<const PartSection> partSections()
{
    return allSections;
}

int sectionFor(RecordType type)
{
    const auto place = std::ranges::find(allSections, type, &PartSection::type);
    return place == allSections.end() ? -1 : int(place - allSections.begin());
}

} // namespace lastrivet::ui
