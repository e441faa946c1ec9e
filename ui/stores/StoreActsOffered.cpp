// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreActsOffered.h"

#include "core/project/acts/PhotoActs.h"
#include "core/project/acts/StoreActs.h"
#include "core/readiness/CalibrationAt.h"
#include "core/stores/Calibrations.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

#include <array>

namespace lastrivet::ui::storeroom {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("SectionActs", text);
}

bool always(const Records &, std::int64_t)
{
    return true;
}

void makeLot(Session &session, ActLine &, std::int64_t id)
{
    const Id<PartLine> line{id};
    const QString name = toQt(session.records()->find(line)->name);
    Id<MaterialLot> lot;
    if (session.change(tr("%1: entered as a lot").arg(name),
                       [&](Edit &edit) { lot = acts::lotFrom(edit, line); }))
        session.goTo({RecordType::MaterialLot, lot.value()});
}

bool hasPrice(const Records &records, std::int64_t id)
{
    return records.find(Id<PartLine>{id})->unit_price.has_value();
}

void makeExpense(Session &session, ActLine &, std::int64_t id)
{
    const Id<PartLine> line{id};
    const std::string &name = session.records()->find(line)->name;
    const auto expenses = acts::expensesFor(*session.records(), {line}, name, session.today());
    if (!expenses) {
        session.complain(inWords(expenses.reason()));
        return;
    }
    Id<Expense> made;
    if (session.change(tr("%1: entered as an expense").arg(toQt(name)), [&](Edit &edit) {
            for (const Expense &expense : *expenses)
                made = edit.put(expense);
        }))
        session.goTo({RecordType::Expense, made.value()});
}

bool isUnopened(const Records &records, std::int64_t id)
{
    return !records.find(Id<MaterialLot>{id})->opened_on;
}

void openLot(Session &session, ActLine &, std::int64_t id)
{
    const Id<MaterialLot> lot{id};
    session.change(
        tr("%1: opened").arg(toQt(session.records()->find(lot)->name)), [lot](Edit &edit) {
            edit.update(lot, [&](MaterialLot &changed) { changed.opened_on = edit.today(); });
        });
}

Id<Media> certificateOf(const Records &records, std::int64_t tool)
{
    const auto *newest = readiness::newestCalibration(*records.find(Id<Tool>{tool}));
    return newest ? newest->certificate_id : Id<Media>{};
}

bool lotHasPaper(const Records &records, std::int64_t id)
{
    return records.findLive(records.find(Id<MaterialLot>{id})->certificate_id) != nullptr;
}

bool toolHasPaper(const Records &records, std::int64_t id)
{
    return records.findLive(certificateOf(records, id)) != nullptr;
}

bool hasReceipt(const Records &records, std::int64_t id)
{
    return records.findLive(records.find(Id<Expense>{id})->media_id) != nullptr;
}

void showLotPaper(Session &session, ActLine &, std::int64_t id)
{
    const auto paper = session.records()->find(Id<MaterialLot>{id})->certificate_id;
    session.goTo({RecordType::Media, paper.value()});
}

void showToolPaper(Session &session, ActLine &, std::int64_t id)
{
    session.goTo({RecordType::Media, certificateOf(*session.records(), id).value()});
}

void showReceipt(Session &session, ActLine &, std::int64_t id)
{
    const auto paper = session.records()->find(Id<Expense>{id})->media_id;
    session.goTo({RecordType::Media, paper.value()});
}

constexpr std::array linesOffered{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Make a lot of it"), always, makeLot},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Enter as an expense"), hasPrice, makeExpense},
};
constexpr std::array lotsOffered{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Mark as opened today"), isUnopened, openLot},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Show the certificate"), lotHasPaper, showLotPaper},
};
constexpr std::array toolsOffered{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Show the certificate"), toolHasPaper,
               showToolPaper},
};
constexpr std::array expensesOffered{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Show the receipt"), hasReceipt, showReceipt},
};

} // namespace

std::span<const SectionAct> lineActs()
{
    return linesOffered;
}

std::span<const SectionAct> lotActs()
{
    return lotsOffered;
}

std::span<const SectionAct> toolActs()
{
    return toolsOffered;
}

std::span<const SectionAct> expenseActs()
{
    return expensesOffered;
}

void attachToLot(Edit &edit, std::int64_t id, Id<Media> paper)
{
    acts::attachCertificate(edit, Id<MaterialLot>{id}, paper);
}

void attachToTool(Edit &edit, std::int64_t id, Id<Media> paper)
{
    const Id<Tool> tool{id};
    const Tool &record = edit.existing(tool);
    if (const auto *newest = readiness::newestCalibration(record))
        acts::attachCertificate(edit, tool, std::size_t(newest - record.calibrations.data()),
                                paper);
    else
        acts::linkMedia(edit, paper, {RecordType::Tool, id});
}

void attachToExpense(Edit &edit, std::int64_t id, Id<Media> paper)
{
    acts::attachReceipt(edit, Id<Expense>{id}, paper);
}

void attachToLine(Edit &edit, std::int64_t id, Id<Media> picture)
{
    acts::linkMedia(edit, picture, {RecordType::PartLine, id});
}

} // namespace lastrivet::ui::storeroom
