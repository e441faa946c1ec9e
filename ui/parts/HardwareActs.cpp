// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/HardwareActs.h"

#include "core/base/TypedNumber.h"
#include "core/fasteners/FastenerLine.h"
#include "core/fasteners/FastenerState.h"
#include "core/fasteners/SpokenWords.h"
#include "core/fasteners/TorqueProposal.h"
#include "core/fasteners/TorqueUnits.h"
#include "core/measuring/MeasurementLine.h"
#include "core/project/acts/BenchActs.h"
#include "core/records/LockedByHand.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/parts/MeasurementPanel.h"
#include "ui/parts/SectionTexts.h"
#include "ui/parts/TorquePanel.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <span>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::ui::sections {

namespace {

using Ids = std::vector<std::int64_t>;

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("HardwareActs", text, nullptr, count);
}

QString noLongerThere()
{
    return tr("What this is about is no longer on record.");
}

/// The place of one, or how many lines they are.
QString nameOf(const Records &records, const std::vector<Id<Fastener>> &fasteners)
{
    return fasteners.size() == 1 ? toQt(records.find(fasteners.front())->place)
                                 : tr("%n lines of fasteners", int(fasteners.size()));
}

/// Does something to those of the fasteners that still need it, as one change.
template <class Needs, class Doing>
void doAll(Session &session, const Ids &ids, const char *label, Needs needs, Doing act)
{
    const auto records = session.records();
    std::vector<Id<Fastener>> open;
    for (const std::int64_t id : ids) {
        const Id<Fastener> fastener{id};
        if (const Fastener *found = records->findLive(fastener); found && needs(*found))
            open.push_back(fastener);
    }
    if (open.empty())
        return;
    session.change(tr(label).arg(nameOf(*records, open)), [&](Edit &edit) {
        for (const Id<Fastener> id : open)
            act(edit, id, edit.today());
    });
}

void fit(Session &session, ActLine &, const Ids &ids)
{
    doAll(
        session, ids, QT_TRANSLATE_NOOP("HardwareActs", "%1: fitted"),
        [](const Fastener &fastener) { return !fastener.fitted_on && !fastener.removed_on; },
        acts::fitFastener);
}

void seal(Session &session, ActLine &, const Ids &ids)
{
    doAll(
        session, ids, QT_TRANSLATE_NOOP("HardwareActs", "%1: sealed"),
        [](const Fastener &fastener) {
            return fastener.torqued_on && !fastener.marked_on && !fastener.removed_on;
        },
        acts::markFastener);
}

void lock(Session &session, ActLine &, const Ids &ids)
{
    doAll(
        session, ids, QT_TRANSLATE_NOOP("HardwareActs", "%1: locked"),
        [](const Fastener &fastener) {
            return isLockedByHand(fastener.locking) && fastener.fitted_on && !fastener.locked_on &&
                   !fastener.removed_on;
        },
        acts::lockFastener);
}

/// "Torque on the wrench, 56 to 76 in-lb": the drag is in it.
QString limitsOnWrench(const Fastener &fastener)
{
    const auto [least, most] = fasteners::limitsOnWrench(fastener);
    const QString unit = toQt(word(fastener.torque_unit));
    if (least && most)
        return tr("Torque on the wrench, %1 to %2 %3")
            .arg(numberText(*least), numberText(*most), unit);
    return tr("Torque on the wrench, %1").arg(unit);
}

/// The wrench that was used last is the one in the hand.
Id<Tool> lastWrench(const Records &records)
{
    const Fastener *last = nullptr;
    for (const Fastener &fastener : records.fasteners) {
        const bool isTorqued =
            !fastener.withdrawn_on && fastener.torqued_on && records.findLive(fastener.tool_id);
        if (isTorqued && (!last || !sortsBefore(*fastener.torqued_on, *last->torqued_on)))
            last = &fastener;
    }
    return last ? last->tool_id : Id<Tool>{};
}

bool writeTorques(Session &session, const std::vector<Id<Fastener>> &fasteners,
                  const ActLine::Answer &answer)
{
    const auto records = session.records();
    // An undo may have taken one away since it was asked about.
    if (!std::ranges::all_of(fasteners,
                             [&](Id<Fastener> id) { return records->findLive(id) != nullptr; })) {
        session.complain(noLongerThere());
        return false;
    }
    // Lines that are torqued at once have the same limits and unit.
    const Fastener &first = *records->find(fasteners.front());
    const auto read = readTyped(fasteners::readTorque, answer.text, first.torque_unit);
    if (!read) {
        session.complain(inWords(read.reason()));
        return false;
    }
    const double value = *read;
    const QString name = nameOf(*records, fasteners);
    const bool isOutside = fasteners::isOutside(first, value);
    const QString label = isOutside ? tr("%1: torqued outside its limits") : tr("%1: torqued");
    return session.change(label.arg(name), [&](Edit &edit) {
        for (const Id<Fastener> fastener : fasteners) {
            edit.update(fastener, [&](Fastener &changed) {
                if (!changed.fitted_on)
                    changed.fitted_on = edit.today();
                if (answer.tool)
                    changed.tool_id = answer.tool;
            });
            acts::torqueFastener(edit, fastener, edit.today(), value);
        }
    });
}

bool isTorquedAlike(const Fastener &a, const Fastener &b)
{
    return a.torque_unit == b.torque_unit && a.torque_min == b.torque_min &&
           a.torque_max == b.torque_max && a.torque_drag == b.torque_drag;
}

void torque(Session &session, ActLine &ask, const Ids &ids)
{
    const auto records = session.records();
    std::vector<Id<Fastener>> chosen;
    for (const std::int64_t id : ids) {
        const Fastener *fastener = records->findLive(Id<Fastener>{id});
        if (fastener && !fastener->removed_on)
            chosen.push_back(fastener->id);
    }
    if (chosen.empty())
        return;
    const Fastener &first = *records->find(chosen.front());
    if (!std::ranges::all_of(
            chosen, [&](Id<Fastener> id) { return isTorquedAlike(first, *records->find(id)); })) {
        session.complain(tr("The chosen lines have different limits; torque each by itself."));
        return;
    }
    std::vector<RecordRef> asked;
    for (const Id<Fastener> id : chosen)
        asked.push_back({RecordType::Fastener, id.value()});
    const QString words = chosen.size() == 1 ? toQt(first.place)
                                             : tr("%n lines of fasteners, all to the same torque",
                                                  int(chosen.size())) +
                                                   whichOf(*records, asked);
    const Id<Tool> tool = records->findLive(first.tool_id) ? first.tool_id : lastWrench(*records);
    ask.ask({.words = words,
             .confirm = tr("Record the torque"),
             .textLabel = limitsOnWrench(first),
             .toolLabel = tr("With"),
             .tool = tool,
             .textMissing = tr("Write the torque that the wrench showed."),
             .of = asked},
            [&session, chosen](const ActLine::Answer &answer) {
                return writeTorques(session, chosen, answer);
            });
}

constexpr std::array keys{
    SectionKey{Qt::Key_F, QT_TRANSLATE_NOOP("Section", "fitted"), fit},
    SectionKey{Qt::Key_T, QT_TRANSLATE_NOOP("Section", "torqued"), torque},
    SectionKey{Qt::Key_S, QT_TRANSLATE_NOOP("Section", "sealed"), seal},
    SectionKey{Qt::Key_L, QT_TRANSLATE_NOOP("Section", "locked"), lock},
};

bool isMeasured(const Records &records, std::int64_t id)
{
    return records.find(Id<Measurement>{id})->value.has_value();
}

/// The same thing once more: limits, unit and tool are those of the last time.
void measureAgain(Session &session, ActLine &ask, std::int64_t id)
{
    const Id<Measurement> before{id};
    const Measurement &record = *session.records()->find(before);
    ask.ask(
        {.words = tr("%1, measured again").arg(toQt(record.what)),
         .confirm = tr("Record the value"),
         .textLabel = record.unit.empty() ? tr("Value") : tr("Value, %1").arg(toQt(record.unit)),
         .dayLabel = tr("On"),
         .toolLabel = tr("With"),
         .tool = record.tool_id,
         .textMissing = tr("Write the value.")},
        [&session, before, what = toQt(record.what),
         unit = record.unit](const ActLine::Answer &answer) {
            const auto value = texts::readMeasured(answer.text, unit);
            if (!value) {
                session.complain(inWords(value.reason()));
                return false;
            }
            const auto records = session.records();
            const Measurement *last = records->findLive(before);
            if (!last) {
                session.complain(noLongerThere());
                return false;
            }
            return session.change(tr("%1: measured again").arg(what), [&](Edit &edit) {
                Measurement again = *last;
                again.id = {};
                again.value = *value;
                again.measured_on = answer.day;
                again.tool_id = answer.tool;
                again.planned_on.reset();
                again.accepted_on.reset();
                again.accepted_by = {};
                again.accepted_basis.clear();
                again.note.clear();
                edit.put(std::move(again));
            });
        });
}

/// A limit that is a thousand to one, and a little more than one to another.
QString whyTwoReadings(std::string_view limits)
{
    const auto both = twoReadings(toQt(limits));
    return both ? inWords(askWhich(*both)) : QString();
}

constexpr std::array measurementsOffered{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Measure again…"), isMeasured, measureAgain},
};

} // namespace

std::vector<workshop::OwnLimit> ownLimits(Session &session)
{
    return workshop::ownLimits(
        session.localState(workshop::ownLimitsKey).value.value_or(std::string()));
}

std::int64_t newFastener(Session &session, Edit &edit, Id<Component> part, const std::string &words)
{
    Fastener fastener = *fasteners::readFastenerLine(words, ownLimits(session), decimalSign());
    fastener.component_id = part;
    return edit.put(std::move(fastener)).value();
}

QString whyNotFastener(Session &session, const QString &words)
{
    const std::string line = toStd(words);
    const auto read = fasteners::readFastenerLine(line, ownLimits(session), decimalSign());
    if (!read)
        return inWords(read.reason());
    for (const std::string_view part : partsOfLine(line)) {
        const bool isTorque = fasteners::saysTorque(part) || fasteners::behindDrag(part);
        if (const QString why = isTorque ? whyTwoReadings(part) : QString(); !why.isEmpty())
            return why;
    }
    return {};
}

QString whyNotFastenerFields(const void *fastener)
{
    const auto why = fasteners::whyNotLimits(*static_cast<const Fastener *>(fastener));
    return why ? inWords(*why) : QString();
}

std::span<const SectionKey> fastenerKeys()
{
    return keys;
}

SectionAside *torquePanel(Session &session, QWidget *parent)
{
    return new TorquePanel(session, parent);
}

QString whyNotMeasurement(Session &, const QString &words)
{
    const std::string line = toStd(words);
    const auto read = measuring::readMeasurementLine(line, decimalSign());
    if (!read)
        return inWords(read.reason());
    const bool isInInches = read->unit == "in" || read->unit == "\"";
    if (isInInches || (!read->minimum && !read->maximum))
        return {};
    const auto parts = partsOfLine(line);
    // Behind the name there may be two: "min 1.4, max 1.6 mm".
    for (const std::string_view part : std::span(parts).subspan(parts.size() > 1 ? 1 : 0)) {
        if (const QString why = whyTwoReadings(part); !why.isEmpty())
            return why;
    }
    return {};
}

std::span<const SectionAct> measurementActs()
{
    return measurementsOffered;
}

SectionAside *measurementPanel(Session &session, QWidget *parent)
{
    return new MeasurementPanel(session, parent);
}

} // namespace lastrivet::ui::sections
