// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreRows.h"

#include "core/stores/Calibrations.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/stores/StoreTexts.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <unordered_map>

namespace lastrivet::ui {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("StoreRows", text, nullptr, count);
}

/// The closings that must stay open, by the missing part that each waits for. An answer may be
/// older than the records.
using Held = std::unordered_map<Id<PartLine>, std::vector<const readiness::ClosingAnswer *>>;

Held heldByLine(const Records &records, const readiness::Answer &answer)
{
    Held held;
    for (const auto &closing : answer.closings) {
        if (isClosed(closing.state) || !records.findLive(closing.id))
            continue;
        for (const auto &blocker : closing.blockers) {
            if (blocker.rule != readiness::Rule::MissingPart ||
                blocker.record.type != RecordType::PartLine)
                continue;
            auto &closings = held[Id<PartLine>{blocker.record.id}];
            if (closings.empty() || closings.back() != &closing)
                closings.push_back(&closing);
        }
    }
    return held;
}

QString waitDetail(const stores::Wait &wait, const Records &records, const Held &held)
{
    const PartLine &line = *records.find(wait.line);
    if (!wait.steps.empty())
        return tr("waits: %1").arg(toQt(records.find(wait.steps.front())->title));
    if (const auto closings = held.find(wait.line); closings != held.end())
        return tr("keeps open: %1").arg(toQt(records.find(closings->second.front()->id)->title));
    return partName(records, line.component_id);
}

QString materialNames(const Records &records, const MaterialUse &use)
{
    QStringList names;
    for (const auto lot : use.lot_ids)
        names << toQt(records.find(lot)->name);
    return names.join(QStringLiteral(" + "));
}

QString mark(bool isAlert)
{
    return isAlert ? QStringLiteral("marks/alert") : QStringLiteral("marks/soon");
}

QString sampleWords(const MaterialUse &use)
{
    return use.sample == Sample::None ? QString()
                                      : tr("sample %1").arg(plainWord(word(use.sample)));
}

} // namespace

QString shipmentWords(const stores::Shipment &shipment)
{
    const auto all = int(shipment.lines.size());
    QStringList open;
    if (shipment.to_count > 0)
        open << tr("%n to count", int(shipment.to_count));
    if (shipment.missing > 0)
        open << tr("%n short", int(shipment.missing));
    if (shipment.damaged > 0)
        open << tr("%n damaged", int(shipment.damaged));
    // Those are lines that were counted above already.
    if (shipment.late > 0)
        open << tr("%n of them late", int(shipment.late));
    if (open.isEmpty())
        return tr("All %n lines are here as listed.", all);
    return tr("%n lines: %1.", all).arg(open.join(QStringLiteral(", ")));
}

QString allShipmentsWords(const std::vector<stores::Shipment> &shipments)
{
    stores::Shipment sum;
    for (const stores::Shipment &shipment : shipments) {
        sum.lines.insert(sum.lines.end(), shipment.lines.begin(), shipment.lines.end());
        sum.to_count += shipment.to_count;
        sum.late += shipment.late;
        sum.missing += shipment.missing;
        sum.damaged += shipment.damaged;
    }
    return sum.lines.empty() ? QString() : shipmentWords(sum);
}

std::vector<ListRow> waitRows(const std::vector<stores::Wait> &waits, const Records &records,
                              const readiness::Answer &answer)
{
    std::vector<ListRow> rows;
    const Held held = heldByLine(records, answer);
    for (const stores::Wait &wait : waits) {
        const PartLine &line = *records.find(wait.line);
        ListRow row{{RecordType::PartLine, wait.line.value()}};
        row.title = QStringLiteral("%1 × %2").arg(
            QLocale().toString(qlonglong(wait.standing.wanted)), toQt(line.name));
        row.detail = waitDetail(wait, records, held);
        if (wait.standing.days_late > 0)
            row.figure = tr("%n d late", int(wait.standing.days_late));
        row.icon = mark(wait.standing.days_late > 0);
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> waitingRows(const stores::Wait &wait, const Records &records,
                                 const readiness::Answer &answer)
{
    std::vector<ListRow> rows;
    for (const auto id : wait.steps) {
        ListRow row{{RecordType::Step, id.value()}, toQt(records.find(id)->title)};
        row.detail = tr("step of %1").arg(partName(records, records.find(id)->component_id));
        rows.push_back(std::move(row));
    }
    const Held held = heldByLine(records, answer);
    const auto closings = held.find(wait.line);
    if (closings == held.end())
        return rows;
    for (const auto *closing : closings->second) {
        ListRow row{{RecordType::Closing, closing->id.value()},
                    toQt(records.find(closing->id)->title)};
        row.detail = tr("must stay open");
        row.state = closing->state;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> cureRows(const Session &session)
{
    std::vector<ListRow> rows;
    const auto records = session.records();
    for (const auto &held : stores::running(*records, *session.answer(), session.now())) {
        const MaterialUse &use = *records->find(held.cure.use);
        ListRow row{{RecordType::Component, use.component_id.value()}};
        row.title =
            tr("%1 on %2").arg(materialNames(*records, use), partName(*records, use.component_id));
        row.detail = storeroom::cureWords(session, use.id);
        row.icon = mark(!held.closings.empty());
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> useRows(const Session &session, Id<MaterialLot> lot)
{
    std::vector<ListRow> rows;
    const auto records = session.records();
    const MaterialLot *record = records->find(lot);
    if (!record)
        return rows;
    for (const auto id : stores::standingOf(*record, *records, session.today()).uses) {
        const MaterialUse &use = *records->find(id);
        ListRow row{{RecordType::MaterialUse, id.value()}, partName(*records, use.component_id)};
        const bool wasExpired = record->expires_on && after(*use.used_on, *record->expires_on);
        QStringList words;
        if (wasExpired)
            words << (use.accepted_on ? tr("after expiry, accepted") : tr("after expiry"));
        if (record->cures || use.cure_minutes)
            words << storeroom::cureWords(session, id);
        if (const QString sample = sampleWords(use); !sample.isEmpty())
            words << sample;
        row.detail = words.join(QStringLiteral(" · "));
        row.figure = dayText(*use.used_on);
        if (use.sample == Sample::Failed || (wasExpired && !use.accepted_on))
            row.icon = mark(true);
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> calibrationRows(const Session &session, Id<Tool> tool)
{
    std::vector<ListRow> rows;
    const auto records = session.records();
    const Tool *record = records->find(tool);
    if (!record)
        return rows;
    for (const Tool::Calibration &calibration : record->calibrations) {
        const bool hasPaper = records->findLive(calibration.certificate_id) != nullptr;
        ListRow row{hasPaper ? RecordRef{RecordType::Media, calibration.certificate_id.value()}
                             : RecordRef{RecordType::Tool, tool.value()}};
        row.title =
            tr("%1, due %2").arg(dateText(calibration.calibrated_on), dateText(calibration.due_on));
        row.detail = hasPaper ? tr("certificate on file") : tr("no certificate on file");
        rows.push_back(std::move(row));
    }
    std::ranges::reverse(rows);
    return rows;
}

std::vector<ListRow> outsideRows(const Session &session, Id<Tool> tool)
{
    std::vector<ListRow> rows;
    const auto records = session.records();
    const Tool *record = records->find(tool);
    if (!record)
        return rows;
    for (const RecordRef &use : stores::standingOf(*record, *records, session.today()).outside) {
        ListRow row{use, shortName(*records, use)};
        row.icon = mark(true);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace lastrivet::ui
