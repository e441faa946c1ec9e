// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/StoreActs.h"

#include "core/stores/MoneySum.h"

#include <algorithm>
#include <string>

namespace lastrivet::acts {

namespace {

std::optional<Moment> dayOf(const PartLine &line)
{
    return line.ordered_on ? line.ordered_on : line.received_on;
}

/// The earliest day that a line names; `today` when none does.
Moment earliestDay(const Records &records, const std::vector<Id<PartLine>> &lines, Moment today)
{
    std::optional<Moment> earliest;
    for (const auto id : lines) {
        const PartLine *line = records.find(id);
        const auto day = line ? dayOf(*line) : std::nullopt;
        if (day && (!earliest || sortsBefore(*day, *earliest)))
            earliest = day;
    }
    return earliest.value_or(today).dayOnly();
}

} // namespace

std::optional<Message> whyNotCount(std::int64_t received, std::int64_t damaged)
{
    if (received < 0 || damaged < 0)
        return Message{"A count is 0 or more.", {}};
    if (damaged > received)
        return Message{"{0} cannot be damaged when {1} came.",
                       {std::to_string(damaged), std::to_string(received)}};
    return std::nullopt;
}

void countLine(Edit &edit, Id<PartLine> line, std::int64_t received, std::int64_t damaged)
{
    edit.update(line, [&](PartLine &changed) {
        changed.received_quantity = received;
        changed.damaged_quantity = damaged;
        if (!changed.received_on)
            changed.received_on = edit.today();
    });
}

void countAsListed(Edit &edit, const std::vector<Id<PartLine>> &lines)
{
    for (const auto id : lines) {
        const PartLine &line = edit.existing(id);
        if (line.received_on)
            continue;
        const bool isWritten = line.received_quantity > 0;
        countLine(edit, id, isWritten ? line.received_quantity : line.quantity,
                  isWritten ? line.damaged_quantity : 0);
    }
}

void uncount(Edit &edit, const std::vector<Id<PartLine>> &lines)
{
    for (const auto id : lines) {
        edit.update(id, [](PartLine &changed) {
            changed.received_quantity = 0;
            changed.damaged_quantity = 0;
            changed.received_on.reset();
        });
    }
}

Id<MaterialLot> lotFrom(Edit &edit, Id<PartLine> line)
{
    const PartLine &from = edit.existing(line);
    MaterialLot lot;
    lot.name = from.name;
    lot.specification = from.part_number;
    lot.note = from.shipment;
    return edit.put(std::move(lot));
}

Result<std::vector<Expense>, Message> expensesFor(const Records &records,
                                                  const std::vector<Id<PartLine>> &lines,
                                                  std::string_view what, Moment today)
{
    stores::MoneySum sum;
    bool isBeyond = false;
    for (const auto id : lines) {
        const PartLine *line = records.find(id);
        std::int64_t price = 0;
        // An undo may have taken it away while somebody looked at it.
        if (!line)
            return Message{"What was to be changed is not there any more.", {}};
        if (!line->unit_price)
            return Message{"{0} has no price on record.", {line->name}};
        if (line->currency.empty())
            return Message{"The price of {0} names no currency.", {line->name}};
        isBeyond = isBeyond || __builtin_mul_overflow(*line->unit_price, line->quantity, &price);
        sum.add(price, line->currency);
    }
    std::vector<Expense> expenses;
    for (const Money &amount : sum.amounts()) {
        isBeyond = isBeyond || amount.minor_units > largestId || amount.minor_units < -largestId;
        Expense expense;
        expense.spent_on = earliestDay(records, lines, today);
        expense.what = what;
        expense.amount = amount.minor_units;
        expense.currency = amount.currency;
        expenses.push_back(std::move(expense));
    }
    if (isBeyond || sum.isBeyond())
        return Message{"The prices add up to more than can be kept.", {}};
    return expenses;
}

void calibrate(Edit &edit, Id<Tool> tool, const Tool::Calibration &calibration)
{
    edit.update(tool, [&](Tool &changed) {
        changed.needs_calibration = true;
        changed.calibrations.push_back(calibration);
        std::stable_sort(changed.calibrations.begin(), changed.calibrations.end(),
                         [](const Tool::Calibration &a, const Tool::Calibration &b) {
                             return a.calibrated_on && b.calibrated_on &&
                                    sortsBefore(*a.calibrated_on, *b.calibrated_on);
                         });
    });
}

void attachCertificate(Edit &edit, Id<Tool> tool, std::size_t calibration, Id<Media> paper)
{
    edit.update(tool, [&](Tool &changed) {
        if (calibration < changed.calibrations.size())
            changed.calibrations[calibration].certificate_id = paper;
    });
}

void attachCertificate(Edit &edit, Id<MaterialLot> lot, Id<Media> paper)
{
    edit.update(lot, [paper](MaterialLot &changed) { changed.certificate_id = paper; });
}

void attachReceipt(Edit &edit, Id<Expense> expense, Id<Media> paper)
{
    edit.update(expense, [paper](Expense &changed) { changed.media_id = paper; });
    edit.update(paper, [](Media &changed) { changed.shows.insert(Shows::Receipt); });
}

} // namespace lastrivet::acts
