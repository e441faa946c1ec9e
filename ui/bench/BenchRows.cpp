// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchRows.h"

#include "core/fasteners/FastenerState.h"
#include "core/project/acts/BenchActs.h"
#include "core/readiness/Sentences.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QStringList>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Bench", text);
}

QString actWords(acts::FastenerAct act)
{
    switch (act) {
    case acts::FastenerAct::Fit:
        return tr("Fit");
    case acts::FastenerAct::Torque:
        return tr("Torque");
    case acts::FastenerAct::Lock:
        return tr("Lock");
    case acts::FastenerAct::Mark:
        return tr("Seal");
    }
    return {};
}

/// What is known of it so far: limits, value, locking.
QString fastenerDetail(const Fastener &fastener)
{
    QStringList words;
    if (const QString limits = torqueWords(fastener); !limits.isEmpty())
        words << limits;
    if (fastener.torque_value)
        words << tr("torqued: %1").arg(numberText(*fastener.torque_value));
    if (fastener.locking != Locking::None)
        words << (fastener.locked_on ? tr("%1: locked") : QStringLiteral("%1"))
                     .arg(plainWord(word(fastener.locking)));
    return words.join(QStringLiteral(" · "));
}

} // namespace

/// What the wrench is to show, so the drag is in it.
QString torqueWords(const Fastener &fastener)
{
    const QString unit = toQt(word(fastener.torque_unit));
    const auto [least, most] = fasteners::limitsOnWrench(fastener);
    if (least && most)
        return tr("%1 to %2 %3").arg(numberText(*least), numberText(*most), unit);
    if (least)
        return tr("at least %1 %2").arg(numberText(*least), unit);
    if (most)
        return tr("at most %1 %2").arg(numberText(*most), unit);
    return {};
}

std::vector<ListRow> benchStepRows(const today::AtPart &here, const Records &records)
{
    std::vector<ListRow> rows;
    for (const auto id : here.steps) {
        const Step &step = *records.find(id);
        ListRow row{{RecordType::Step, id.value()}, toQt(step.title)};
        const bool isWorkable = rows.size() < here.workable;
        row.detail =
            isWorkable ? partName(records, step.component_id) : tr("has to wait for another step");
        if (step.estimate_minutes)
            row.figure = hoursText(*step.estimate_minutes);
        if (isWorkable)
            row.action = tr("Tick off");
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> benchFastenerRows(const today::AtPart &here, const Records &records)
{
    std::vector<ListRow> rows;
    for (const auto id : here.fasteners) {
        const Fastener &fastener = *records.find(id);
        ListRow row{{RecordType::Fastener, id.value()}, toQt(fastener.place)};
        if (fastener.quantity > 1)
            row.title = QStringLiteral("%1 × %2").arg(fastener.quantity).arg(row.title);
        row.detail = fastenerDetail(fastener);
        if (acts::nextAct(fastener) == acts::FastenerAct::Torque) {
            row.icon = QStringLiteral("marks/alert");
            row.detail = tr("finger-tight · %1").arg(row.detail);
        }
        if (const auto act = acts::nextAct(fastener))
            row.action = actWords(*act);
        else
            row.figure = tr("done");
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> benchCheckRows(const today::AtPart &here, const Records &records)
{
    std::vector<ListRow> rows;
    for (const auto id : here.checks) {
        const Check &check = *records.find(id);
        ListRow row{{RecordType::Check, id.value()}, listLine(check.item)};
        row.detail = toQt(records.find(check.closing_id)->title);
        row.action = tr("Tick");
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> benchClosingRows(const today::AtPart &here, const Records &records,
                                      const readiness::Answer &answer)
{
    std::vector<ListRow> rows;
    for (const auto &open : here.stays_open) {
        ListRow row{{RecordType::Closing, open.closing.value()},
                    toQt(records.find(open.closing)->title)};
        row.detail = asSentence(readiness::sentence(open.nearest, records));
        if (open.more > 0)
            row.figure = tr("and %1 more").arg(open.more);
        row.state = answer.closing(open.closing)->state;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> benchPartRows(const std::vector<Id<Component>> &parts, const Records &records,
                                   Id<Component> atWork)
{
    std::vector<ListRow> rows;
    for (const auto id : parts) {
        const Component *part = records.findLive(id);
        if (!part)
            continue;
        ListRow row{{RecordType::Component, id.value()}, partName(records, id)};
        row.detail = part->parent_id ? partName(records, part->parent_id) : toQt(part->place);
        if (id == atWork)
            row.figure = tr("the clock runs");
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace lastrivet::ui
