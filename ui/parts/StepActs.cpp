// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionActs.h"

#include "core/project/acts/WorkActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

#include <array>

// What people do with steps.
namespace lastrivet::ui::sections {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("SectionActs", text);
}

QString nameOf(const Session &session, RecordType type, std::int64_t id)
{
    return shortName(*session.records(), {type, id});
}

template <class Record> const Record &find(const Records &records, std::int64_t id)
{
    return *records.find(Id<Record>{id});
}

void dropStep(Session &session, ActLine &, std::int64_t id)
{
    session.change(tr("%1: dropped").arg(nameOf(session, RecordType::Step, id)),
                   [&](Edit &edit) { acts::dropStep(edit, Id<Step>{id}, edit.today()); });
}

void takeUpStep(Session &session, ActLine &, std::int64_t id)
{
    session.change(tr("%1: to be done after all").arg(nameOf(session, RecordType::Step, id)),
                   [&](Edit &edit) { acts::takeUpStep(edit, Id<Step>{id}); });
}

void insertStep(Session &session, ActLine &ask, std::int64_t id)
{
    const QString name = nameOf(session, RecordType::Step, id);
    ask.ask({.words = tr("A new step before %1").arg(name),
             .confirm = tr("Insert it"),
             .textLabel = tr("Step"),
             .textMissing = tr("A step needs its words.")},
            [&session, id](const ActLine::Answer &answer) {
                return session.change(tr("Step added: %1").arg(answer.text), [&](Edit &edit) {
                    acts::insertStep(edit, Id<Step>{id}, toStd(answer.text));
                });
            });
}

constexpr std::array forSteps{
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Insert before…"),
               [](const Records &, std::int64_t) { return true; }, insertStep},
    SectionAct{
        QT_TRANSLATE_NOOP("SectionActs", "Drop"),
        [](const Records &records, std::int64_t id) { return !find<Step>(records, id).dropped_on; },
        dropStep},
    SectionAct{QT_TRANSLATE_NOOP("SectionActs", "Take up again"),
               [](const Records &records, std::int64_t id) {
                   return find<Step>(records, id).dropped_on.has_value();
               },
               takeUpStep},
};
} // namespace

std::span<const SectionAct> stepActs()
{
    return forSteps;
}

} // namespace lastrivet::ui::sections
