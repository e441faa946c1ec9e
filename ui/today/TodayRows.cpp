// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/TodayRows.h"

#include "core/readiness/Names.h"
#include "core/readiness/Sentences.h"
#include "ui/convert/QtText.h"
#include "ui/shell/PageList.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <functional>

namespace lastrivet::ui {

namespace {

using readiness::Blocker;
using readiness::Rule;

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
                     : tr("needed for %1 and %2 more").arg(first, QString::number(more));
}

/// The button that leads to the mending of what is nearest; none where the row itself does.
QString mendWords(const Blocker &blocker, bool isWorkable)
{
    switch (blocker.rule) {
    case Rule::UndoneStep:
        return isWorkable ? tr("Start") : QString();
    case Rule::OpenSquawk:
        return blocker.waits_for ? tr("Verify") : tr("Fix");
    case Rule::UnsignedHoldPoint:
    case Rule::OutdatedSignOff:
        return blocker.waits_for == SignerRole::Builder ? tr("Sign") : tr("Ask");
    case Rule::UndecidedDeviation:
    case Rule::RejectedDeviationBuilt:
        return tr("Decide");
    case Rule::FastenerNotFitted:
    case Rule::LooseFastener:
    case Rule::UnlockedFastener:
    case Rule::TorqueOutOfLimits:
    case Rule::MeasurementMissing:
    case Rule::MeasurementOutOfLimits:
        return tr("Fix");
    case Rule::MissingPart:
        return tr("Count in");
    case Rule::OpenBulletin:
        return tr("Read");
    default:
        return {};
    }
}

QString attentionIcon(today::AttentionKind kind)
{
    switch (kind) {
    case today::AttentionKind::FingerTight:
        return QStringLiteral("marks/alert");
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

/// Something that the next closing would bury; lines of its inspector's list are one row.
struct Chance {
    RecordRef item;
    const readiness::ClosingAnswer *closing;
    int unticked = 0;
};

std::vector<Chance> chances(const today::Today &page, const readiness::Answer &answer)
{
    std::vector<Chance> found;
    for (const auto &chance : page.last_chance) {
        const auto *closing = answer.closing(chance.closing);
        std::optional<Chance> list;
        for (const RecordRef &item : chance.items) {
            if (item.type != RecordType::Check)
                found.push_back({item, closing});
            else if (list)
                ++list->unticked;
            else
                list = Chance{item, closing, 1};
        }
        if (list)
            found.push_back(*list);
    }
    // What needs work comes before what a photograph or an entry settles.
    std::ranges::stable_sort(found, std::ranges::greater{}, [](const Chance &chance) {
        return chance.item.type == RecordType::Squawk;
    });
    return found;
}

ListRow chanceRow(const Chance &chance, const Records &records)
{
    const RecordRef item = chance.item;
    ListRow row{item, {}};
    row.detail = tr("before %1 is closed").arg(closingTitle(records, chance.closing->id));
    row.icon = QStringLiteral("weights/should");
    if (chance.unticked > 0) {
        row.record = {RecordType::Closing, chance.closing->id.value()};
        row.title = tr("%n lines of the inspector's list are not ticked", chance.unticked);
        row.action = tr("Tick");
        row.acts_on = item;
        return row;
    }
    const auto blocker =
        std::ranges::find(chance.closing->blockers, item, &readiness::Blocker::record);
    const bool isKnown = blocker != chance.closing->blockers.end();
    row.title = isKnown ? asSentence(readiness::sentence(*blocker, records))
                        : inWords(readiness::named(records, item));
    const Squawk *squawk =
        item.type == RecordType::Squawk ? records.find(Id<Squawk>{item.id}) : nullptr;
    if (squawk) {
        row.severity = squawk->severity;
        row.detail = severityWord(squawk->severity) + QStringLiteral(" · ") + row.detail;
    }
    if (item.type != RecordType::Closing) {
        row.action = tr("Fix");
    } else if (isKnown &&
               (blocker->rule == Rule::TooFewPhotos || blocker->rule == Rule::StalePhotos)) {
        row.icon = QStringLiteral("actions/camera");
        row.action = tr("Photo");
    }
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

QString teachingWords(const today::Today &page, const Records &records)
{
    const auto &tally = page.tally;
    if (records.closings.isEmpty())
        return tr("No closing is recorded yet. A closing is the act after which a place can no "
                  "longer be seen: riveting on a skin, bonding two halves, covering with fabric. "
                  "Once it is written down, this page says what has to happen before it.");
    const bool isAnythingBegun =
        tally.must_stay_open + tally.clear + tally.closed + tally.closed_early > 0;
    if (!isAnythingBegun && tally.not_begun > 0)
        return tr(
            "%n closings are on record and none is begun. A closing comes onto this page with "
            "the first work that is logged on a part inside it.",
            int(tally.not_begun));
    return {};
}

std::vector<ListRow> staysOpenRows(const today::Today &page, const Records &records,
                                   const readiness::Answer &answer)
{
    std::vector<ListRow> rows;
    for (const auto &open : page.stays_open) {
        if (rows.size() == rowsListed)
            break;
        ListRow row{{RecordType::Closing, open.closing.value()},
                    closingTitle(records, open.closing)};
        row.detail = asSentence(readiness::sentence(open.nearest, records));
        row.state = answer.closing(open.closing)->state;
        row.figure = shortStateWords(*row.state);
        if (open.more > 0)
            row.figure += QStringLiteral(", ") + tr("and %1 more").arg(open.more);
        const bool isWorkable =
            open.nearest.rule == Rule::UndoneStep &&
            std::ranges::find(answer.workable, Id<Step>{open.nearest.record.id}) !=
                answer.workable.end();
        row.action = mendWords(open.nearest, isWorkable);
        row.acts_on = open.nearest.record;
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
        if (rows.size() == rowsListed)
            break;
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

RowsAndTotal lastChanceRows(const today::Today &page, const Records &records,
                            const readiness::Answer &answer)
{
    RowsAndTotal list;
    for (const Chance &chance : chances(page, answer)) {
        if (++list.total <= rowsListed)
            list.rows.push_back(chanceRow(chance, records));
    }
    return list;
}

std::vector<ListRow> attentionRows(const today::Today &page)
{
    std::vector<ListRow> rows;
    for (const auto &attention : page.attention) {
        if (rows.size() == rowsListed)
            break;
        ListRow row{attention.record, asSentence(attention.sentence)};
        row.detail = tr("on the page %1")
                         .arg(pageList()[std::size_t(pageFor(attention.record.type))].name());
        row.icon = attentionIcon(attention.kind);
        if (attention.kind == today::AttentionKind::ClosedEarly)
            row.state = readiness::State::ClosedEarly;
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace lastrivet::ui
