// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prints/PrintWish.h"

#include "core/base/Error.h"
#include "core/calendar/CalendarFile.h"
#include "ui/convert/QtText.h"
#include "ui/print/BlankForm.h"
#include "ui/print/FinalFilePrinter.h"
#include "ui/print/HandOverPrinter.h"
#include "ui/print/LabelSheet.h"
#include "ui/print/MajorPortionPrinter.h"
#include "ui/print/TagSheet.h"
#include "ui/print/WeightPrinter.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <memory>
#include <utility>

namespace lastrivet::ui {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("Print", text, nullptr, count);
}

/// What every kind prints from; kept by the worker.
struct Source {
    Snapshot records;
    Session::AnswerPointer answer;
    Profile profile;
    PrintWish wish;

    packet::Aircraft aircraft() const { return packet::aircraftOf(*records, profile); }
    std::filesystem::path place() const { return toPath(wish.file); }
};

std::vector<packet::ShelfLabel> labelsOf(const Source &source)
{
    switch (source.wish.kind) {
    case PrintKind::LotLabels:
        return packet::lotLabels(*source.records);
    case PrintKind::ToolLabels:
        return packet::toolLabels(*source.records);
    default:
        return packet::partLabels(*source.records, source.wish.onlyWithShelf);
    }
}

print::BlankFormKind formOf(PrintKind kind)
{
    switch (kind) {
    case PrintKind::BatchForm:
        return print::BlankFormKind::Batches;
    case PrintKind::WeekForm:
        return print::BlankFormKind::Week;
    case PrintKind::FindingForm:
        return print::BlankFormKind::Findings;
    default:
        return print::BlankFormKind::Torque;
    }
}

std::optional<print::Printed> print(const Source &source, const print::Imprint &imprint,
                                    const print::Pictures &pictures,
                                    const print::OnPercent &onPercent)
{
    const PrintWish &wish = source.wish;
    if (isForLabels(wish.kind))
        return print::printLabels({source.aircraft(), labelsOf(source), wish.grid, wish.usedLabels},
                                  imprint, wish.choices, source.place(), onPercent);
    if (isBlankForm(wish.kind))
        return print::printBlankForm(
            {formOf(wish.kind), source.aircraft(), source.records->project.units, wish.sheets},
            imprint, wish.choices, source.place(), onPercent);
    if (wish.kind == PrintKind::MajorPortion)
        return print::printMajorPortion(
            packet::majorPortion(*source.records, source.profile, source.answer->as_of), imprint,
            pictures, wish.choices, source.place(), onPercent);
    if (wish.kind == PrintKind::FinalFile)
        return print::printFinalFile(
            packet::finalFile(*source.records, source.profile, *source.answer), imprint, pictures,
            wish.choices, source.place(), onPercent);
    if (wish.kind == PrintKind::HandOver)
        return print::printHandOver(
            packet::handOver(*source.records, source.profile, *source.answer), imprint, pictures,
            wish.choices, source.place(), onPercent);
    if (wish.kind == PrintKind::Weight)
        return print::printWeightReport(
            packet::weightReport(*source.records, source.profile, source.answer->as_of), imprint,
            wish.choices, source.place(), onPercent);
    return print::printTags({source.aircraft(),
                             packet::tags(*source.records, *source.answer, wish.closings),
                             wish.hasCodes},
                            imprint, wish.choices, source.place(), onPercent);
}

void writeCalendar(Session &session, const PrintWish &wish)
{
    try {
        const auto entries = calendar::entries(*session.records(), session.project().profile(),
                                               session.today(), wish.choices.wording.tongue());
        calendar::writeCalendar(entries, calendar::fileFacts(session.project(), std::nullopt),
                                toPath(wish.file));
        session.say(tr("%1 is written: %n dates.", int(entries.size()))
                        .arg(QFileInfo(wish.file).fileName()));
    } catch (const Fault &fault) {
        session.complain(fault);
    }
}

} // namespace

QString nameOf(PrintKind kind)
{
    switch (kind) {
    case PrintKind::Tags:
        return tr("Tie-on tags: do not close");
    case PrintKind::PartLabels:
        return tr("Shelf labels for parts");
    case PrintKind::LotLabels:
        return tr("Shelf labels for material lots");
    case PrintKind::ToolLabels:
        return tr("Labels for tools");
    case PrintKind::TorqueForm:
        return tr("Blank form: torque list");
    case PrintKind::BatchForm:
        return tr("Blank form: lay-up and glue batches");
    case PrintKind::WeekForm:
        return tr("Blank form: log of a week");
    case PrintKind::FindingForm:
        return tr("Blank form: findings of a visit");
    case PrintKind::MajorPortion:
        return tr("Major portion with its evidence");
    case PrintKind::FinalFile:
        return tr("File for the final inspection");
    case PrintKind::HandOver:
        return tr("Hand-over book");
    case PrintKind::Weight:
        return tr("Weight and balance report");
    case PrintKind::Calendar:
        return tr("Calendar file");
    }
    return {};
}

bool isForLabels(PrintKind kind)
{
    return kind == PrintKind::PartLabels || kind == PrintKind::LotLabels ||
           kind == PrintKind::ToolLabels;
}

bool isBlankForm(PrintKind kind)
{
    return kind == PrintKind::TorqueForm || kind == PrintKind::BatchForm ||
           kind == PrintKind::WeekForm || kind == PrintKind::FindingForm;
}

void carryOut(Session &session, const PrintWish &wish)
{
    if (wish.kind == PrintKind::Calendar) {
        writeCalendar(session, wish);
        return;
    }
    const auto source = std::make_shared<const Source>(
        Source{session.records(), session.answer(), session.project().profile(), wish});
    PrintOrder order;
    order.title = nameOf(wish.kind);
    order.file = wish.file;
    // A label has no room for the journal's hash.
    order.is_noted = !isForLabels(wish.kind);
    order.print = [source](const auto &imprint, const auto &pictures, const auto &onPercent) {
        return print(*source, imprint, pictures, onPercent);
    };
    carryOut(session, std::move(order));
}

} // namespace lastrivet::ui
