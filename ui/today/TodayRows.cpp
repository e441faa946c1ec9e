// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/TodayRows.h"

#include "core/readiness/Sentences.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <functional>

namespace lastrivet::ui {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("TodayRows", text, nullptr, count);
}

QString closingTitle(const Records &records, Id<Closing> id)
{
    const Closing *closing = records.find(id);
    return closing ? toQt(closing->title) : QString();
}

QString unlockWords(const Records &records, const IdSet<Closing> &closings)
{
    if (closings.empty())
        return {};
    const QString first = closingTitle(records, closings.front());
    const auto more = int(closings.size()) - 1;
    return more == 0 ? tr("needed for %1").arg(first)
                     : tr("needed for %1 and %2 more").arg(first).arg(more);
}

QString attentionIcon(today::AttentionKind kind)
{
    switch (kind) {
    case today::AttentionKind::OutOfReach:
        return QStringLiteral("actions/reopen");
    case today::AttentionKind::ClosedEarly:
        return QStringLiteral("states/closed_early");
    case today::AttentionKind::OutdatedSignature:
    case today::AttentionKind::Visit:
        return QStringLiteral("actions/sign");
    case today::AttentionKind::ExpiringMaterial:
    case today::AttentionKind::LatePart:
        return QStringLiteral("pages/stores");
    case today::AttentionKind::CalibrationDue:
        return QStringLiteral("pages/log");
    case today::AttentionKind::ToComplete:
        return QStringLiteral("actions/edit");
    }
    return {};
}

/// Something that the next closing would bury, in the words of its rule where one speaks of it.
ListRow chanceRow(RecordRef item, const readiness::ClosingAnswer &closing, const Records &records,
                  const QString &before)
{
    const auto blocker = std::ranges::find(closing.blockers, item, &readiness::Blocker::record);
    ListRow row{item, blocker == closing.blockers.end()
                          ? toQt(readiness::nameOf(records, item))
                          : asSentence(readiness::sentence(*blocker, records))};
    row.detail = before;
    row.icon = QStringLiteral("weights/should");
    if (item.type == RecordType::Squawk)
        row.severity = records.find(Id<Squawk>{item.id})->severity;
    else if (item.type == RecordType::Closing)
        row.icon = QStringLiteral("actions/camera");
    return row;
}

} // namespace

QString headlineWords(const today::Tally &tally)
{
    QStringList sentences;
    for (const Message &sentence : today::headline(tally))
        sentences << inWords(sentence);
    return sentences.join(QLatin1Char(' '));
}

std::vector<ListRow> staysOpenRows(const today::Today &page, const Records &records,
                                   const readiness::Answer &answer)
{
    std::vector<ListRow> rows;
    for (const auto &open : page.stays_open) {
        ListRow row{{RecordType::Closing, open.closing.value()},
                    closingTitle(records, open.closing)};
        row.detail = asSentence(readiness::sentence(open.nearest, records));
        if (open.more > 0)
            row.figure = tr("and %1 more").arg(open.more);
        row.state = answer.closing(open.closing)->state;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> workableRows(const today::Today &page, const Records &records,
                                  Id<Step> running)
{
    std::vector<ListRow> rows;
    for (const auto &work : page.workable) {
        const Step *step = records.find(work.step);
        if (!step)
            continue;
        ListRow row{{RecordType::Step, work.step.value()}, toQt(step->title)};
        QStringList details{partName(records, step->component_id)};
        details << unlockWords(records, work.unlocks);
        details.removeAll(QString());
        row.detail = details.join(QStringLiteral(" · "));
        if (step->estimate_minutes)
            row.figure = hoursText(*step->estimate_minutes);
        row.icon = QStringLiteral("pages/log");
        row.action = work.step == running ? tr("Running") : tr("Start");
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRow> lastChanceRows(const today::Today &page, const Records &records,
                                    const readiness::Answer &answer)
{
    std::vector<ListRow> rows;
    for (const auto &chance : page.last_chance) {
        const QString before = tr("before %1 is closed").arg(closingTitle(records, chance.closing));
        int unticked = 0;
        for (const RecordRef &item : chance.items) {
            if (item.type == RecordType::Check)
                ++unticked;
            else
                rows.push_back(chanceRow(item, *answer.closing(chance.closing), records, before));
        }
        if (unticked > 0) {
            ListRow row{{RecordType::Closing, chance.closing.value()},
                        tr("%1 lines of the inspector's list are not ticked").arg(unticked)};
            row.detail = before;
            row.icon = QStringLiteral("weights/should");
            rows.push_back(std::move(row));
        }
    }
    // What only work mends comes before what a camera or a pen mends.
    std::ranges::stable_sort(rows, std::ranges::greater{},
                             [](const ListRow &row) { return row.severity.has_value(); });
    return rows;
}

std::vector<ListRow> attentionRows(const today::Today &page, const Records &)
{
    std::vector<ListRow> rows;
    for (const auto &attention : page.attention) {
        ListRow row{attention.record, asSentence(attention.sentence)};
        row.icon = attentionIcon(attention.kind);
        if (attention.kind == today::AttentionKind::ClosedEarly)
            row.state = readiness::State::ClosedEarly;
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace lastrivet::ui
